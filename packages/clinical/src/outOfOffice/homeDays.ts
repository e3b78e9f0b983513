import { DAY_MINUTES, MINUTE_MS } from './clock.js';
import type { HomeRules } from './homeRules.js';
import { type DayPart, inTimeOrder, type SeriesReading } from './seriesReading.js';

/** The rules by which readings at home fall into days, parts and sittings. */
export type DayRules = Pick<HomeRules, 'dayStartsAt' | 'morningTo' | 'eveningFrom' | 'sittingGapMinutes'>;

/**
 * The day that a reading at home belongs to, as days since 1970-01-01: before the day starts (04:00) it is still the
 * evening before. Source: out-of-office handbook 3, points 2 and 5 (a decision).
 */
export function homeDayOf({ localDay, minuteOfDay }: SeriesReading, { dayStartsAt }: DayRules): number {
  return minuteOfDay < dayStartsAt ? localDay - 1 : localDay;
}

/** The part of the day, as marked by hand, else by the clock. Source: out-of-office handbook 3, point 4 (a decision). */
export function dayPartOf({ part, minuteOfDay }: SeriesReading, rules: DayRules): DayPart {
  if (part !== null) return part;
  const sinceStart = (minuteOfDay - rules.dayStartsAt + DAY_MINUTES) % DAY_MINUTES;
  if (sinceStart < rules.morningTo - rules.dayStartsAt) return 'morning';
  return sinceStart >= rules.eveningFrom - rules.dayStartsAt ? 'evening' : 'other';
}

/**
 * Readings in sittings, in order of time: a reading less than the gap (30 min) after the one before is of the same
 * sitting. Source: out-of-office handbook 3, point 3 (a decision).
 */
export function sittingsOf(
  readings: readonly SeriesReading[],
  { sittingGapMinutes }: DayRules,
): SeriesReading[][] {
  const sittings: SeriesReading[][] = [];
  let before: SeriesReading | undefined;
  for (const reading of inTimeOrder(readings)) {
    if (before === undefined || reading.atMs - before.atMs >= sittingGapMinutes * MINUTE_MS)
      sittings.push([]);
    sittings.at(-1)?.push(reading);
    before = reading;
  }
  return sittings;
}
