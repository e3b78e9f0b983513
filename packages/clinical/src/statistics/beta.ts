import betaQuantileOf from '@stdlib/stats-base-dists-beta-quantile';
import { defined } from './defined.js';

/** The x below which beta(`alpha`, `beta`) has probability `p`: the ends of an exact interval for a share. */
export function betaQuantile(p: number, alpha: number, beta: number): number {
  return defined(betaQuantileOf(p, alpha, beta), 'betaQuantile', p, alpha, beta);
}
