import { type Refusal, refusal } from '@evenfall/clinical';
import { type EntryFrame, type KindName, readEntry } from '@evenfall/record';
import type { Incoming } from '../store/takeEntries.js';

/** Kinds that come with an identity, or begin and end a class, and so have a route of their own. */
const WITH_IDENTITY: readonly KindName[] = [
  'person',
  'identity-corrected',
  'identity-erased',
  'class-session',
  'class-session-ended',
  'kept-by-agreement',
];

/**
 * How far ahead of this server's clock an entry may say it was measured, in hours: a device with a wrong date is
 * caught, one in another zone or a few minutes fast is not. Source: decision of this project.
 */
const HOURS_AHEAD = 24;

/** Reads entries by their kinds; every problem of every entry, in order of place. */
export function readEntries(
  frames: readonly EntryFrame[],
  now: Date,
): { entries: Incoming[]; refusals: Refusal[] } {
  const entries: Incoming[] = [];
  const refusals: Refusal[] = [];
  frames.forEach((frame, index) => {
    const at = `/entries/${index}`;
    if (WITH_IDENTITY.includes(frame.kind)) {
      refusals.push(refusal(`${at}/kind`, 'contradicts', 'kind-with-own-route', frame.kind));
      return;
    }
    const read = readOne(frame, now, at);
    refusals.push(...read.refusals);
    if (read.entry !== null) entries.push(read.entry);
  });
  return { entries, refusals };
}

/** Reads one entry; `at` is where it stands in the request. */
export function readOne(
  frame: EntryFrame,
  now: Date,
  at: string,
): { entry: Incoming | null; refusals: Refusal[] } {
  const read = readEntry(frame);
  if (!read.ok) {
    return {
      entry: null,
      refusals: read.refusals.map((refused) => ({ ...refused, field: at + refused.field })),
    };
  }
  const refusals = [
    ...notAhead(frame.measuredAt.at, now, `${at}/measuredAt/at`),
    ...notAhead(frame.writtenAt, now, `${at}/writtenAt`),
    ...(read.value.kind === 'act-now-closed'
      ? notAhead(read.value.content.toldAt.at, now, `${at}/content/toldAt/at`)
      : []),
  ];
  return { entry: { frame, entry: read.value, cameAt: now.toISOString() }, refusals };
}

/** Refuses an instant that is further ahead of this server's clock than any device could be. */
export function notAhead(instant: string, now: Date, field: string): Refusal[] {
  const hoursAhead = (Date.parse(instant) - now.getTime()) / 3_600_000;
  if (hoursAhead <= HOURS_AHEAD) return [];
  return [refusal(field, 'out-of-range', 'not-ahead', instant, { figures: { hoursAhead: HOURS_AHEAD } })];
}
