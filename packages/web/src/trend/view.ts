import type { TrendRound } from '@evenfall/record';

/** A span of time on the page, local wall-clock milliseconds, `from` before `to`. */
export type Span = { readonly from: number; readonly to: number };

const HOUR = 3_600_000;
const DAY = 24 * HOUR;

/** How long a span may be chosen to be; `all` is from the first round to the last. */
export const SPANS = { day: DAY, week: 7 * DAY, month: 30 * DAY, year: 365 * DAY, all: null } as const;
export type SpanId = keyof typeof SPANS;

/** No span is made shorter than this. */
export const SHORTEST = HOUR / 2;

/**
 * A local instant as the clock on the wall showed it, whatever its offset: rounds of one morning stand at their
 * morning wherever the reader is.
 *
 * @example wallClock('2026-03-02T09:30:00.000+01:00') === Date.UTC(2026, 2, 2, 9, 30)
 */
export function wallClock(at: string): number {
  return Date.parse(`${at.slice(0, '2026-03-02T09:30:00'.length)}Z`);
}

/** The whole of a trend with a little room on either side; null where nothing is drawn. */
export function wholeSpan(rounds: readonly TrendRound[]): Span | null {
  const times = rounds.flatMap(({ points }) => points.map(({ at }) => wallClock(at)));
  if (times.length === 0) return null;
  const first = Math.min(...times);
  const last = Math.max(...times);
  const room = Math.max((last - first) * 0.04, HOUR / 4);
  return { from: first - room, to: last + room };
}

/** A span of the length chosen that ends with the newest round. */
export function spanOf(id: SpanId, whole: Span): Span {
  const length = SPANS[id];
  return length === null || length >= lengthOf(whole) ? whole : { from: whole.to - length, to: whole.to };
}

/** A span seen closer (factor under 1) or wider (over 1) about a time, kept within the whole. */
export function zoomed(span: Span, factor: number, about: number, whole: Span): Span {
  const length = Math.min(Math.max(lengthOf(span) * factor, SHORTEST), lengthOf(whole));
  const share = (about - span.from) / lengthOf(span);
  return within({ from: about - share * length, to: about + (1 - share) * length }, whole);
}

/** A span moved by a share of its length, kept within the whole. */
export function moved(span: Span, share: number, whole: Span): Span {
  const by = lengthOf(span) * share;
  return within({ from: span.from + by, to: span.to + by }, whole);
}

/** A span between two times in either order, no shorter than the shortest, kept within the whole. */
export function between(one: number, other: number, whole: Span): Span {
  const middle = (one + other) / 2;
  const half = Math.max(Math.abs(one - other), SHORTEST) / 2;
  return within({ from: middle - half, to: middle + half }, whole);
}

/** The rounds that have a value within a span. */
export function roundsIn(rounds: readonly TrendRound[], { from, to }: Span): readonly TrendRound[] {
  return rounds.filter(({ points }) =>
    points.some(({ at }) => {
      const time = wallClock(at);
      return time >= from && time <= to;
    }),
  );
}

/** The place of the round nearest to a time; -1 where there is none. */
export function nearest(rounds: readonly TrendRound[], time: number): number {
  let found = -1;
  for (const [at, round] of rounds.entries()) {
    const best = rounds[found];
    if (best === undefined || distance(round, time) < distance(best, time)) found = at;
  }
  return found;
}

function distance({ at }: TrendRound, time: number): number {
  return Math.abs(wallClock(at) - time);
}

export function lengthOf({ from, to }: Span): number {
  return to - from;
}

function within(span: Span, whole: Span): Span {
  const length = lengthOf(span);
  if (length >= lengthOf(whole)) return whole;
  const from = Math.min(Math.max(span.from, whole.from), whole.to - length);
  return { from, to: from + length };
}
