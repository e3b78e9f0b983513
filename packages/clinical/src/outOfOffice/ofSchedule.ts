import { type Edited, isNotScheduled } from './recordingKept.js';
import type { SeriesReading } from './seriesReading.js';

/** What is not used of a recording, by whether the recorder was set to take it. Numbers of readings. */
export type OfSchedule = {
  readonly failed: number;
  /** Taken for an artefact, or rejected by hand. */
  readonly edited: number;
  /** Started by hand, used or not: beside the schedule. */
  readonly byHand: number;
};

/** The same of one recording; doubles and what lies beyond the first day were never on the schedule. Source: out-of-office handbook 5. */
export function ofSchedule(readings: readonly SeriesReading[], edited: readonly Edited[]): OfSchedule {
  const byHand = new Set(readings.filter((one) => one.startedByHand === true).map(({ index }) => index));
  const scheduled = edited.filter((one) => !byHand.has(one.index) && !isNotScheduled(one));
  const failed = scheduled.filter(({ code }) => code === 'failed').length;
  return { failed, edited: scheduled.length - failed, byHand: byHand.size };
}
