import { fCdf } from '../statistics/fDistribution.js';
import { DAY_HOURS, DAY_MINUTES } from './clock.js';

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
export type Cosinor = {
  readonly mesor: number;
  readonly mesorSe: number | null;
  readonly harmonics: readonly Harmonic[];
  readonly r2: number;
  readonly sse: number;
  readonly f: number | null;
  readonly p: number | null;
  readonly df: readonly [number, number];
  /** Highest and lowest point of the fitted curve on a grid of one minute. */
  readonly highest: { readonly hour: number; readonly value: number };
  readonly lowest: { readonly hour: number; readonly value: number };
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
  const size = 1 + 2 * harmonics;
  const n = values.length;
  if (n < size) return null;
  const centre = values.reduce((sum, value) => sum + value, 0) / n;
  // Normal equations of the values about their mean: small numbers lose least.
  const normal = new Float64Array(size * size);
  const right = new Float64Array(size);
  const row = new Float64Array(size);
  let total = 0;
  for (let i = 0; i < n; i++) {
    fillRow(row, hours[i] as number);
    const distance = (values[i] as number) - centre;
    total += distance * distance;
    for (let a = 0; a < size; a++) {
      const one = row[a] as number;
      right[a] = (right[a] as number) + one * distance;
      for (let b = a; b < size; b++) {
        normal[a * size + b] = (normal[a * size + b] as number) + one * (row[b] as number);
      }
    }
  }
  for (let a = 1; a < size; a++) {
    for (let b = 0; b < a; b++) normal[a * size + b] = normal[b * size + a] as number;
  }
  const inverse = inverted(normal, size);
  if (inverse === null || total === 0) return null;
  const coefficients = new Float64Array(size);
  for (let a = 0; a < size; a++) {
    let sum = 0;
    for (let b = 0; b < size; b++) sum += (inverse[a * size + b] as number) * (right[b] as number);
    coefficients[a] = sum;
  }
  let sse = 0;
  for (let i = 0; i < n; i++) {
    fillRow(row, hours[i] as number);
    let fitted = 0;
    for (let a = 0; a < size; a++) fitted += (row[a] as number) * (coefficients[a] as number);
    sse += ((values[i] as number) - centre - fitted) ** 2;
  }
  const df = [size - 1, n - size] as const;
  const variance = df[1] > 0 ? sse / df[1] : null;
  const f = variance === null || variance === 0 ? null : (total - sse) / df[0] / variance;
  const mesor = centre + (coefficients[0] as number);
  const curve = extremes(mesor, coefficients);
  const seOf = (at: number) =>
    variance === null ? null : Math.sqrt(variance * (inverse[at * size + at] as number));
  return {
    mesor,
    mesorSe: seOf(0),
    harmonics: Array.from({ length: harmonics }, (_, j) => harmonicOf(j, coefficients, inverse, variance)),
    r2: 1 - sse / total,
    sse,
    f,
    // The upper tail itself: 1 minus the lower one would lose what is far out.
    p: f === null ? null : f <= 0 ? 1 : fCdf(1 / f, df[1], df[0]),
    df,
    ...curve,
  };
}

/** 1, and a cosine and a sine for each harmonic; those of whole minutes, as nearly all times are, are known beforehand. */
function fillRow(row: Float64Array, hour: number): void {
  row[0] = 1;
  const minute = hour * 60;
  const whole = Math.round(minute);
  if (Math.abs(minute - whole) < NEGLIGIBLE_MINUTES) {
    const at = (((whole % DAY_MINUTES) + DAY_MINUTES) % DAY_MINUTES) * WIDEST;
    for (let a = 1; a < row.length; a++) row[a] = WAVES[at + a - 1] as number;
  } else fillWaves(row, 1, row.length - 1, hour);
}

