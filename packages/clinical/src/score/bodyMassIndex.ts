import { settled } from '../contract/threshold.js';
import { heldAt, isPast } from './bands.js';
import { type DerivedValue, without } from './derivedValue.js';
import { SCORE_FIGURES as F } from './figures.js';
import { missingOf, type ScoreInputs } from './scoreInputs.js';

export type BodyMassBand = 'under' | 'usual' | 'over' | 'class-1' | 'class-2' | 'class-3';

/**
 * The body-mass index: kg over the square of the height in m. Under 18 years it has no band (why
 * `adult-bands-only`); the band is that of the unrounded value.
 *
 * Units: kg/m2. Errors: none. Source: bedside handbook 4.4 (from memory).
 *
 * @example bodyMassIndex(inputs) // 70.0 kg, 170 cm: 24.2
 */
export function bodyMassIndex(inputs: ScoreInputs): DerivedValue<BodyMassBand> {
  const { weightKg, heightCm, age } = inputs;
  const unit = 'kg/m2';
  if (weightKg === null || heightCm === null) {
    return without(unit, missingOf(inputs, ['weightKg', 'heightCm']));
  }
  const metres = heightCm / F.cmInMetre.value;
  const value = weightKg / (metres * metres);
  const plain = { value, unit, missing: [], flags: [], why: [] } as const;
  if (age !== null && !isPast(age, 'bodyMassFromYears')) {
    const figures = { age, fromYears: F.bodyMassFromYears.value };
    return { ...plain, band: null, why: [{ code: 'adult-bands-only', figures }] };
  }
  const band = heldAt<BodyMassBand>(
    settled(value),
    [
      ['bodyMassClass3', 'class-3'],
      ['bodyMassClass2', 'class-2'],
      ['bodyMassClass1', 'class-1'],
      ['bodyMassOver', 'over'],
      ['bodyMassUsual', 'usual'],
    ],
    'under',
  );
  return { ...plain, band };
}
