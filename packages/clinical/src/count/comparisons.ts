import type { Comparison } from '../contract/threshold.js';

/** On which side of each limit of counting its rule applies: below 60, above 100, more than 10. */
export const COUNT_COMPARISONS = {
  shortestWindowSeconds: '<',
  longestWindowSeconds: '>',
  ceilingPerMinute: '>',
  slowPerMinute: '<',
  fastPerMinute: '>',
  barredAbovePerMinute: '>',
  barredWhenFastSeconds: '<=',
  breathsShortWindowSeconds: '>=',
  youngUnderMonths: '<',
  disagreementPerMinute: '>',
  verySlowPulsePerMinute: '<=',
  veryFastPulsePerMinute: '>=',
  verySlowBreathsPerMinute: '<=',
  veryFastBreathsPerMinute: '>=',
  adultFromMonths: '>=',
  deficitReportPerMinute: '>',
} as const satisfies Record<string, Comparison>;
