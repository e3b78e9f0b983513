import type { Flag } from '../contract/flag.js';
import type { ScoreInput } from './scoreInputs.js';

export type DerivedUnit = 'mmHg' | '/min per mmHg' | 'years/min per mmHg' | 'mmHg/min' | 'kg/m2';

/** What a derived value must be read with. */
export type DerivedFlagCode =
  | 'mean-pressure-low'
  | 'pulse-pressure-narrow'
  | 'pulse-pressure-wide'
  | 'shock-index-raised'
  | 'shock-index-high'
  | 'modified-shock-index-low'
  | 'modified-shock-index-high'
  | 'age-shock-index-high'
  | 'paediatric-shock-index-high';

/** Why a value or its band is null. */
export type DerivedReasonCode =
  | 'value-needs-diastolic'
  | 'inputs-missing'
  | 'no-limit-for-age'
  | 'adult-bands-only';

/** A value computed from others, unrounded, with its unit; null and the reason where it has none. */
export type DerivedValue<Band extends string> = {
  readonly value: number | null;
  readonly unit: DerivedUnit;
  readonly band: Band | null;
  readonly missing: readonly ScoreInput[];
  readonly flags: readonly Flag<DerivedFlagCode>[];
  readonly why: readonly Flag<DerivedReasonCode>[];
};

/** No value because inputs are missing; a missing diastolic is what palpation leaves. */
export function without<Band extends string>(
  unit: DerivedUnit,
  missing: readonly ScoreInput[],
): DerivedValue<Band> {
  const isPalpated = missing.length === 1 && missing[0] === 'diastolic';
  const code = isPalpated ? 'value-needs-diastolic' : 'inputs-missing';
  return {
    value: null,
    unit,
    band: null,
    missing,
    flags: [],
    why: [{ code, figures: { missing: missing.length } }],
  };
}

/** A flag that tells a value beside its limit. */
export function beside(
  code: DerivedFlagCode,
  value: number,
  limit: number,
  more: Flag['figures'] = {},
): Flag<DerivedFlagCode> {
  return { code, figures: { value, limit, ...more } };
}
