import { sineOfTurns } from '../exact/circle.js';
import { HEART_FIGURES, type VariationTargets } from './figures.js';
import type { Variation } from './rhythm.js';

const row = (
  sdnnMs: number,
  rmssdMs: number,
  slowShare: number,
  breathHz = 0.25,
  drift: VariationTargets['drift'] = 'even',
): VariationTargets => ({ sdnnMs, rmssdMs, slowShare, breathHz, drift, independentShare: 0 });

/** Targets of variation by group: physiology handbook 2.1 (from memory but for the last four, choices of the book). */
export const VARIATION_TARGETS: Readonly<Record<Variation, VariationTargets>> = {
  '25-34': row(50, 41, 0.9),
  '35-44': row(45, 34, 1),
  '45-54': row(37, 25, 1.1),
  '55-64': row(32, 21, 1.2),
  '65-74': row(29, 19, 1.2),
  '80-plus': row(24, 15, 1.2),
  athlete: row(80, 75, 0.6, 0.22),
  failure: row(15, 10, 0.6, 0.33, 'failing'),
  'fixed-fast': row(3, 2, 0.6),
  independent: { ...row(0, 0, 1), independentShare: HEART_FIGURES.independentShare.value },
  none: row(0, 0, 1),
};

/** Amplitudes of the two waves of the heart period, the SD of the slow rest, and of what each beat has for itself, all in seconds. */
export type Amplitudes = {
  readonly breathSeconds: number;
  readonly slowSeconds: number;
  readonly driftSeconds: number;
  readonly independentSeconds: number;
};

/**
 * The amplitudes that give a group's SDNN and RMSSD at a mean interval (seconds). A sine of variance V sampled every T
 * adds V to the square of the SDNN and 4 V sin^2(pi f T) to that of the RMSSD. Where a fast heart has no room for a
 * group's variation, all of it is less. Source: physiology handbook 2.1.
 */
export function amplitudesFor(targets: VariationTargets, intervalSeconds: number): Amplitudes {
  const independentSeconds = targets.independentShare * intervalSeconds;
  if (targets.sdnnMs === 0) return { breathSeconds: 0, slowSeconds: 0, driftSeconds: 0, independentSeconds };
  const sdnn = targets.sdnnMs / 1000;
  const rmssd = targets.rmssdMs / 1000;
  const inBreath = square(sineOfTurns((targets.breathHz * intervalSeconds) / 2));
  const inSlow = square(sineOfTurns((HEART_FIGURES.mayerHz.value * intervalSeconds) / 2));
  const least = Math.min(square(HEART_FIGURES.leastDriftSeconds.value), square(sdnn) / 4);
  let share = targets.slowShare;
  let breath = variance(share);
  function variance(slowShare: number): number {
    return square(rmssd) / (4 * (inBreath + slowShare * inSlow));
  }
  while (share > 0 && square(sdnn) - (1 + share) * breath < least) {
    share = Math.max(0, share - 0.05);
    breath = variance(share);
  }
  const drift = Math.max(least, square(sdnn) - (1 + share) * breath);
  const [breathSeconds, slowSeconds] = [Math.sqrt(2 * breath), Math.sqrt(2 * share * breath)];
  const driftSeconds = Math.sqrt(drift);
  const most = HEART_FIGURES.mostVariationShare.value * intervalSeconds;
  const by = Math.min(1, most / (breathSeconds + slowSeconds + 2.5 * driftSeconds));
  return {
    breathSeconds: by * breathSeconds,
    slowSeconds: by * slowSeconds,
    driftSeconds: by * driftSeconds,
    independentSeconds,
  };
}

const square = (x: number) => x * x;
