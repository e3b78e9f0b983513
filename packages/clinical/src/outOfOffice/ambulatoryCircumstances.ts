import type { DayNight } from './periods.js';

/** What is known of the person and the recording, and decided by hand about single readings (by `index`). */
export type AmbulatoryCircumstances = {
  readonly ageYears: number | null;
  readonly isPregnant: boolean;
  /** How many readings the recorder was set to take; null is not known, then those that came are counted. */
  readonly scheduled: number | null;
  readonly dayNight: DayNight;
  /** Whether readings later than 24 hours after the first are used too. */
  readonly isAllUsed: boolean;
  readonly rejected: ReadonlySet<number>;
  readonly restored: ReadonlySet<number>;
};
