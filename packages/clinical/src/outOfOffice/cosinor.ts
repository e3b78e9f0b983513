import { fCdf } from '../statistics/fDistribution.js';
import { DAY_HOURS } from './clock.js';
import { COEFFICIENTS, type CosinorTimes, cosinorTimes } from './cosinorTimes.js';
import { type CurveExtremes, curveExtremes } from './curveExtremes.js';
import { WAVES_OF_HOUR } from './dayWaves.js';

/** One harmonic: amplitude in the unit of the values, the hour from local midnight at which it is highest. */
export type Harmonic = {
  readonly periodHours: number;
  readonly beta: number;
  readonly gamma: number;
  readonly amplitude: number;
  readonly peakHour: number;
  /** The peak as an angle, 0 to -360 degrees from local midnight. */
  readonly acrophaseDegrees: number;
  /** Standard errors by the delta method, covariance of beta and gamma included; null without residual freedom. */
  readonly amplitudeSe: number | null;
  readonly peakHourSe: number | null;
};

/** A fit of one or two harmonics. `f` and `p` test that every amplitude is zero; null where the fit leaves no residual. */
export type Cosinor = CurveExtremes & {
  readonly mesor: number;
  readonly mesorSe: number | null;
  readonly harmonics: readonly Harmonic[];
  readonly r2: number;
  readonly sse: number;
  readonly f: number | null;
  readonly p: number | null;
  readonly df: readonly [number, number];
};

const DEGREES = 360;

/**
 * Least-squares fit of `M + sum_j (beta_j cos 2 pi t / T_j + gamma_j sin 2 pi t / T_j)` with T = 24 h, and 12 h beside
 * it where `harmonics` is 2. `hours` are local hours from midnight (any day).
 *
 * Null where the curve cannot be told: fewer values than coefficients, times that do not tell them apart, or values
 * that are all the same.
 * Source: out-of-office handbook 15 (Cornelissen 2014, Theor Biol Med Model 11:16).
 */
export function cosinor(
  hours: readonly number[],
  values: readonly number[],
  harmonics: 1 | 2,
): Cosinor | null {
  const times = cosinorTimes(hours);
  return cosinorAt(times, values, rightSides(times, values), harmonics);
}

/** What values say of a fit before it is known with how many harmonics: their mean, and about it their squares and right sides. */
export type RightSides = {
  readonly centre: number;
  readonly total: number;
  readonly right0: number;
  readonly right1: number;
  readonly right2: number;
  readonly right3: number;
  readonly right4: number;
};

/** The right sides of the normal equations: one value for each time, in their order. */
export function rightSides({ n, waves }: CosinorTimes, values: readonly number[]): RightSides {
  let sum = 0;
  for (let i = 0; i < n; i++) sum += values[i] as number;
  // Normal equations of the values about their mean: small numbers lose least.
  const centre = sum / n;
  let total = 0;
  let right0 = 0;
  let right1 = 0;
  let right2 = 0;
  let right3 = 0;
  let right4 = 0;
  for (let i = 0, at = 0; i < n; i++, at += WAVES_OF_HOUR) {
    const distance = (values[i] as number) - centre;
    total += distance * distance;
    right0 += distance;
    right1 += (waves[at] as number) * distance;
    right2 += (waves[at + 1] as number) * distance;
    right3 += (waves[at + 2] as number) * distance;
    right4 += (waves[at + 3] as number) * distance;
  }
  return { centre, total, right0, right1, right2, right3, right4 };
}

