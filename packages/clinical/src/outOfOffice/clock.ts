/** Milliseconds of an hour and minutes of a day: the calendar, no fact of the trade. */
export const HOUR_MS = 3_600_000;
export const MINUTE_MS = 60_000;
export const DAY_MINUTES = 1440;
export const DAY_HOURS = 24;

/**
 * A range of the local clock in minutes from midnight: the start is included, the end is not, and it may pass
 * midnight (23:00-07:00). One whose ends are equal is the whole day.
 */
export type ClockRange = { readonly from: number; readonly to: number };

/** Whether a minute of the day lies in a range. */
export function isWithin(minuteOfDay: number, { from, to }: ClockRange): boolean {
  if (from < to) return minuteOfDay >= from && minuteOfDay < to;
  return minuteOfDay >= from || minuteOfDay < to;
}

/** Whether two ranges have a minute in common. */
export function doOverlap(one: ClockRange, other: ClockRange): boolean {
  return isWithin(one.from, other) || isWithin(other.from, one);
}

/** How long a range lasts by the wall clock, in hours. */
export function hoursOf({ from, to }: ClockRange): number {
  const minutes = to - from;
  return (minutes > 0 ? minutes : minutes + DAY_MINUTES) / 60;
}
