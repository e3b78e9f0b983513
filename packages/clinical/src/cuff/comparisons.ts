import type { Comparison } from '../contract/threshold.js';

/** On which side of each limit of choosing a cuff and a place its rule applies. */
export const CUFF_COMPARISONS = {
  childUnderMonths: '<',
  latePregnancyFromWeeks: '>=',
} as const satisfies Record<string, Comparison>;
