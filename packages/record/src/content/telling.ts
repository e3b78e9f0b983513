import type { Entry, StoredEntry } from '../entry/entry.js';
import type { ActNowClosedContent } from './actNowClosed.js';

/** What is wrong with a telling: nobody is named, nothing was said back, it was before there was anything to tell, or is still to come. */
export type WrongTelling = 'nobody-told' | 'nothing-said' | 'before-measured' | 'ahead';

/** What was before whoever told it; `recordedAt` is absent of what comes with the telling. */
export type Seen = Pick<Entry, 'kind' | 'measuredAt' | 'writtenAt' | 'content'> &
  Partial<Pick<StoredEntry, 'recordedAt'>>;

/**
 * Why a telling of something to act on at once closes nothing. Whom was told and what was said back have a letter or a
 * digit, of any script: a name may be of one letter, a bleep has a number. Nobody was told before anything of the round,
 * or of the series, was measured; a time of day is typed in whole minutes. Source: decision of this project.
 *
 * @param saw what was before whoever told it
 * @param written when it was written down, by the clock of its device; RFC 3339
 * @param came when it came to whoever keeps it, by their clock, RFC 3339: what was written first and put right since may
 *   be of later; nobody can have been told later than both
 */
export function wrongTelling(
  { toldWhom, saidBack, toldAt }: Pick<ActNowClosedContent, 'toldWhom' | 'saidBack' | 'toldAt'>,
  saw: readonly Seen[],
  written: string,
  came: string = written,
): WrongTelling[] {
  const [toldMs, writtenMs] = [Date.parse(toldAt.at), Date.parse(written)];
  // A clock that is ahead makes no telling impossible: somebody can always have been told just now.
  const earliestMs = Math.min(writtenMs, ...saw.flatMap(measuredMs));
  const latestMs = Math.max(writtenMs, Date.parse(came));
  const isEarly = saw.some((one) => measuredMs(one).length > 0) && toldMs + MINUTE_MS <= earliestMs;
  return [
    ...(saysSomething(toldWhom) ? [] : (['nobody-told'] as const)),
    ...(saysSomething(saidBack) ? [] : (['nothing-said'] as const)),
    ...(isEarly ? (['before-measured'] as const) : []),
    ...(toldMs > latestMs + MINUTE_MS ? (['ahead'] as const) : []),
  ];
}

const MINUTE_MS = 60_000;

/** Whether a text names or says anything: it is no punctuation alone. */
export function saysSomething(text: string): boolean {
  return /[\p{L}\p{N}]/u.test(text);
}

/** When an entry was measured, ms; of a series each of its readings. Nothing of an entry that measures nothing. */
function measuredMs({ kind, measuredAt, writtenAt, recordedAt, content }: Seen): number[] {
  if (kind === 'series') {
    const { readings } = content as Extract<Entry, { kind: 'series' }>['content'];
    return readings.map(({ at }) => Date.parse(at.at));
  }
  if (kind !== 'count' && kind !== 'taps' && kind !== 'run' && kind !== 'sign') return [];
  // What was written after it was recorded was written by a clock that is at least so much ahead.
  const aheadMs = recordedAt === undefined ? 0 : Date.parse(writtenAt) - Date.parse(recordedAt);
  return [Date.parse(measuredAt.at) - Math.max(0, aheadMs)];
}
