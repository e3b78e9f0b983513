import type { SidedLimit } from '../contract/shownPressure.js';
import { OUT_OF_OFFICE_FIGURES as F } from './figures.js';
import type { HomeSchemeId } from './homeSchemes.js';

/** Which readings of a sitting are averaged. */
export const SITTING_USES = ['all', 'first-two', 'without-first'] as const;
export type SittingUse = (typeof SITTING_USES)[number];

/** What a mean is of: every reading alike, or every sitting, whose readings are averaged first. */
export const HOME_AVERAGED = ['readings', 'sittings'] as const;
export type HomeAveraged = (typeof HOME_AVERAGED)[number];

/** What is held against the limits: one mean, or morning and evening each for itself. */
export const HOME_JUDGED = ['together', 'each-part'] as const;
export type HomeJudged = (typeof HOME_JUDGED)[number];

/**
 * A guideline's way with readings taken at home, as data: the out-of-office handbook's rule (section 3) with its
 * parameters. Null is "no such rule here". Pressures in mmHg, times in minutes from local midnight.
 */
export type HomeRules = {
  /** Readings in a sitting and days that are asked for; what the diary offers. */
  readonly readingsInSitting: number;
  readonly daysAsked: number;
  /** Calendar days from the first with a reading that are left out. */
  readonly droppedDays: number;
  readonly sittingUse: SittingUse;
  /** What a mean is of. With sittings of unequal size the two differ. */
  readonly averaged: HomeAveraged;
  /** Fewest days with a reading, those left out counted, and fewest readings after leaving out. */
  readonly leastDays: SidedLimit | null;
  readonly leastReadings: SidedLimit | null;
  readonly judged: HomeJudged;
  readonly highSystolic: SidedLimit | null;
  readonly highDiastolic: SidedLimit | null;
  readonly scheme: HomeSchemeId;
  /** Whether readings at the wrist are averaged; never with those of the arm. */
  readonly averagesWrist: boolean;
  readonly dayStartsAt: number;
  readonly morningTo: number;
  readonly eveningFrom: number;
  readonly sittingGapMinutes: number;
};

/** What stands where a place has chosen no guideline: means, and no limit. */
export const DEFAULT_HOME_RULES: HomeRules = {
  readingsInSitting: F.homeReadingsInSitting.value,
  daysAsked: F.homeDays.value,
  droppedDays: F.homeDroppedDays.value,
  sittingUse: 'all',
  averaged: 'readings',
  leastDays: { comparison: '>=', limit: F.homeLeastDays.value },
  leastReadings: { comparison: '>=', limit: F.homeLeastReadings.value },
  judged: 'together',
  highSystolic: null,
  highDiastolic: null,
  scheme: 'none',
  averagesWrist: false,
  dayStartsAt: F.dayStartsAt.value,
  morningTo: F.morningTo.value,
  eveningFrom: F.eveningFrom.value,
  sittingGapMinutes: F.sittingGapMinutes.value,
};
