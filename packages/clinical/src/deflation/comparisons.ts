import type { Comparison } from '../contract/threshold.js';

/** On which side of each limit of a run its rule applies. */
export const DEFLATION_COMPARISONS = {
  smallMarginMmHg: '<',
  insideWithinMmHg: '<=',
  gapAboveBackMmHg: '>',
  gapAboveLostMmHg: '>',
  slowestMmHgPerSecond: '<',
  fastestMmHgPerSecond: '>',
  fastestPerBeatMmHg: '>',
  slowPulsePerMinute: '<',
  waitAfterEstimateSeconds: '<',
  waitAfterReadingSeconds: '<',
  toZeroMmHg: '<',
  threeNumbersMmHg: '>',
  lowestSystolic: '<',
  highestSystolic: '>',
  lowestDiastolic: '<',
  highestDiastolic: '>',
  smallestPulsePressureMmHg: '<',
  largestPulsePressureMmHg: '>',
  ceilingPerMinute: '>',
  shortestSeconds: '<',
} as const satisfies Record<string, Comparison>;
