import type { Comparison } from '../contract/threshold.js';

/** On which side of each limit of keeping gauges its rule applies. */
export const EQUIPMENT_COMPARISONS = {
  mostErrorMmHg: '>',
  mostRestMmHg: '>',
  fewestPoints: '<',
  fromMmHg: '>',
  toMmHg: '<',
  mostLeakMmHgPerMinute: '>',
  shortestLeakSeconds: '<',
  zeroDays: '>',
  comparisonMonths: '>',
  mercuryComparisonMonths: '>',
  leakMonths: '>',
} as const satisfies Record<string, Comparison>;
