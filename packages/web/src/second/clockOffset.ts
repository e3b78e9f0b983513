/**
 * One exchange with another clock, after RFC 5905 section 8: sent at T1 and back at T4 by our clock, received there at T2
 * and answered at T3 by theirs. Milliseconds.
 */
export type Exchange = {
  readonly sentMs: number;
  readonly receivedMs: number;
  readonly answeredMs: number;
  readonly backMs: number;
};

/** What is added to our clock to have theirs, and how far that may be off either way. Milliseconds. */
export type ClockOffset = { readonly offsetMs: number; readonly withinMs: number };

/**
 * Offset ((T2 - T1) + (T3 - T4)) / 2 and delay (T4 - T1) - (T3 - T2) of RFC 5905, section 8. The two ways may take unlike
 * long: the offset is then off by half their difference, so at most by half the delay.
 */
export function clockOffset({ sentMs, receivedMs, answeredMs, backMs }: Exchange): ClockOffset {
  return {
    offsetMs: (receivedMs - sentMs + (answeredMs - backMs)) / 2,
    withinMs: Math.max(0, backMs - sentMs - (answeredMs - receivedMs)) / 2,
  };
}

/** The exchange that says most: the quickest (the clock filter of RFC 5905, section 10). Null for none. */
export function bestOffset(exchanges: readonly Exchange[]): ClockOffset | null {
  return exchanges
    .map(clockOffset)
    .reduce<ClockOffset | null>(
      (best, one) => (best === null || one.withinMs < best.withinMs ? one : best),
      null,
    );
}
