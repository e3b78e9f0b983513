import { fCdf } from '../statistics/fDistribution.js';
import { DAY_HOURS } from './clock.js';
import { type CosinorTimes, cosinorTimes } from './cosinorTimes.js';
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
  return cosinorAt(cosinorTimes(hours), values, harmonics);
}

/** The same fit at times that are worked out already: one value for each, in their order. */
export function cosinorAt(
  { n, waves, inverseOfOne, inverseOfTwo }: CosinorTimes,
  values: readonly number[],
  harmonics: 1 | 2,
): Cosinor | null {
  const size = 1 + 2 * harmonics;
  const inverse = harmonics === 1 ? inverseOfOne : inverseOfTwo;
  if (inverse === null) return null;
  let sum = 0;
  for (let i = 0; i < n; i++) sum += values[i] as number;
  // Normal equations of the values about their mean: small numbers lose least.
  const centre = sum / n;
  const right = new Float64Array(1 + WAVES_OF_HOUR);
  let total = 0;
  for (let i = 0, at = 0; i < n; i++, at += WAVES_OF_HOUR) {
    const distance = (values[i] as number) - centre;
    total += distance * distance;
    right[0] = (right[0] as number) + distance;
    for (let k = 0; k < WAVES_OF_HOUR; k++) {
      right[k + 1] = (right[k + 1] as number) + (waves[at + k] as number) * distance;
    }
  }
  if (total === 0) return null;
  // Those of a harmonic that is not fitted stay 0.
  const coefficients = new Float64Array(1 + WAVES_OF_HOUR);
  for (let a = 0; a < size; a++) {
    let product = 0;
    for (let b = 0; b < size; b++) product += (inverse[a * size + b] as number) * (right[b] as number);
    coefficients[a] = product;
  }
  const [level, b1, g1, b2, g2] = coefficients as unknown as readonly [
    number,
    number,
    number,
    number,
    number,
  ];
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
  const df = [size - 1, n - size] as const;
  const variance = df[1] > 0 ? sse / df[1] : null;
  const f = variance === null || variance === 0 ? null : (total - sse) / df[0] / variance;
  const mesor = centre + level;
  const day = harmonicOf(0, b1, g1, inverse, size, variance);
  return {
    mesor,
    mesorSe: variance === null ? null : Math.sqrt(variance * (inverse[0] as number)),
    harmonics: harmonics === 1 ? [day] : [day, harmonicOf(1, b2, g2, inverse, size, variance)],
    r2: 1 - sse / total,
    sse,
    f,
    // The upper tail itself: 1 minus the lower one would lose what is far out.
    p: f === null ? null : f <= 0 ? 1 : fCdf(1 / f, df[1], df[0]),
    df,
    ...curveExtremes(mesor, [b1, g1, b2, g2]),
  };
}

function harmonicOf(
  j: number,
  beta: number,
  gamma: number,
  inverse: Float64Array,
  size: number,
  variance: number | null,
): Harmonic {
  const at = 1 + 2 * j;
  const periodHours = DAY_HOURS / (j + 1);
  const amplitude = Math.hypot(beta, gamma);
  const turn = Math.atan2(gamma, beta) / (2 * Math.PI);
  const peakHour = ((turn + 1) % 1) * periodHours;
  const errors = { amplitudeSe: null as number | null, peakHourSe: null as number | null };
  if (variance !== null && amplitude > 0) {
    const cell = (a: number, b: number) => variance * (inverse[a * size + b] as number);
    const [bb, bg, gg] = [cell(at, at), cell(at, at + 1), cell(at + 1, at + 1)];
    const along = (beta * beta * bb + 2 * beta * gamma * bg + gamma * gamma * gg) / amplitude ** 2;
    const across = (gamma * gamma * bb - 2 * beta * gamma * bg + beta * beta * gg) / amplitude ** 2;
    errors.amplitudeSe = Math.sqrt(Math.max(0, along));
    errors.peakHourSe = (Math.sqrt(Math.max(0, across)) / amplitude) * (periodHours / (2 * Math.PI));
  }
  return {
    periodHours,
    beta,
    gamma,
    amplitude,
    peakHour,
    acrophaseDegrees: peakHour === 0 ? 0 : (-DEGREES * peakHour) / periodHours,
    ...errors,
  };
}
