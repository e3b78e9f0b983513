/** Parts of the day in which a person measures at home. */
export const DAY_PARTS = ['morning', 'evening', 'other'] as const;
export type DayPart = (typeof DAY_PARTS)[number];

/** The three numbers of a reading, each analysed for itself. */
export const MEASURES = ['systolic', 'diastolic', 'pulse'] as const;
export type Measure = (typeof MEASURES)[number];

/** Where the cuff of a series was. */
export type SeriesSite = 'upper-arm' | 'wrist';

/**
 * One reading of a series at home or over 24 hours. Local date and minute are worked out at the edge, in the person's
 * own zone; intervals use the instant alone.
 */
export type SeriesReading = {
  /** Its place among the data items as read, from 1. */
  readonly index: number;
  /** Instant, ms since 1970-01-01T00:00Z. */
  readonly atMs: number;
  /** Local calendar date as days since 1970-01-01. */
  readonly localDay: number;
  /** Minutes since local midnight by the wall clock, 0 to below 1440. */
  readonly minuteOfDay: number;
  /** mmHg; null where it was not given. */
  readonly systolic: number | null;
  readonly diastolic: number | null;
  /** Per minute. */
  readonly pulse: number | null;
  /** By the person's own diary; null where there is none. */
  readonly asleep: boolean | null;
  /** The part of the day as somebody marked it by hand; it wins over the clock. */
  readonly part: DayPart | null;
  readonly site: SeriesSite;
  /** Of a recorder: whether the person started it by hand, outside the schedule; absent where nothing says so. */
  readonly startedByHand?: boolean;
};

type Placed = Pick<SeriesReading, 'atMs' | 'index'>;

/** Readings in order of their instants; equal ones by their place as read. The list given is left as it is. */
export function inTimeOrder<R extends Placed>(readings: readonly R[]): R[] {
  const ordered = readings.slice();
  // Nearly every series comes in order: to see that costs far less than to sort it.
  for (let k = 1; k < ordered.length; k++) {
    if (byTime(ordered[k - 1] as R, ordered[k] as R) > 0) return ordered.sort(byTime);
  }
  return ordered;
}

function byTime(a: Placed, b: Placed): number {
  return a.atMs - b.atMs || a.index - b.index;
}

/** Whether two readings are one that was given twice: the same instant and numbers. */
export function isTwin(a: SeriesReading, b: SeriesReading): boolean {
  return a.atMs === b.atMs && a.systolic === b.systolic && a.diastolic === b.diastolic && a.pulse === b.pulse;
}

/** What is known of one measure, in the order given. */
export function valuesOf(readings: readonly SeriesReading[], measure: Measure): number[] {
  const values: number[] = [];
  for (const reading of readings) {
    const value = reading[measure];
    if (value !== null) values.push(value);
  }
  return values;
}
