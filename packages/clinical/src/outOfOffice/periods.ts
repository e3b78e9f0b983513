import { type ClockRange, DAY_MINUTES, hoursOf, isWithin, MINUTE_MS } from './clock.js';
import { halfGap } from './seriesMeans.js';
import type { SeriesReading } from './seriesReading.js';

/** How day and night are told: by the person's own diary, or by the clock. */
export type DayNightBy = 'diary' | 'clock';

/** What tells day from night: sleep by the diary (a nap by day is neither awake nor asleep), marks in the readings themselves, or two ranges of the clock. */
export type DayNight =
  | { readonly by: 'asleep-range'; readonly asleep: ClockRange; readonly nap?: ClockRange | null }
  | { readonly by: 'asleep-marks' }
  | { readonly by: 'clock'; readonly day: ClockRange; readonly night: ClockRange };

/** Where a reading belongs; `neither` lies between narrow windows of the clock. */
export type PeriodOf = 'day' | 'night' | 'neither';

export function dayNightBy({ by }: DayNight): DayNightBy {
  return by === 'clock' ? 'clock' : 'diary';
}

/** The period of a reading. A start is included, an end is not. Source: out-of-office handbook 7. */
export function periodOf({ asleep, minuteOfDay }: SeriesReading, dayNight: DayNight): PeriodOf {
  if (dayNight.by === 'asleep-marks') return asleep === null ? 'neither' : asleep ? 'night' : 'day';
  if (dayNight.by === 'asleep-range') {
    if (isWithin(minuteOfDay, dayNight.asleep)) return 'night';
    return dayNight.nap != null && isWithin(minuteOfDay, dayNight.nap) ? 'neither' : 'day';
  }
  if (isWithin(minuteOfDay, dayNight.day)) return 'day';
  return isWithin(minuteOfDay, dayNight.night) ? 'night' : 'neither';
}

/** Hours of day and night: of the ranges, or by marks the share of time that the readings of each stand for. */
export function periodHours(
  inOrder: readonly SeriesReading[],
  dayNight: DayNight,
): { readonly day: number; readonly night: number } {
  if (dayNight.by === 'clock') return { day: hoursOf(dayNight.day), night: hoursOf(dayNight.night) };
  if (dayNight.by === 'asleep-range') {
    const night = hoursOf(dayNight.asleep);
    const nap = dayNight.nap == null ? 0 : hoursOf(dayNight.nap);
    return { day: DAY_MINUTES / 60 - night - nap, night };
  }
  const times = inOrder.map(({ atMs }) => atMs / (60 * MINUTE_MS));
  const hours = { day: 0, night: 0 };
  inOrder.forEach((reading, k) => {
    const period = periodOf(reading, dayNight);
    if (period !== 'neither') hours[period] += halfGap(times, k);
  });
  return hours;
}

/** When the main sleep began and ended, as instants; null where no diary tells it. */
export type Sleep = { readonly bedMs: number; readonly wakeMs: number };

/**
 * The sleep of a recording: by the diary's times, told from the readings beside them (so that a night on which the clock
 * changes keeps its real length); by marks, half way between the readings on both sides. The longest run asleep counts.
 * Null by the clock alone, or where the recording has no reading before or after it.
 */
export function sleepOf(inOrder: readonly SeriesReading[], dayNight: DayNight): Sleep | null {
  if (dayNight.by === 'clock') return null;
  const run = longestNight(inOrder, dayNight);
  if (run === null) return null;
  const before = inOrder[run.from - 1];
  const first = inOrder[run.from];
  const last = inOrder[run.to];
  const after = inOrder[run.to + 1];
  if (before === undefined || first === undefined || last === undefined || after === undefined) return null;
  if (dayNight.by === 'asleep-marks') {
    return { bedMs: (before.atMs + first.atMs) / 2, wakeMs: (last.atMs + after.atMs) / 2 };
  }
  const { from, to } = dayNight.asleep;
  return {
    bedMs: first.atMs - minutesSince(from, first) * MINUTE_MS,
    wakeMs: after.atMs - minutesSince(to, after) * MINUTE_MS,
  };
}

/** Minutes by the wall clock from a time of day to the reading after it. */
function minutesSince(minute: number, { minuteOfDay }: SeriesReading): number {
  return (minuteOfDay - minute + DAY_MINUTES) % DAY_MINUTES;
}

/** The places of the first and the last reading of the longest run asleep. */
function longestNight(
  inOrder: readonly SeriesReading[],
  dayNight: DayNight,
): { readonly from: number; readonly to: number } | null {
  let from = -1;
  let longestFrom = -1;
  let longestTo = -1;
  let longestMs = -1;
  for (let k = 0; k < inOrder.length; k++) {
    const reading = inOrder[k] as SeriesReading;
    if (periodOf(reading, dayNight) !== 'night') {
      from = -1;
      continue;
    }
    if (from < 0) from = k;
    const lastingMs = reading.atMs - (inOrder[from] as SeriesReading).atMs;
    if (lastingMs <= longestMs) continue;
    longestFrom = from;
    longestTo = k;
    longestMs = lastingMs;
  }
  return longestTo < 0 ? null : { from: longestFrom, to: longestTo };
}
