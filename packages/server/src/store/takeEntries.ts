import { COUNT_RULE, type Refusal, refusal, TAPS_RULE } from '@evenfall/clinical';
import { type Entry, type EntryFrame, recompute } from '@evenfall/record';
import type { Kysely, Transaction } from 'kysely';
import type { Tables } from '../database/schema.js';
import { contentHash } from './canonical.js';
import { keptProtocols } from './protocols.js';
import { entryOf, rowOf } from './rows.js';

/** An entry as it was sent and as its kind reads it: what is kept is what was sent, in the schema of its time. */
export type Incoming = { readonly frame: EntryFrame; readonly entry: Entry };

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
 * `also` runs in the same transaction after the checks (a person to make, an identity to keep).
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
    after?: (tx: Transaction<Tables>) => Promise<void>;
  } = {},
): Promise<Taken> {
  const entries = incoming.map(({ entry }) => entry);
  try {
    return await db.transaction().execute(async (tx) => {
      await also.before?.(tx);
      const refusals = await refusalsOf(tx, site, entries, program);
      if (refusals.length > 0) throw new Ended({ outcome: 'refused', refusals });
      const taken = await insert(tx, site, incoming);
      await forgetLatest(tx, site, entries);
      if (taken.entries.some(({ already }) => !already)) await also.after?.(tx);
      return taken;
    });
  } catch (error) {
    if (error instanceof Ended) return error.answer;
    throw error;
  }
}

