import { Temporal } from 'temporal-polyfill';

const MINUTE_MS = 60_000;
const QUARTER_MS = 15 * MINUTE_MS;
const DAY_MS = 24 * 60 * MINUTE_MS;
const NS_OF_MS = 1e6;

/** What a local time is as an instant, and whether the clock skipped it or showed it twice. */
export type LocalInstant = {
  readonly atMs: number;
  readonly moved: 'not-there' | 'twice' | null;
};

/** The clock of one zone. Offsets change on no finer grid than a quarter of an hour, and each is asked for once. */
export type ZoneClock = {
  readonly zone: string;
  /** Minutes from UTC to the wall clock at an instant, in ms. */
  readonly offsetMs: (atMs: number) => number;
  /**
   * The instant of a local time (ms since 1970 by the wall clock). One that does not exist is moved forward by what the
   * clock skipped; of one that exists twice it is the first. Both are said.
   */
  readonly instantOf: (localMs: number) => LocalInstant;
};

/** The clock of a zone of the IANA time zone database; null where there is no such zone. */
export function zoneClock(zone: string): ZoneClock | null {
  if (!isZone(zone)) return null;
  const known = new Map<number, number>();
  const offsetMs = (atMs: number): number => {
    const quarter = Math.floor(atMs / QUARTER_MS);
    const found = known.get(quarter);
    if (found !== undefined) return found;
    const instant = Temporal.Instant.fromEpochMilliseconds(quarter * QUARTER_MS);
    const offset = instant.toZonedDateTimeISO(zone).offsetNanoseconds / NS_OF_MS;
    known.set(quarter, offset);
    return offset;
  };
  return {
    zone,
    offsetMs,
    instantOf(localMs) {
      // No two changes of a clock lie within two days of each other.
      const before = offsetMs(localMs - DAY_MS);
      const after = offsetMs(localMs + DAY_MS);
      const first = localMs - before;
      if (before === after) return { atMs: first, moved: null };
      const second = localMs - after;
      const isFirst = offsetMs(first) === before;
      const isSecond = offsetMs(second) === after;
      if (isFirst && isSecond) return { atMs: Math.min(first, second), moved: 'twice' };
      if (isFirst) return { atMs: first, moved: null };
      if (isSecond) return { atMs: second, moved: null };
      return { atMs: first, moved: 'not-there' };
    },
  };
}

/** Whether a text names a zone; offsets such as `+01:00` are none, for they know no summer. */
export function isZone(zone: string): boolean {
  if (!/^\p{L}/u.test(zone)) return false;
  try {
    Temporal.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(zone);
    return true;
  } catch {
    return false;
  }
}
