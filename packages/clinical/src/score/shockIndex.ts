import { settled } from '../contract/threshold.js';
import { heldAt, isPast } from './bands.js';
import { beside, type DerivedValue, without } from './derivedValue.js';
import { SCORE_FIGURES as F } from './figures.js';
import { missingOf, type ScoreInputs } from './scoreInputs.js';

export type ShockIndexBand = 'below-usual' | 'usual' | 'above-usual' | 'raised' | 'high';

const RATIO = '/min per mmHg';

/**
 * The shock index of an adult: pulse over systolic. A child's age gives the value without a band (why
 * `adult-bands-only`): take the paediatric one.
 *
 * Units: per minute and mmHg, unrounded; settled to 1e-9 before it meets a limit. Errors: none.
 * Source: bedside handbook 5.1 (second-hand).
 */
export function shockIndex(inputs: ScoreInputs): DerivedValue<ShockIndexBand> {
  const { pulse, systolic, age } = inputs;
  if (pulse === null || systolic === null) return without(RATIO, missingOf(inputs, ['pulse', 'systolic']));
  const value = pulse / systolic;
  const plain = { value, unit: RATIO, missing: [], flags: [], why: [] } as const;
  if (age !== null && !isPast(age, 'shockIndexFromYears')) {
    const figures = { age, fromYears: F.shockIndexFromYears.value };
    return { ...plain, band: null, why: [{ code: 'adult-bands-only', figures }] };
  }
  const band = heldAt<ShockIndexBand>(
    settled(value),
    [
      ['shockIndexHigh', 'high'],
      ['shockIndexRaised', 'raised'],
      ['shockIndexUsual', 'above-usual'],
      ['shockIndexLow', 'below-usual'],
    ],
    'usual',
  );
  if (band === 'high')
    return { ...plain, band, flags: [beside('shock-index-high', value, F.shockIndexHigh.value)] };
  if (band === 'raised')
    return { ...plain, band, flags: [beside('shock-index-raised', value, F.shockIndexRaised.value)] };
  return { ...plain, band };
}

export type ModifiedShockIndexBand = 'low' | 'usual' | 'high';

/**
 * The modified shock index: pulse over the mean pressure (plain rule); none without a diastolic.
 *
 * Units, errors as {@link shockIndex}.
 * Source: bedside handbook 5.1 (over 1.3 found; under 0.7 from memory).
 */
export function modifiedShockIndex(inputs: ScoreInputs): DerivedValue<ModifiedShockIndexBand> {
  const { pulse, systolic, diastolic } = inputs;
  if (pulse === null || systolic === null || diastolic === null) {
    return without(RATIO, missingOf(inputs, ['pulse', 'systolic', 'diastolic']));
  }
  const value = pulse / (diastolic + (systolic - diastolic) / F.meanThird.value);
  const plain = { value, unit: RATIO, missing: [], why: [] } as const;
  if (isPast(settled(value), 'modifiedShockIndexHigh')) {
    const flags = [beside('modified-shock-index-high', value, F.modifiedShockIndexHigh.value)];
    return { ...plain, band: 'high', flags };
  }
  if (isPast(settled(value), 'modifiedShockIndexLow')) {
    const flags = [beside('modified-shock-index-low', value, F.modifiedShockIndexLow.value)];
    return { ...plain, band: 'low', flags };
  }
  return { ...plain, band: 'usual', flags: [] };
}

export type AgeShockIndexBand = 'usual' | 'high';

/**
 * The age shock index of an adult: completed years times the shock index.
 *
 * Source: bedside handbook 5.1 (from memory).
 */
export function ageShockIndex(inputs: ScoreInputs): DerivedValue<AgeShockIndexBand> {
  const { pulse, systolic, age } = inputs;
  const unit = 'years/min per mmHg';
  if (pulse === null || systolic === null || age === null) {
    return without(unit, missingOf(inputs, ['pulse', 'systolic', 'age']));
  }
  const value = (age * pulse) / systolic;
  const plain = { value, unit, missing: [], flags: [], why: [] } as const;
  if (!isPast(age, 'shockIndexFromYears')) {
    const figures = { age, fromYears: F.shockIndexFromYears.value };
    return { ...plain, band: null, why: [{ code: 'adult-bands-only', figures }] };
  }
  const isHigh = isPast(settled(value), 'ageShockIndexHigh');
  if (!isHigh) return { ...plain, band: 'usual' };
  const flags = [beside('age-shock-index-high', value, F.ageShockIndexHigh.value)];
  return { ...plain, band: 'high', flags };
}
