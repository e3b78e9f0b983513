import type { Comparison } from '../contract/threshold.js';

/** On which side of each limit of the usual pressure its rule applies. */
export const USUAL_COMPARISONS = {
  settledProbability: '>=',
} as const satisfies Readonly<Record<string, Comparison>>;