/** The same fit at times and of right sides that are worked out already. */
export function cosinorAt(
  { n, waves, inverseOfOne, inverseOfTwo }: CosinorTimes,
  values: readonly number[],
  { centre, total, right0, right1, right2, right3, right4 }: RightSides,
  harmonics: 1 | 2,
): Cosinor | null {
  const inverse = harmonics === 1 ? inverseOfOne : inverseOfTwo;
  if (inverse === null || total === 0) return null;
  const level = coefficient(inverse, 0, right0, right1, right2, right3, right4);
  const b1 = coefficient(inverse, 1, right0, right1, right2, right3, right4);
  const g1 = coefficient(inverse, 2, right0, right1, right2, right3, right4);
  const b2 = coefficient(inverse, 3, right0, right1, right2, right3, right4);
  const g2 = coefficient(inverse, 4, right0, right1, right2, right3, right4);
  let sse = 0;
  for (let i = 0, at = 0; i < n; i++, at += WAVES_OF_HOUR) {
    const fitted =
      level +
      (waves[at] as number) * b1 +
      (waves[at + 1] as number) * g1 +
      (waves[at + 2] as number) * b2 +
      (waves[at + 3] as number) * g2;
    sse += ((values[i] as number) - centre - fitted) ** 2;
  }
  const df = [2 * harmonics, n - 1 - 2 * harmonics] as const;
  const variance = df[1] > 0 ? sse / df[1] : null;
  const f = variance === null || variance === 0 ? null : (total - sse) / df[0] / variance;
  const mesor = centre + level;
  const day = harmonicOf(0, b1, g1, inverse, variance);
  const { highest, lowest } = curveExtremes(mesor, { b1, g1, b2, g2 });
  return {
    mesor,
    mesorSe: variance === null ? null : Math.sqrt(variance * (inverse[0] as number)),
    harmonics: harmonics === 1 ? [day] : [day, harmonicOf(1, b2, g2, inverse, variance)],
    r2: 1 - sse / total,
    sse,
    f,
    // The upper tail itself: 1 minus the lower one would lose what is far out.
    p: f === null ? null : f <= 0 ? 1 : fCdf(1 / f, df[1], df[0]),
    df,
    highest,
    lowest,
  };
}

/** A row of the inverse times the right side; of a harmonic that is not fitted the row is 0, and so is the coefficient. */
function coefficient(
  inverse: Float64Array,
  row: number,
  right0: number,
  right1: number,
  right2: number,
  right3: number,
  right4: number,
): number {
  const at = row * COEFFICIENTS;
  return (
    (inverse[at] as number) * right0 +
    (inverse[at + 1] as number) * right1 +
    (inverse[at + 2] as number) * right2 +
    (inverse[at + 3] as number) * right3 +
    (inverse[at + 4] as number) * right4
  );
}

function harmonicOf(
  j: number,
  beta: number,
  gamma: number,
  inverse: Float64Array,
  variance: number | null,
): Harmonic {
  const at = 1 + 2 * j;
  const periodHours = DAY_HOURS / (j + 1);
  const amplitude = Math.hypot(beta, gamma);
  const turn = Math.atan2(gamma, beta) / (2 * Math.PI) + 1;
  const peakHour = (turn < 1 ? turn : turn - 1) * periodHours;
  let amplitudeSe: number | null = null;
  let peakHourSe: number | null = null;
  if (variance !== null && amplitude > 0) {
    const bb = variance * (inverse[at * COEFFICIENTS + at] as number);
    const bg = variance * (inverse[at * COEFFICIENTS + at + 1] as number);
    const gg = variance * (inverse[(at + 1) * COEFFICIENTS + at + 1] as number);
    const along = (beta * beta * bb + 2 * beta * gamma * bg + gamma * gamma * gg) / amplitude ** 2;
    const across = (gamma * gamma * bb - 2 * beta * gamma * bg + beta * beta * gg) / amplitude ** 2;
    amplitudeSe = Math.sqrt(Math.max(0, along));
    peakHourSe = (Math.sqrt(Math.max(0, across)) / amplitude) * (periodHours / (2 * Math.PI));
  }
  return {
    periodHours,
    beta,
    gamma,
    amplitude,
    peakHour,
    acrophaseDegrees: peakHour === 0 ? 0 : (-DEGREES * peakHour) / periodHours,
    amplitudeSe,
    peakHourSe,
  };
}
