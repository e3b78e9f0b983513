import type { Flag } from '../contract/flag.js';
import { bodyMassIndex } from '../score/bodyMassIndex.js';
import type { DerivedFlagCode, DerivedUnit, DerivedValue } from '../score/derivedValue.js';
import { paediatricShockIndex } from '../score/paediatricShockIndex.js';
import { ratePressureProduct } from '../score/ratePressureProduct.js';
import type { ScoreRules } from '../score/rules.js';
import type { ScoreInputs } from '../score/scoreInputs.js';
import type { ScoreId } from '../score/scores.js';
import { sepsisScreen } from '../score/sepsisScreen.js';
import { ageShockIndex, modifiedShockIndex, shockIndex } from '../score/shockIndex.js';
import { isScoredAsAdult } from './whoseLimits.js';

/** A score that the place shows, of a round; unrounded. A screen with a part missing has no value, and still flags. */
export type RoundScore = {
  readonly of: ScoreId;
  readonly value: number | null;
  readonly unit: DerivedUnit | 'points';
  readonly band: string | null;
  readonly flags: readonly Flag<DerivedFlagCode | 'sepsis-screen-positive' | 'negative-does-not-reassure'>[];
};

/** The scores besides the early-warning one, those that the place shows and that can be made of the round. */
export function roundScores(inputs: ScoreInputs, ageMonths: number | null, rules: ScoreRules): RoundScore[] {
  const isAdult = isScoredAsAdult({ ageMonths });
  const derived: readonly (readonly [boolean, ScoreId, (of: ScoreInputs) => DerivedValue<string>])[] = [
    [rules.shockIndex && isAdult, 'shock-index', shockIndex],
    [rules.shockIndex && isAdult, 'modified-shock-index', modifiedShockIndex],
    [rules.shockIndex && isAdult, 'age-shock-index', ageShockIndex],
    [rules.paediatricShockIndex && !isAdult, 'paediatric-shock-index', paediatricShockIndex],
    [rules.ratePressureProduct, 'rate-pressure-product', ratePressureProduct],
    [rules.bodyMassIndex, 'body-mass-index', bodyMassIndex],
  ];
  return [
    ...(rules.sepsisScreen && isAdult ? sepsisOf(inputs) : []),
    ...derived.flatMap(([isShown, of, make]): RoundScore[] => {
      if (!isShown) return [];
      const { value, unit, band, flags } = make(inputs);
      return value === null ? [] : [{ of, value, unit, band, flags }];
    }),
  ];
}

function sepsisOf(inputs: ScoreInputs): RoundScore[] {
  const { total, band, parts, alerts, flags } = sepsisScreen(inputs);
  if (Object.values(parts).every((points) => points === null)) return [];
  return [{ of: 'sepsis-screen', value: total, unit: 'points', band, flags: [...alerts, ...flags] }];
}
