import { type Refusal, refusal } from '@evenfall/clinical';
import { type Entry, signersOf } from '@evenfall/record';
import type { Kysely } from 'kysely';
import type { Tables } from '../database/schema.js';
import { entryHere } from './entryHere.js';
import { readableIn, readRows } from './rows.js';

/**
 * What is wrong with entries that are about another entry without amending it: a countersigning names a signing, or the series, of
 * its round and is made by a supervisor who signed nothing of it and is no learner; a closing stands in a round that is signed, or in that of a series; the end of a
 * fact names a fact. All of the same person and book.
 */
export async function wrongAbout(
  tx: Kysely<Tables>,
  site: string,
  entries: readonly Entry[],
): Promise<Refusal[]> {
  const refusals: Refusal[] = [];
  for (const [index, entry] of entries.entries()) {
    const within = `/entries/${index}`;
    if (entry.kind === 'fact-ended') {
      const { fact } = entry.content;
      const found = await entryHere(tx, site, entry, fact, entries);
      const at = `${within}/content/fact`;
      if (!isAbout(found, entry, 'fact')) refusals.push(refusal(at, 'unknown-id', 'fact-of-person', fact));
      else if (found.content.from > entry.content.until)
        refusals.push(
          refusal(`${within}/content/until`, 'out-of-range', 'not-before-from', entry.content.until),
        );
    }
    // Sent again after the supervisor signed something since: what was kept is answered as ever.
    if (entry.kind === 'countersigned' && !(await isKept(tx, site, entry)))
      refusals.push(...(await wrongCountersigning(tx, site, entry, within, entries)));
    if (
      entry.kind === 'act-now-closed' &&
      (await signingsIn(tx, site, entry, entry.round, entries)).length === 0 &&
      !(await isRoundOfSeries(tx, site, entry, entries))
    )
      refusals.push(refusal(`${within}/round`, 'unknown-id', 'signed-round', entry.round));
  }
  return refusals;
}

async function wrongCountersigning(
  tx: Kysely<Tables>,
  site: string,
  entry: Entry & { readonly kind: 'countersigned' },
  within: string,
  entries: readonly Entry[],
): Promise<Refusal[]> {
  const { signing, ownRound } = entry.content;
  const refusals: Refusal[] = [];
  if (entry.role !== 'supervisor')
    refusals.push(
      refusal(`${within}/role`, 'contradicts', 'choice', entry.role, { choices: ['supervisor'] }),
    );
  const found = await entryHere(tx, site, entry, signing, entries);
  const isSigning = isAbout(found, entry, 'round') || isAbout(found, entry, 'series');
  if (!isSigning || found.round !== entry.round)
    refusals.push(refusal(`${within}/content/signing`, 'unknown-id', 'signing-of-round', signing));
  else if (signersOf(await signingsIn(tx, site, entry, entry.round, entries, found.kind)).has(entry.agent))
    refusals.push(refusal(`${within}/agent`, 'contradicts', 'another-agent', entry.agent));
  else if (await isLearner(tx, site, entry))
    refusals.push(refusal(`${within}/agent`, 'contradicts', 'no-learner', entry.agent));
  const own = ownRound === null ? [] : await signingsIn(tx, site, entry, ownRound, entries);
  const isOwn = own.some(({ agent, content }) => agent === entry.agent && content.status === 'final');
  if (ownRound !== null && (!isOwn || ownRound === entry.round))
    refusals.push(refusal(`${within}/content/ownRound`, 'unknown-id', 'own-round', ownRound));
  return refusals;
}

async function isKept(tx: Kysely<Tables>, site: string, { book, id }: Entry): Promise<boolean> {
  const row = await tx
    .selectFrom('entry')
    .select('id')
    .where('site', '=', site)
    .where('book', '=', book)
    .where('id', '=', id)
    .executeTakeFirst();
  return row !== undefined;
}

/** Whether the newest round or series that the agent signed in this book is a learner's: until there are accounts, all that says so. */
async function isLearner(tx: Kysely<Tables>, site: string, { book, agent }: Entry): Promise<boolean> {
  const row = await tx
    .selectFrom('entry')
    .selectAll()
    .where('site', '=', site)
    .where('book', '=', book)
    .where('kind', 'in', ['round', 'series'])
    .where('agent', '=', agent)
    .where('amends', 'is', null)
    .orderBy('recorded_at', 'desc')
    .orderBy('id', 'desc')
    .limit(1)
    .executeTakeFirst();
  const newest = readableIn(row);
  const isSigning = newest?.kind === 'round' || newest?.kind === 'series';
  return isSigning && newest.content.status === 'preliminary';
}

/** Whether a round is the one under which a series of the entry's person was kept, or comes with it. */
async function isRoundOfSeries(
  tx: Kysely<Tables>,
  site: string,
  { book, person, round }: Entry,
  entries: readonly Entry[],
): Promise<boolean> {
  const isOne = (one: Entry) =>
    one.kind === 'series' && one.book === book && one.person === person && one.round === round;
  if (entries.some(isOne)) return true;
  const row = await tx
    .selectFrom('entry')
    .select('id')
    .where('site', '=', site)
    .where('book', '=', book)
    .where('kind', '=', 'series')
    .where('person', '=', person)
    .where('round', '=', round)
    .limit(1)
    .executeTakeFirst();
  return row !== undefined;
}

function isAbout<K extends Entry['kind']>(
  found: Entry | undefined,
  { person }: Entry,
  kind: K,
): found is Extract<Entry, { kind: K }> {
  return found !== undefined && found.kind === kind && found.person === person;
}

type Signing = Extract<Entry, { kind: 'round' | 'series' }>;

/** The signings of a round, or the series under it, of the entry's person and their amendments, in the same request or kept in its book. */
async function signingsIn(
  tx: Kysely<Tables>,
  site: string,
  { book, person }: Entry,
  round: string | null,
  entries: readonly Entry[],
  kind: 'round' | 'series' = 'round',
): Promise<readonly Signing[]> {
  const rows = await tx
    .selectFrom('entry')
    .selectAll()
    .where('site', '=', site)
    .where('book', '=', book)
    .where('kind', '=', kind)
    .where('person', '=', person)
    .where('round', '=', round)
    .execute();
  const sent = entries.filter((one) => one.round === round && one.book === book && one.person === person);
  return [...sent, ...readRows(rows).entries].filter((one): one is Signing => one.kind === kind);
}
