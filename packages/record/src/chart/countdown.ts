import type { DueRecheck } from './rechecks.js';

/**
 * Where a recheck is at an instant: `ahead` before it may be taken; `now` until its last time, that minute included;
 * `late` after it; `since` where it may be taken and no source gives a last time. `minutes` to the next of these
 * times, begun ones counted, or whole ones gone by.
 */
export type Countdown = { readonly is: 'ahead' | 'now' | 'late' | 'since'; readonly minutes: number };

/** @param nowMs the instant, ms since 1970 UTC */
export function countdown({ fromAt, byAt }: Pick<DueRecheck, 'fromAt' | 'byAt'>, nowMs: number): Countdown {
  const from = Date.parse(fromAt);
  if (nowMs < from) return { is: 'ahead', minutes: Math.ceil((from - nowMs) / MS_PER_MINUTE) };
  if (byAt === null) return { is: 'since', minutes: Math.floor((nowMs - from) / MS_PER_MINUTE) };
  const by = Date.parse(byAt);
  return nowMs <= by
    ? { is: 'now', minutes: Math.ceil((by - nowMs) / MS_PER_MINUTE) }
    : { is: 'late', minutes: Math.floor((nowMs - by) / MS_PER_MINUTE) };
}

const MS_PER_MINUTE = 60_000;
