import { settled } from '../contract/threshold.js';
import { heldAt, isPast } from './bands.js';
import { beside, type DerivedValue, without } from './derivedValue.js';
import { SCORE_FIGURES as F } from './figures.js';
import { missingOf, type ScoreInputs } from './scoreInputs.js';

export type PaediatricShockIndexBand = 'usual' | 'high';

/** The limit of an age, by the youngest age that it holds for. */
const OLDEST_FIRST = [
  ['childShockIndexOlderYears', 'childShockIndexOlder'],
  ['childShockIndexMiddleYears', 'childShockIndexMiddle'],
] as const;

/**
 * The shock index of a child with the limit of its age: 4 to 6, 7 to 12, 13 to 16 completed years. At other ages
 * there is the value and no band (why `no-limit-for-age`).
 *
 * Units: per minute and mmHg, unrounded; settled to 1e-9 before it meets a limit. Errors: none.
 * Source: paediatric shock index study 2022, bedside handbook 5.1 (found).
 *
 * @example paediatricShockIndex(inputs) // 7 years, pulse 118, systolic 104: 1.13, high
 */
export function paediatricShockIndex(inputs: ScoreInputs): DerivedValue<PaediatricShockIndexBand> {
  const { pulse, systolic, age } = inputs;
  const unit = '/min per mmHg';
  if (pulse === null || systolic === null || age === null) {
    return without(unit, missingOf(inputs, ['pulse', 'systolic', 'age']));
  }
  const value = pulse / systolic;
  const plain = { value, unit, missing: [], flags: [], why: [] } as const;
  if (!isPast(age, 'childShockIndexFromYears') || !isPast(age, 'childShockIndexToYears')) {
    const figures = {
      age,
      fromYears: F.childShockIndexFromYears.value,
      toYears: F.childShockIndexToYears.value,
    };
    return { ...plain, band: null, why: [{ code: 'no-limit-for-age', figures }] };
  }
  const limit = heldAt(age, OLDEST_FIRST, 'childShockIndexYoung');
  if (!isPast(settled(value), limit)) return { ...plain, band: 'usual' };
  const flags = [beside('paediatric-shock-index-high', value, F[limit].value, { age })];
  return { ...plain, band: 'high', flags };
}
