import { settled } from '../contract/threshold.js';
import { isPast } from './bands.js';
import { beside, type DerivedFlagCode, type DerivedValue, without } from './derivedValue.js';
import { SCORE_FIGURES as F } from './figures.js';
import { missingOf, type ScoreInputs } from './scoreInputs.js';

export type PulsePressureBand = 'narrow' | 'usual' | 'wide';

/**
 * The systolic minus the diastolic. Narrow under a quarter of the systolic, wide from 60 (older adults); a very high
 * systolic can be both, and is then called narrow with both flags.
 *
 * Units: mmHg. Errors: none; without a diastolic (palpation) there is none: why `value-needs-diastolic`.
 * Source: bedside handbook 5.1 (formula derived, bands from memory).
 */
export function pulsePressure(inputs: ScoreInputs): DerivedValue<PulsePressureBand> {
  const { systolic, diastolic } = inputs;
  if (systolic === null || diastolic === null) {
    return without('mmHg', missingOf(inputs, ['systolic', 'diastolic']));
  }
  const value = systolic - diastolic;
  const isNarrow = isPast(settled(value / systolic), 'pulsePressureNarrow');
  const isWide = isPast(value, 'pulsePressureWide');
  const told: readonly (readonly [boolean, DerivedFlagCode, number])[] = [
    [isNarrow, 'pulse-pressure-narrow', F.pulsePressureNarrow.value * systolic],
    [isWide, 'pulse-pressure-wide', F.pulsePressureWide.value],
  ];
  return {
    value,
    unit: 'mmHg',
    band: isNarrow ? 'narrow' : isWide ? 'wide' : 'usual',
    missing: [],
    flags: told.filter(([holds]) => holds).map(([, code, limit]) => beside(code, value, limit)),
    why: [],
  };
}
