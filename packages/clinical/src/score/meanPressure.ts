import { heldAt } from './bands.js';
import { beside, type DerivedValue, without } from './derivedValue.js';
import { SCORE_FIGURES as F } from './figures.js';
import { missingOf, type ScoreInputs } from './scoreInputs.js';

export type MeanPressureBand = 'low' | 'below-usual' | 'usual' | 'above-usual';

/** The mean pressure by the plain rule, with two other rules beside it; the rate-corrected one needs a pulse. mmHg. */
export type MeanPressure = DerivedValue<MeanPressureBand> & {
  readonly formFactorMmHg: number | null;
  readonly rateCorrectedMmHg: number | null;
};

/**
 * Estimates mean arterial pressure: the diastolic and a third of the pulse pressure; beside it the diastolic and 0.4
 * of it, and the diastolic and (0.33 + 0.0012 x pulse) of it. The band is that of the plain rule.
 *
 * Units: mmHg, unrounded. Limits: a fixed share only approximates the mean over a beat.
 * Errors: none; without a diastolic (palpation) there is none: why `value-needs-diastolic`.
 * Source: bedside handbook 5.1 (from memory).
 *
 * @example meanPressure(inputs) // 118/76: 90
 */
export function meanPressure(inputs: ScoreInputs): MeanPressure {
  const { systolic, diastolic, pulse } = inputs;
  if (systolic === null || diastolic === null) {
    const none = without<MeanPressureBand>('mmHg', missingOf(inputs, ['systolic', 'diastolic']));
    return { ...none, formFactorMmHg: null, rateCorrectedMmHg: null };
  }
  const pulsePressure = systolic - diastolic;
  const value = plainMeanPressure(systolic, diastolic);
  const band = heldAt<MeanPressureBand>(
    value,
    [
      ['meanLow', 'low'],
      ['meanUsualLow', 'below-usual'],
      ['meanUsualHigh', 'above-usual'],
    ],
    'usual',
  );
  return {
    value,
    unit: 'mmHg',
    band,
    missing: [],
    flags: band === 'low' ? [beside('mean-pressure-low', value, F.meanLow.value)] : [],
    why: [],
    formFactorMmHg: diastolic + F.meanFormFactor.value * pulsePressure,
    rateCorrectedMmHg:
      pulse === null
        ? null
        : diastolic + (F.meanRateBase.value + F.meanRateSlope.value * pulse) * pulsePressure,
  };
}

/** The plain rule: the diastolic and a third of the pulse pressure, mmHg. Source: bedside handbook 5.1 (from memory). */
export function plainMeanPressure(systolic: number, diastolic: number): number {
  return diastolic + (systolic - diastolic) / MEAN_PARTS;
}

const MEAN_PARTS = F.meanThird.value;
