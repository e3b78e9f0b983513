import type { Count, CountOf } from '@evenfall/clinical';
import type { Counting } from '../observer/observer.js';

/**
 * What somebody counts of events at these seconds, in order, in a window from `startSeconds`. With the clock started on a
 * beat the window begins at the first event from there, which is called `first`; with it started at any moment events in
 * [start, start + window) count, the first called `first`. Null: no event to start on.
 *
 * Source: docs/conventions.md section 5.
 */
export function countOf(
  of: CountOf,
  seconds: readonly number[],
  startSeconds: number,
  windowSeconds: number,
  { clock, first }: Pick<Counting, 'clock' | 'first'>,
): { readonly startSeconds: number; readonly count: Count } | null {
  if (clock === 'any') {
    const n = seconds.filter((one) => one >= startSeconds && one < startSeconds + windowSeconds).length;
    return { startSeconds, count: { of, n: Math.max(0, n - 1 + first), windowSeconds, clock, first } };
  }
  const start = seconds.find((one) => one >= startSeconds);
  if (start === undefined) return null;
  const after = seconds.filter((one) => one > start && one <= start + windowSeconds).length;
  return { startSeconds: start, count: { of, n: after + first, windowSeconds, clock, first } };
}
