import type { Comparison } from '../contract/threshold.js';

const LEAST = '>=';

/** On which side of each limit of a series its rule applies. */
export const OUT_OF_OFFICE_COMPARISONS = {
  homeHighSystolic: '>=',
  homeHighDiastolic: '>=',
  homeLeastDays: LEAST,
  homeLeastReadings: LEAST,
  leastPercent: LEAST,
  leastDayReadings: LEAST,
  leastNightReadings: LEAST,
  wholeHighSystolic: '>=',
  wholeHighDiastolic: '>=',
  dayHighSystolic: '>=',
  dayHighDiastolic: '>=',
  nightHighSystolic: '>=',
  nightHighDiastolic: '>=',
  sittingGapMinutes: '<',
  extremeDipRatio: '<=',
  dipperRatio: '<=',
  nonDipperRatio: '<=',
  continuesWithinDays: '<=',
  officeWithinDays: '<=',
  niceTargetSystolic: '<',
  niceTargetDiastolic: '<',
  niceOlderFromYears: '>=',
  niceOlderTargetSystolic: '<',
  niceOlderTargetDiastolic: '<',
  whiteCoatSystolic: '>',
  whiteCoatDiastolic: '>',
} as const satisfies Readonly<Record<string, Comparison>>;
