import { type Parsed, refusal } from '@evenfall/clinical';
import type { z } from 'zod';
import { type EntryFrame, entryFrame } from './entry.js';
import { refusalsOf } from './refusals.js';

/**
 * Every shape that the frame of an entry ever had. A new field makes the next number: `newest` and `schema` are then
 * of that one, and `upgrades` has under each older number what turns it into the next. What is stored never changes.
 */
export type Frames<Frame> = {
  readonly newest: number;
  readonly schema: z.ZodType<Frame>;
  readonly upgrades: Readonly<Record<number, (older: Record<string, unknown>) => Record<string, unknown>>>;
};

const FRAMES: Frames<EntryFrame> = { newest: 1, schema: entryFrame, upgrades: {} };

/**
 * Reads the frame of an entry from outside, of whatever number, as the newest one. The content is not looked into.
 *
 * Errors: every problem at its JSON Pointer; a newer frame than this program knows is refused by name, never guessed.
 */
export function readFrame(input: unknown): Parsed<EntryFrame>;
export function readFrame<Frame>(input: unknown, frames: Frames<Frame>): Parsed<Frame>;
export function readFrame(input: unknown, frames: Frames<unknown> = FRAMES): Parsed<unknown> {
  const { newest, schema, upgrades } = frames;
  let given = input;
  if (isObject(input) && isNumbered(input.frame)) {
    const number = input.frame ?? 1;
    if (number > newest)
      return {
        ok: false,
        refusals: [refusal('/frame', 'unknown-id', 'frame-known', number, { figures: { newest } })],
      };
    for (let at = number; at < newest; at += 1) {
      const upgrade = upgrades[at];
      if (upgrade === undefined) throw new Error(`the frame lost its number ${at}`);
      given = { ...upgrade(given as Record<string, unknown>), frame: at + 1 };
    }
  }
  const read = schema.safeParse(given);
  return read.success
    ? { ok: true, value: read.data }
    : { ok: false, refusals: refusalsOf(read.error, given) };
}

function isObject(input: unknown): input is Record<string, unknown> {
  return typeof input === 'object' && input !== null && !Array.isArray(input);
}

/** What is no number is left to the schema, which says what it would have taken. */
function isNumbered(frame: unknown): frame is number | undefined {
  return frame === undefined || (Number.isInteger(frame) && (frame as number) > 0);
}
