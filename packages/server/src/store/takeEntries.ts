import { type Refusal, refusal } from '@evenfall/clinical';
import type { Entry, EntryFrame } from '@evenfall/record';
import type { Kysely, Transaction } from 'kysely';
import type { Tables } from '../database/schema.js';
import { within } from '../database/within.js';
import { contentHash } from './canonical.js';
import { rowOf } from './rows.js';
import { wrongAdditions } from './wrongAdditions.js';
import { inPlace, unknownReferences, wrongEntries } from './wrongEntries.js';
import { wrongTellings } from './wrongTellings.js';

/** An entry as it was sent and as its kind reads it: what is kept is what was sent, in the schema of its time. */
export type Incoming = {
  readonly frame: EntryFrame;
  readonly entry: Entry;
  /** When it was first kept, for one that comes from another record; now if absent. */
  readonly recordedAt?: string;
  /** When it was sent here, by the clock of the server; absent of what the server makes itself or takes from another record. */
  readonly cameAt?: string;
};

/** What became of each entry, in the order given. `already`: the same id with the same content was kept before. */
export type Taken =
  | {
      readonly outcome: 'taken';
      readonly entries: readonly { id: string; recordedAt: string; already: boolean }[];
    }
  | { readonly outcome: 'refused'; readonly refusals: readonly Refusal[] }
  | { readonly outcome: 'conflict'; readonly refusals: readonly Refusal[] };

/** Ends a transaction with an answer instead of a commit. */
class Ended extends Error {
  readonly answer: Taken;
  constructor(answer: Taken) {
    super(answer.outcome);
    this.answer = answer;
  }
}

/**
 * Keeps entries, all or none. Each is checked against what is kept: its person and agent exist in this book, an
 * amendment amends an entry of the same person, and the value beside the evidence is what the rule it names gives.
 * `also` runs in the same transaction: `before` the checks (a person to make), and `after` them, when something was
 * new (an identity to keep); what it refuses undoes everything.
 *
 * Errors: none thrown for bad input; database faults are thrown and nothing is kept.
 */
export async function takeEntries(
  db: Kysely<Tables>,
  site: string,
  incoming: readonly Incoming[],
  program: string,
  also: {
    before?: (tx: Transaction<Tables>) => Promise<void>;
    after?: (tx: Transaction<Tables>) => Promise<readonly Refusal[]>;
  } = {},
): Promise<Taken> {
  const entries = incoming.map(({ entry }) => entry);
  try {
    return await within(db, async (tx) => {
      await also.before?.(tx);
      const wrong = await wrongEntries(tx, site, entries, program);
      const additions = await wrongAdditions(tx, site, incoming);
      const refusals = inPlace([...wrong, ...additions, ...(await wrongTellings(tx, site, incoming))]);
      if (refusals.length > 0) {
        const unknown = await unknownReferences(tx, site, entries);
        throw new Ended({ outcome: 'refused', refusals: inPlace([...unknown, ...refusals]) });
      }
      const taken = await insert(tx, site, incoming);
      await forgetLatest(tx, site, entries);
      const isNew = taken.entries.some(({ already }) => !already);
      const late = isNew ? ((await also.after?.(tx)) ?? []) : [];
      if (late.length > 0) throw new Ended({ outcome: 'refused', refusals: late });
      return taken;
    });
  } catch (error) {
    if (error instanceof Ended) return error.answer;
    if (!isUnknownReference(error)) throw error;
    // A person made by `before` was rolled back with the rest, and is not what was wrong.
    const found = await unknownReferences(db, site, entries);
    const refusals =
      also.before === undefined ? found : found.filter(({ field }) => !field.endsWith('/person'));
    if (refusals.length === 0) throw error;
    return { outcome: 'refused', refusals };
  }
}

/** PostgreSQL's foreign_key_violation. */
function isUnknownReference(error: unknown): boolean {
  return error instanceof Error && 'code' in error && error.code === '23503';
}

async function insert(tx: Transaction<Tables>, site: string, incoming: readonly Incoming[]) {
  const entries = incoming.map(({ entry }) => entry);
  const hashes = new Map(incoming.map(({ frame }) => [frame.id, contentHash(frame)]));
  // In order of id, so that two requests with the same entries wait for each other and never in a ring.
  const rows = incoming
    .map(({ frame, recordedAt }) => ({
      ...rowOf(site, frame, hashes.get(frame.id) as string),
      ...(recordedAt === undefined ? {} : { recorded_at: recordedAt }),
    }))
    .sort((a, b) => (a.id < b.id ? -1 : 1));
  const inserted = await tx
    .insertInto('entry')
    .values(rows)
    .onConflict((conflict) => conflict.columns(['site', 'book', 'id']).doNothing())
    .returning(['id', 'recorded_at'])
    .execute();
  const recordedAt = new Map(inserted.map((row) => [row.id, row.recorded_at]));
  const missing = entries.filter(({ id }) => !recordedAt.has(id));
  const kept = missing.length === 0 ? [] : await keptBefore(tx, site, missing);
  const clashes = entries.flatMap((entry, index) => {
    const before = kept.find((row) => row.id === entry.id && row.book === entry.book);
    return before !== undefined && before.sha256 !== hashes.get(entry.id)
      ? [refusal(`/entries/${index}/id`, 'contradicts', 'same-content', entry.id)]
      : [];
  });
  if (clashes.length > 0) throw new Ended({ outcome: 'conflict', refusals: clashes });
  for (const row of kept) recordedAt.set(row.id, row.recorded_at);
  const before = new Set(kept.map(({ id }) => id));
  return {
    outcome: 'taken' as const,
    entries: entries.map(({ id }) => ({
      id,
      recordedAt: (recordedAt.get(id) as Date).toISOString(),
      already: before.has(id),
    })),
  };
}

function keptBefore(tx: Transaction<Tables>, site: string, entries: readonly Entry[]) {
  return tx
    .selectFrom('entry')
    .select(['book', 'id', 'sha256', 'recorded_at'])
    .where('site', '=', site)
    .where('book', 'in', [...new Set(entries.map(({ book }) => book))])
    .where(
      'id',
      'in',
      entries.map(({ id }) => id),
    )
    .execute();
}

/**
 * Removes what was projected of the people. It comes after the insert, whose foreign key holds the person's row until
 * the commit: whoever projects anew takes that row for itself first, and so waits for this transaction or precedes it.
 */
async function forgetLatest(tx: Transaction<Tables>, site: string, entries: readonly Entry[]) {
  for (const key of new Set(
    entries.flatMap(({ book, person }) => (person === null ? [] : [`${book} ${person}`])),
  )) {
    const [book = '', person = ''] = key.split(' ');
    await tx
      .deleteFrom('latest')
      .where('site', '=', site)
      .where('book', '=', book)
      .where('person', '=', person)
      .execute();
  }
}
