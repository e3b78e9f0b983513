import { id } from '@evenfall/record';
import { z } from 'zod';

/** More marks than one run has (the app takes 12), with room. */
const MOST_MARKS = 20;

export const clockNow = z.object({
  /** Milliseconds since 1970, with fractions. */
  atMs: z.number(),
});

/** Its id is made by the observer's device, which alone knows it. */
export const newMarking = z.object({ id }).strict();

/** What another device joins by. */
export const marking = z.object({
  code: z.string(),
  secondsLeft: z.number(),
  /** The address that joins, as a QR picture of dark modules; null where no other device reaches this one by it. */
  picture: z.object({ size: z.number(), path: z.string() }).nullable(),
});
export type Marking = z.infer<typeof marking>;

/** Waits for a turn after this one. */
export const waited = z.object({ after: z.coerce.number().int().min(-1).default(-1) });

const finite = z.number().min(-1e13).max(1e13);

/**
 * One touch. `atMs` is the event's own time stamp on the device that marked, `offsetMs` what brings it to the server's
 * clock, `withinMs` how far that may be off either way.
 */
export const secondMark = z
  .object({ id, atMs: finite, offsetMs: finite, withinMs: z.number().min(0).max(1e7) })
  .strict();
export type SecondMark = z.infer<typeof secondMark>;

export const markingState = z.object({
  /** Grows with each change. */
  turn: z.number(),
  isJoined: z.boolean(),
  /** Since the other device was last heard of; null before it joined. */
  heardSecondsAgo: z.number().nullable(),
  /** In the order in which they were marked. */
  marks: z.array(secondMark),
});
export type MarkingState = z.infer<typeof markingState>;

/** A code as typed; `marker` is made by the device that joins, which alone knows it. */
export const joinWith = z.object({ code: z.string().max(64), marker: id }).strict();

export const marksOfMarker = z
  .object({ version: z.number().int().min(0).max(1e6), marks: z.array(secondMark).max(MOST_MARKS) })
  .strict();

/** When the cuff of the run under way went up, by the clock of the place; null for none. */
export const runUnderWay = z.object({ runAtMs: finite.nullable() }).strict();

export const keptMarks = z.object({ version: z.number(), runAtMs: z.number().nullable() });
