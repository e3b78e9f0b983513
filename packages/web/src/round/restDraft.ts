import { isRestWhole, type Preparation } from '@evenfall/clinical';
import type { RestKept } from '@evenfall/record';
import { type Instant, secondsBetween } from '../pressure/pressureDraft.js';

/**
 * The rest before the pressure, on the monotonic clock. What was rested is kept now and then, so that a reload loses a few
 * seconds and never gains one: wall clocks are not subtracted.
 */
export type RestDraft = {
  readonly neededSeconds: number;
  /** Rested for sure until `since`. */
  readonly keptSeconds: number;
  /** Since when it goes on; null when it is over. */
  readonly since: Instant | null;
  readonly skipped: RestKept['skipped'];
};

export function begunRest(neededSeconds: number, since: Instant): RestDraft {
  return { neededSeconds, keptSeconds: 0, since, skipped: null };
}

/** Nobody begins a rest here: they say that they had rested before. */
export function restedBefore(neededSeconds: number): RestDraft {
  return { neededSeconds, keptSeconds: 0, since: null, skipped: { reason: 'already-rested', text: null } };
}

/** They did not rest after all: that they had rested before was a slip. A rest that ran on the clock stays. */
export function withoutRestBefore<Draft extends { readonly rest: RestDraft | null }>(draft: Draft): Draft {
  return isRestBefore(draft.rest) ? { ...draft, rest: null } : draft;
}

/** Whether somebody said that they had rested before, and no rest ran on the clock. */
function isRestBefore(rest: RestDraft | null): boolean {
  return rest !== null && rest.skipped?.reason === 'already-rested' && rest.keptSeconds === 0;
}

/** What is ticked of making ready: that they did not rest is taken back once it is said that they had rested before. */
export function tickedBeside(ticked: readonly Preparation[], rest: RestDraft | null): Preparation[] {
  return ticked.filter((one) => one !== 'rested' || !isRestBefore(rest));
}

/** Seconds rested, at most what is needed. Time between two visits is not known, and does not count. */
export function restedSeconds({ neededSeconds, keptSeconds, since }: RestDraft, now: Instant): number {
  const more = since === null ? 0 : (secondsBetween(since, now) ?? 0);
  return Math.min(neededSeconds, keptSeconds + more);
}

/** The same rest with what was rested until now kept; over when it is whole. */
export function keptRest(rest: RestDraft, now: Instant): RestDraft {
  if (rest.since === null) return rest;
  const keptSeconds = restedSeconds(rest, now);
  const isWhole = isRestWhole({ seconds: keptSeconds, neededSeconds: rest.neededSeconds });
  return { ...rest, keptSeconds, since: isWhole ? null : now };
}

/** The cuff went up: the rest is as long as it is. */
export function endedRest(rest: RestDraft, at: Instant): RestDraft {
  return rest.since === null ? rest : { ...rest, keptSeconds: restedSeconds(rest, at), since: null };
}

/** Nobody waits for the rest, for a reason. */
export function skippedRest(rest: RestDraft, at: Instant, skipped: RestKept['skipped']): RestDraft {
  return { ...endedRest(rest, at), skipped };
}

/** Whether the pressure waits for it. */
export function isWaitedFor(rest: RestDraft | null, now: Instant): rest is RestDraft {
  if (rest === null || rest.since === null) return false;
  return !isRestWhole({ seconds: restedSeconds(rest, now), neededSeconds: rest.neededSeconds });
}

/** The rest as it is charted; null while it goes on, and where none was begun. */
export function restOf(rest: RestDraft | null): RestKept | null {
  if (rest === null || rest.since !== null) return null;
  const { neededSeconds, keptSeconds, skipped } = rest;
  return {
    seconds: Math.floor(keptSeconds),
    neededSeconds,
    skipped: skipped === null ? null : { ...skipped },
  };
}