/** Cosines and sines at an hour, from a place in a list on. */
function fillWaves(into: Float64Array, from: number, count: number, hour: number): void {
  for (let j = 0; 2 * j < count; j++) {
    const angle = (2 * Math.PI * (j + 1) * hour) / DAY_HOURS;
    into[from + 2 * j] = Math.cos(angle);
    into[from + 2 * j + 1] = Math.sin(angle);
  }
}

/** What rounding leaves of a whole minute in hours. */
const NEGLIGIBLE_MINUTES = 1e-9;

/** Cosine and sine of both harmonics at every minute of a day. */
const WIDEST = 4;
const WAVES = new Float64Array(DAY_MINUTES * WIDEST);
for (let minute = 0; minute < DAY_MINUTES; minute++) fillWaves(WAVES, minute * WIDEST, WIDEST, minute / 60);

function harmonicOf(
  j: number,
  coefficients: Float64Array,
  inverse: Float64Array,
  variance: number | null,
): Harmonic {
  const at = 1 + 2 * j;
  const [beta, gamma] = [coefficients[at] as number, coefficients[at + 1] as number];
  const periodHours = DAY_HOURS / (j + 1);
  const amplitude = Math.hypot(beta, gamma);
  const turn = Math.atan2(gamma, beta) / (2 * Math.PI);
  const peakHour = ((turn + 1) % 1) * periodHours;
  const errors = { amplitudeSe: null as number | null, peakHourSe: null as number | null };
  if (variance !== null && amplitude > 0) {
    const cell = (a: number, b: number) => variance * (inverse[a * coefficients.length + b] as number);
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

function extremes(mesor: number, coefficients: Float64Array): Pick<Cosinor, 'highest' | 'lowest'> {
  const [, b1 = 0, g1 = 0, b2 = 0, g2 = 0] = coefficients;
  let [highest, lowest] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  let [highestAt, lowestAt] = [0, 0];
  for (let minute = 0, at = 0; minute < DAY_MINUTES; minute++, at += WIDEST) {
    const wave =
      b1 * (WAVES[at] as number) +
      g1 * (WAVES[at + 1] as number) +
      b2 * (WAVES[at + 2] as number) +
      g2 * (WAVES[at + 3] as number);
    if (wave > highest) {
      highest = wave;
      highestAt = minute;
    }
    if (wave < lowest) {
      lowest = wave;
      lowestAt = minute;
    }
  }
  return {
    highest: { hour: highestAt / 60, value: mesor + highest },
    lowest: { hour: lowestAt / 60, value: mesor + lowest },
  };
}

/** The inverse by Gauss-Jordan with pivots, row by row in one list; null where the equations do not tell the coefficients apart. */
function inverted(matrix: Float64Array, size: number): Float64Array | null {
  const work = matrix.slice();
  const inverse = new Float64Array(size * size);
  let scale = 0;
  for (let at = 0; at < work.length; at++) scale = Math.max(scale, Math.abs(work[at] as number));
  for (let a = 0; a < size; a++) inverse[a * size + a] = 1;
  for (let column = 0; column < size; column++) {
    let best = column;
    for (let a = column + 1; a < size; a++) {
      if (Math.abs(work[a * size + column] as number) > Math.abs(work[best * size + column] as number))
        best = a;
    }
    const pivot = work[best * size + column] as number;
    if (Math.abs(pivot) <= scale * SINGULAR) return null;
    for (const one of [work, inverse]) {
      for (let b = 0; b < size; b++) {
        const chosen = one[best * size + b] as number;
        one[best * size + b] = one[column * size + b] as number;
        one[column * size + b] = chosen / pivot;
      }
    }
    for (let a = 0; a < size; a++) {
      if (a === column) continue;
      const factor = work[a * size + column] as number;
      for (const one of [work, inverse]) {
        for (let b = 0; b < size; b++) {
          one[a * size + b] = (one[a * size + b] as number) - factor * (one[column * size + b] as number);
        }
      }
    }
  }
  return inverse;
}

/** A pivot this small beside the largest number is what rounding left of a zero. */
const SINGULAR = 1e-12;
