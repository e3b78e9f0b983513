import type { Flag } from '../contract/flag.js';
import { passes } from '../contract/threshold.js';
import { median } from '../statistics/median.js';
import type { AmbulatoryRules } from './ambulatoryRules.js';
import { HOUR_MS, MINUTE_MS } from './clock.js';
import { OUT_OF_OFFICE_FIGURES as F } from './figures.js';
import { type DayNight, type PeriodOf, periodOf } from './periods.js';
import { type Edited, isNotScheduled } from './recordingKept.js';
import { inTimeOrder, type SeriesReading } from './seriesReading.js';

export type RecordingNoteCode = 'night-by-clock' | 'under-a-day' | 'far-apart-by-day' | 'far-apart-by-night';

/**
 * What is to be known of how a recording was taken, beside whether it is valid: that it is shorter than its rules ask
 * (from the first reading to the last and the usual step after it), that readings are further apart than a profile bears,
 * and that hours of the clock are no night of somebody who slept by day. Worked out where it is shown: nothing is judged by it.
 *
 * @param readings all that came, in any order
 * @param edited those that the result does not use
 * @param rules how many hours they ask for; null where none
 * Source: out-of-office handbook 5, 20.
 */
export function recordingNotes(
  readings: readonly SeriesReading[],
  edited: readonly Edited[],
  dayNight: DayNight,
  { leastHours }: Pick<AmbulatoryRules, 'leastHours'>,
): Flag<RecordingNoteCode>[] {
  const unscheduled = new Set(edited.filter(isNotScheduled).map(({ index }) => index));
  const left = new Set(edited.map(({ index }) => index));
  const came = inTimeOrder(readings).filter(({ index }) => !unscheduled.has(index));
  const used = came.filter(({ index }) => !left.has(index));
  const notes: Flag<RecordingNoteCode>[] = [];
  if (dayNight.by === 'clock' && used.length > 0) notes.push({ code: 'night-by-clock', figures: {} });
  const hours = lastingHours(came);
  const isLonger = edited.some(({ code }) => code === 'after-24-hours');
  if (leastHours !== null && hours !== null && !isLonger) {
    const { comparison, limit: least } = leastHours;
    if (!passes(hours, comparison, least)) notes.push({ code: 'under-a-day', figures: { hours, least } });
  }
  const most = F.profileMostMinutes.value;
  for (const period of ['day', 'night'] as const) {
    const minutes = usualStep(used, (one) => periodOf(one, dayNight), period);
    if (minutes !== null && minutes > most) {
      notes.push({ code: `far-apart-by-${period}`, figures: { minutes, most } });
    }
  }
  return notes;
}

/** From the first reading to the last and one usual step more, in hours and whole minutes; null of fewer than two. */
function lastingHours(inOrder: readonly SeriesReading[]): number | null {
  const [first, last] = [inOrder[0], inOrder.at(-1)];
  const step = usualStep(inOrder, () => 'day', 'day');
  if (first === undefined || last === undefined || step === null) return null;
  return (Math.round((last.atMs - first.atMs) / MINUTE_MS) + step) / (HOUR_MS / MINUTE_MS);
}

/** The median of the times between neighbours of one period, in whole minutes; null without any. */
function usualStep(
  inOrder: readonly SeriesReading[],
  periodIn: (reading: SeriesReading) => PeriodOf,
  period: PeriodOf,
): number | null {
  const steps = inOrder.flatMap((one, k) => {
    const before = inOrder[k - 1];
    return before === undefined || periodIn(before) !== period || periodIn(one) !== period
      ? []
      : [(one.atMs - before.atMs) / MINUTE_MS];
  });
  const step = median(steps);
  return step === null ? null : Math.round(step);
}
