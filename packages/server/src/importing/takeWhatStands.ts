import type { Refusal } from '@evenfall/clinical';
import { type EntryFrame, readEntry } from '@evenfall/record';
import type { Kysely } from 'kysely';
import type { Tables } from '../database/schema.js';
import { notAhead } from '../http/readEntries.js';
import { type Incoming, type Taken, takeEntries } from '../store/takeEntries.js';

/** An entry to keep, the place in its file, and when it was recorded where it was first kept; null for now. */
export type Bringable = {
  readonly at: string;
  readonly frame: EntryFrame;
  readonly recordedAt: string | null;
};

/** What became of entries: how many are new, how many were kept before, and why the rest is not. */
export type Brought = { added: number; already: number; readonly refused: Refusal[] };

/** How many entries go into one transaction. Source: decision of this project. */
const BATCH_ENTRIES = 500;

/**
 * Keeps entries of a file by the same checks as any other: what is refused is named by its place in the file, and the
 * rest is kept. Entries come in the order in which they were recorded, so that none stands before what it names.
 *
 * @param also runs with the first batch, in its transaction: a person to make
 */
export async function takeWhatStands(
  db: Kysely<Tables>,
  site: string,
  bringable: readonly Bringable[],
  program: string,
  now: Date,
  also: Parameters<typeof takeEntries>[4] = {},
): Promise<Brought> {
  const brought: Brought = { added: 0, already: 0, refused: [] };
  const readable = bringable.flatMap((one) => {
    const read = readOne(one, now);
    if ('refused' in read) brought.refused.push(...read.refused);
    return 'refused' in read ? [] : [read];
  });
  for (let from = 0; from < readable.length; from += BATCH_ENTRIES) {
    const batch = readable.slice(from, from + BATCH_ENTRIES);
    await takeBatch(db, site, batch, program, brought, from === 0 ? also : {});
  }
  return brought;
}

type Readable = { readonly at: string; readonly incoming: Incoming };

async function takeBatch(
  db: Kysely<Tables>,
  site: string,
  batch: readonly Readable[],
  program: string,
  brought: Brought,
  also: Parameters<typeof takeEntries>[4],
): Promise<void> {
  let left = batch;
  while (left.length > 0) {
    const taken: Taken = await takeEntries(
      db,
      site,
      left.map(({ incoming }) => incoming),
      program,
      also,
    );
    if (taken.outcome === 'taken') {
      const already = taken.entries.filter((one) => one.already).length;
      brought.already += already;
      brought.added += taken.entries.length - already;
      return;
    }
    const wrong = new Set<number>();
    for (const refused of taken.refusals) {
      const found = /^\/entries\/(\d+)(.*)$/.exec(refused.field);
      const index = found === null ? 0 : Number(found[1]);
      wrong.add(index);
      brought.refused.push({ ...refused, field: `${left[index]?.at ?? ''}${found?.[2] ?? ''}` });
    }
    // A refusal of everything names no entry: nothing of the batch can be kept.
    if (wrong.size === 0) return;
    left = left.filter((_, index) => !wrong.has(index));
  }
}

function readOne({ at, frame, recordedAt }: Bringable, now: Date): Readable | { refused: Refusal[] } {
  const read = readEntry(frame);
  const refused = read.ok
    ? [
        ...notAhead(frame.measuredAt.at, now, '/measuredAt/at'),
        ...notAhead(frame.writtenAt, now, '/writtenAt'),
        ...(recordedAt === null ? [] : notAhead(recordedAt, now, '/recordedAt')),
      ]
    : read.refusals;
  if (!read.ok || refused.length > 0)
    return { refused: refused.map((one) => ({ ...one, field: at + one.field })) };
  return {
    at,
    incoming: { frame, entry: read.value, ...(recordedAt === null ? {} : { recordedAt }) },
  };
}
