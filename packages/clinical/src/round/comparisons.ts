import type { Comparison } from '../contract/threshold.js';

/** On which side of each limit of a round its rule applies. */
export const ROUND_COMPARISONS = {
  escDifferenceMmHg: '>',
  escEshDifferenceMmHg: '>',
  eshDifferenceMmHg: '>=',
  ahaDifferenceMmHg: '>',
  jaccDifferenceMmHg: '>',
  jshDifferenceMmHg: '>=',
  niceDifferenceMmHg: '>',
  ishOneEnoughSystolic: '<',
  ishOneEnoughDiastolic: '<',
  niceOneEnoughSystolic: '<',
  niceOneEnoughDiastolic: '<',
  /** The same for every guideline and for the 90th centiles of a child. */
  oneEnoughSystolic: '<',
  oneEnoughDiastolic: '<',
  irregularReadings: '<',
  stopAtReadings: '>=',
  niceArmMmHg: '>',
  ishArmMmHg: '>',
  escArmMmHg: '>',
  lookFurtherMmHg: '>',
  gapSeconds: '<',
  restSeconds: '>=',
  pregnancyAskFromMonths: '>=',
  pregnancyAskUnderMonths: '<',
  weeksAfterBirth: '<=',
  singlePoints: '>=',
  childSlowPulsePerMinute: '<',
  childSlowUnderYears: '<',
  childUnderYears: '<',
} as const satisfies Record<string, Comparison>;
