import { tQuantile } from './studentT.js';
import { WAVE_REACH, type Wave, waveVarianceOfMean } from './wave.js';

/** What is known of a series whose long-run mean is wanted. */
export type SeriesPowers = {
  readonly n: number;
  /** The {@link cosinePowers} from the slowest; at least the 80 slowest, or all n - 1. */
  readonly powers: Float64Array;
  /** A wave that stands out: it averages out and must not count as noise. */
  readonly wave: Wave | null;
  /** Further variance of the mean, in squared units of the values: the rounding of its first and last time. */
  readonly furtherVariance: number;
};

/** More than these say nothing new about the mean of a long series. */
export const POWERS_OF_MEAN = 80;

/**
 * How the values may depend on each other: the correlation of each with the next, and how likely that is
 * beforehand. Independent values are the likeliest; the rest is spread towards slow wandering, since a
 * short series cannot rule it out. Chosen so that the intervals cover evenly over the draws of prove/taps.mjs.
 */
const CORRELATIONS = [0, 0.4, 0.65, 0.8, 0.9, 0.96];
const BEFOREHAND = [0.68, 0.032, 0.048, 0.064, 0.088, 0.088];

/** Variance of one timing error in variances of the person's intervals; all equally likely beforehand. */
const JITTER_SHARES = [0, 0.1, 0.5, 2, 8, 40];

/**
 * Half the width of the interval, in the unit of the values, that holds the long-run mean of a series with the
 * given probability: a first-order autoregression seen through independent timing errors at the ends of each
 * value (so that neighbours share one with opposite sign, and only two of them touch the mean).
 *
 * Method: the likelihood of the powers, taken as independent (Whittle 1953), over a grid of correlations and
 * jitter shares, the scale integrated out with prior 1 / scale; the posterior of the mean, a mixture of t
 * distributions, is replaced by the t of the same variance and fourth moment. Values that are all alike give 0.
 * Limits: a series of fewer than five; a trend, or wandering slower than the whole series, cannot be seen in it.
 */
export function longRunHalfWidth(series: SeriesPowers, probability: number): number {
  const { n, wave } = series;
  const further = series.furtherVariance + (wave === null ? 0 : waveVarianceOfMean(wave, n));
  const noise = noiseOf(series);
  const mixture = noise.total === 0 ? [] : mixtureFor(noise, n);
  return halfWidthOf(mixture, noise.powers.length, further, probability);
}

/** The powers that are noise, with the cosine of the angle of each. */
type Noise = { readonly powers: Float64Array; readonly cosines: Float64Array; readonly total: number };

/** One way in which the values may depend on each other: its log probability, and the mean's variance under it. */
type Part = { readonly log: number; readonly variance: number };

function mixtureFor({ powers, cosines, total }: Noise, n: number): Part[] {
  const count = powers.length;
  const parts: Part[] = [];
  const person = new Float64Array(count);
  for (let i = 0; i < CORRELATIONS.length; i++) {
    const correlation = CORRELATIONS[i] as number;
    const before = Math.log(BEFOREHAND[i] as number);
    const personOfMean = varianceOfMean(correlation, n);
    for (let k = 0; k < count; k++) person[k] = autoregressive(correlation, cosines[k] as number);
    for (const share of JITTER_SHARES) {
      let product = 1;
      let sum = 0;
      for (let k = 0; k < count; k++) {
        const expected = (person[k] as number) + 2 * share * (1 - (cosines[k] as number));
        product *= expected;
        sum += (powers[k] as number) / expected;
      }
      const log = before - 0.5 * Math.log(product) - 0.5 * count * Math.log(sum / total);
      parts.push({ log, variance: (sum / count) * (personOfMean + (2 * share) / (n * n)) });
    }
  }
  return parts;
}

/** All powers of the mean's uncertainty but those of the wave. */
function noiseOf({ n, powers, wave }: SeriesPowers): Noise {
  const most = Math.min(powers.length, POWERS_OF_MEAN);
  const kept = new Float64Array(most);
  const cosines = new Float64Array(most);
  let count = 0;
  let total = 0;
  for (let place = 1; place <= most; place++) {
    if (wave !== null && Math.abs(place - wave.place) <= WAVE_REACH) continue;
    const power = powers[place - 1] as number;
    kept[count] = power;
    cosines[count] = Math.cos((Math.PI * place) / n);
    total += power;
    count++;
  }
  return { powers: kept.subarray(0, count), cosines: cosines.subarray(0, count), total };
}

/** Power of a first-order autoregression of variance 1 at the angle with this cosine. */
function autoregressive(correlation: number, cosine: number): number {
  return (1 - correlation ** 2) / (1 + correlation ** 2 - 2 * correlation * cosine);
}

/** Variance of the mean of `n` values of a first-order autoregression of variance 1. */
function varianceOfMean(correlation: number, n: number): number {
  const rest = 1 - correlation;
  return ((1 + correlation) / rest - (2 * correlation * (1 - correlation ** n)) / (n * rest * rest)) / n;
}

/**
 * Half-width from the t distribution with the variance and fourth moment of the mixture, each part of it a t with
 * `df` degrees, and of a normal error of the `further` variance beside it.
 */
function halfWidthOf(parts: readonly Part[], df: number, further: number, probability: number): number {
  // Fewer than five degrees have no fourth moment.
  const degrees = Math.max(df, 5);
  let likeliest = -Infinity;
  for (const { log } of parts) likeliest = Math.max(likeliest, log);
  let weights = 0;
  let second = 0;
  let fourth = 0;
  for (const { log, variance } of parts) {
    const weight = Math.exp(log - likeliest);
    const spread = (variance * degrees) / (degrees - 2);
    weights += weight;
    second += weight * spread;
    fourth += (weight * 3 * spread * spread * (degrees - 2)) / (degrees - 4);
  }
  const noise = weights === 0 ? 0 : second / weights;
  const variance = noise + further;
  if (variance === 0) return 0;
  const moment = (weights === 0 ? 0 : fourth / weights) + 6 * noise * further + 3 * further * further;
  const excess = Math.max(moment / (variance * variance) - 3, 1e-6);
  const matched = 4 + 6 / excess;
  return tQuantile((1 + probability) / 2, matched) * Math.sqrt((variance * (matched - 2)) / matched);
}
