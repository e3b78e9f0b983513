import { type DayNight, periodOf } from './periods.js';
import type { SeriesReading } from './seriesReading.js';

/** Readings of a recording that are marked asleep or awake, and how many of the marks say something else than the times typed. */
export type MarksBeside = { readonly marked: number; readonly differ: number };

/** What the marks beside the readings say where typed times of sleep are used in their stead; null where there are none. */
export function marksBeside(readings: readonly SeriesReading[], dayNight: DayNight): MarksBeside | null {
  if (dayNight.by !== 'asleep-range') return null;
  const marked = readings.filter(({ asleep }) => asleep !== null);
  if (marked.length === 0) return null;
  const differ = marked.filter((one) => (periodOf(one, dayNight) === 'night') !== one.asleep);
  return { marked: marked.length, differ: differ.length };
}
