import { normalCdf } from '../statistics/normal.js';

/** What is thought of a usual pressure: a normal distribution, in mmHg. */
export type Belief = { readonly mean: number; readonly sd: number };

/** Something measured of it, with its standard error, in mmHg. */
export type Evidence = { readonly mean: number; readonly se: number };

/**
 * What is thought after the evidence: both weigh by how sure they are. Without a prior (null: flat) the evidence alone.
 * Source: out-of-office handbook 17.4.
 *
 * @example updated({ mean: 130, sd: 15 }, { mean: 142, se: 6 }) // mean 140.34, sd 5.57
 */
export function updated(prior: Belief | null, { mean, se }: Evidence): Belief {
  if (prior === null) return { mean, sd: se };
  const weight = prior.sd ** 2 / (prior.sd ** 2 + se ** 2);
  return { mean: prior.mean + weight * (mean - prior.mean), sd: Math.sqrt(weight) * se };
}

/** The same belief on another scale: moved by an offset that is itself uncertain. Source: as above. */
export function onScale(belief: Belief, offset: number, offsetSd: number): Belief {
  return { mean: belief.mean + offset, sd: Math.hypot(belief.sd, offsetSd) };
}

/** The probability that the usual pressure is at or over a threshold, under the belief. Source: as above. */
export function probabilityOver({ mean, sd }: Belief, threshold: number): number {
  return normalCdf((mean - threshold) / sd);
}