async function insert(tx: Transaction<Tables>, site: string, incoming: readonly Incoming[]) {
  const entries = incoming.map(({ entry }) => entry);
  const hashes = new Map(incoming.map(({ frame }) => [frame.id, contentHash(frame)]));
  const rows = incoming.map(({ frame }) => rowOf(site, frame, hashes.get(frame.id) as string));
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

async function refusalsOf(tx: Transaction<Tables>, site: string, entries: readonly Entry[], program: string) {
  const refusals: Refusal[] = [...repeatedIds(entries)];
  // One at a time: a transaction is one connection, and parallel queries on it would only queue.
  refusals.push(...(await unknownPersons(tx, site, entries)));
  refusals.push(...(await unknownAgents(tx, site, entries)));
  refusals.push(...(await wrongAmendments(tx, site, entries)));
  refusals.push(...(await wrongValues(tx, site, entries, program)));
  refusals.push(...(await unknownChoices(tx, site, entries)));
  return refusals.sort((a, b) => indexOf(a) - indexOf(b));
}

function indexOf({ field }: Refusal): number {
  return Number(/^\/entries\/(\d+)/.exec(field)?.[1] ?? 0);
}

function repeatedIds(entries: readonly Entry[]): Refusal[] {
  const seen = new Set<string>();
  return entries.flatMap(({ id }, index) => {
    if (seen.has(id)) return [refusal(`/entries/${index}/id`, 'repeated', 'new-id', id)];
    seen.add(id);
    return [];
  });
}

/** Also locks the people, so that what is projected of them is not computed from half of this transaction. */
async function unknownPersons(tx: Transaction<Tables>, site: string, entries: readonly Entry[]) {
  const wanted = [
    ...new Set(entries.flatMap(({ book, person }) => (person === null ? [] : [`${book} ${person}`]))),
  ];
  const known = new Set<string>();
  for (const key of wanted.sort()) {
    const [book = '', id = ''] = key.split(' ');
    const row = await tx
      .selectFrom('person')
      .select('id')
      .where('site', '=', site)
      .where('book', '=', book)
      .where('id', '=', id)
      .forNoKeyUpdate()
      .executeTakeFirst();
    if (row !== undefined) known.add(key);
  }
  return entries.flatMap(({ book, person }, index) =>
    person === null || known.has(`${book} ${person}`)
      ? []
      : [refusal(`/entries/${index}/person`, 'unknown-id', 'person-in-book', person)],
  );
}

async function unknownAgents(tx: Transaction<Tables>, site: string, entries: readonly Entry[]) {
  const rows = await tx
    .selectFrom('agent')
    .select('id')
    .where('site', '=', site)
    .where('id', 'in', [...new Set(entries.map(({ agent }) => agent))])
    .execute();
  const known = new Set(rows.map(({ id }) => id));
  return entries.flatMap(({ agent }, index) =>
    known.has(agent) ? [] : [refusal(`/entries/${index}/agent`, 'unknown-id', 'agent-here', agent)],
  );
}

async function wrongAmendments(tx: Transaction<Tables>, site: string, entries: readonly Entry[]) {
  const amending = entries.flatMap((entry, index) => (entry.amends === null ? [] : [{ entry, index }]));
  const refusals: Refusal[] = [];
  for (const { entry, index } of amending) {
    const amended = entry.amends?.entry ?? '';
    const inBatch = entries.find(({ id, book }) => id === amended && book === entry.book);
    const row = await tx
      .selectFrom('entry')
      .selectAll()
      .where('site', '=', site)
      .where('book', '=', entry.book)
      .where('id', '=', amended)
      .executeTakeFirst();
    const old = row === undefined ? inBatch : entryOf(row);
    const field = `/entries/${index}/amends/entry`;
    if (old === undefined) refusals.push(refusal(field, 'unknown-id', 'entry-in-book', amended));
    else if (old.id === entry.id) refusals.push(refusal(field, 'contradicts', 'another-entry', amended));
    else if (old.person !== entry.person)
      refusals.push(refusal(field, 'contradicts', 'same-person', amended));
    else if (!sameSign(old, entry)) refusals.push(refusal(field, 'contradicts', 'same-sign', amended));
  }
  const lone = entries.flatMap(({ kind, amends }, index) =>
    kind === 'entered-in-error' && amends === null
      ? [refusal(`/entries/${index}/amends`, 'missing', 'entry-in-error', null)]
      : [],
  );
  return [...refusals, ...lone];
}

/** A pulse replaces a pulse, however each was taken; anything charted can be entered in error. */
function sameSign(old: Entry, next: Entry): boolean {
  if (old.kind === 'entered-in-error') return false;
  if (next.kind === 'entered-in-error') return signOf(old) !== null;
  return signOf(old) !== null && signOf(old) === signOf(next);
}

function signOf(entry: Entry): string | null {
  if (entry.kind === 'count') return entry.content.evidence.count.of;
  if (entry.kind === 'taps') return entry.content.evidence.taps.of;
  return entry.kind === 'round' ? 'round' : null;
}

/** A value made by this very program must be what the program makes of its evidence; `check` looks at the rest. */
async function wrongValues(
  tx: Transaction<Tables>,
  site: string,
  entries: readonly Entry[],
  program: string,
) {
  if (!entries.some(({ content }) => 'computedBy' in content)) return [];
  const inForce = await keptProtocols(tx, site);
  return entries.flatMap((entry, index): Refusal[] => {
    const again = recompute(entry, inForce);
    const within = `/entries/${index}`;
    if (again.state === 'impossible-evidence') {
      return again.refusals.map((refused) => ({ ...refused, field: within + refused.field }));
    }
    if (again.state === 'unknown-protocol') {
      return [refusal(`${within}/content/computedBy/presetVersion`, 'unknown-id', 'protocol-here', null)];
    }
    if (!('computedBy' in entry.content) || entry.content.computedBy.program !== program) return [];
    if (again.state === 'unknown-rule') {
      const { rule } = entry.content.computedBy;
      const choices = [entry.kind === 'count' ? COUNT_RULE : TAPS_RULE];
      return [refusal(`${within}/content/computedBy/rule`, 'unknown-id', 'choice', rule, { choices })];
    }
    if (again.state !== 'differs') return [];
    return [refusal(within + again.at, 'contradicts', 'value-of-evidence', again.kept)];
  });
}

/** A protocol can be chosen only where it is kept, else nobody could say what was in force. */
async function unknownChoices(tx: Transaction<Tables>, site: string, entries: readonly Entry[]) {
  if (!entries.some(({ kind }) => kind === 'protocol-chosen')) return [];
  const inForce = await keptProtocols(tx, site);
  return entries.flatMap((entry, index) =>
    entry.kind === 'protocol-chosen' && inForce(entry.content.version) === null
      ? [refusal(`/entries/${index}/content/version`, 'unknown-id', 'protocol-here', entry.content.version)]
      : [],
  );
}

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
