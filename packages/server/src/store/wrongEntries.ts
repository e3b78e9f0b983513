import { type Refusal, refusal } from '@evenfall/clinical';
import {
  COMPUTED,
  type Entry,
  type InForce,
  isComputed,
  presetOf,
  presetOfSeries,
  recompute,
  SERIES_RULES,
  signOf,
} from '@evenfall/record';
import type { Kysely } from 'kysely';
import type { Tables } from '../database/schema.js';
import { keptProtocols } from './protocols.js';
import { readableIn } from './rows.js';
import { wrongAbout } from './wrongAbout.js';
import { wrongEquipment } from './wrongEquipment.js';
import { wrongSeries } from './wrongSeries.js';
import { wrongSessions } from './wrongSessions.js';
import { wrongSignings } from './wrongSignings.js';

/**
 * What is wrong with entries that the database itself does not refuse: ids used twice, amendments of the wrong thing,
 * values that are not what their evidence gives, a protocol that is not kept. In order of place.
 */
export async function wrongEntries(
  tx: Kysely<Tables>,
  site: string,
  entries: readonly Entry[],
  program: string,
): Promise<Refusal[]> {
  const refusals: Refusal[] = [...repeatedIds(entries)];
  // One at a time: a transaction is one connection, and parallel queries on it would only queue.
  refusals.push(...(await wrongAmendments(tx, site, entries)));
  refusals.push(...(await wrongSignings(tx, site, entries, program)));
  refusals.push(...(await wrongAbout(tx, site, entries)));
  refusals.push(...(await wrongSeries(tx, site, entries)));
  refusals.push(...(await wrongEquipment(tx, site, entries)));
  refusals.push(...(await wrongSessions(tx, site, entries)));
  refusals.push(...(await wrongValues(tx, site, entries, program)));
  refusals.push(...(await unknownChoices(tx, site, entries)));
  return inPlace(refusals);
}

/**
 * Which persons and agents of entries are not known here. Asked only once the database has refused a row for it: its
 * foreign keys check every row anyway.
 */
export async function unknownReferences(
  db: Kysely<Tables>,
  site: string,
  entries: readonly Entry[],
): Promise<Refusal[]> {
  const persons = await unknownPersons(db, site, entries);
  return inPlace([...persons, ...(await unknownAgents(db, site, entries))]);
}

/** Refusals by the entry they are about. */
export function inPlace(refusals: readonly Refusal[]): Refusal[] {
  return [...refusals].sort((a, b) => indexOf(a) - indexOf(b));
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

async function unknownPersons(tx: Kysely<Tables>, site: string, entries: readonly Entry[]) {
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
      .executeTakeFirst();
    if (row !== undefined) known.add(key);
  }
  return entries.flatMap(({ book, person }, index) =>
    person === null || known.has(`${book} ${person}`)
      ? []
      : [refusal(`/entries/${index}/person`, 'unknown-id', 'person-in-book', person)],
  );
}

async function unknownAgents(tx: Kysely<Tables>, site: string, entries: readonly Entry[]) {
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

async function wrongAmendments(tx: Kysely<Tables>, site: string, entries: readonly Entry[]) {
  const amending = entries.flatMap((entry, index) => (entry.amends === null ? [] : [{ entry, index }]));
  const refusals: Refusal[] = [];
  for (const { entry, index } of amending) {
    const amended = entry.amends?.entry ?? '';
    const find = (id: string) => amendable(tx, site, entry, id, entries);
    const old = await find(amended);
    // A mark "entered in error" is taken back by a value of the sign it was about, and by nothing else.
    const marked = old?.kind === 'entered-in-error' ? await find(old.amends?.entry ?? '') : old;
    const field = `/entries/${index}/amends/entry`;
    if (old === undefined) refusals.push(refusal(field, 'unknown-id', 'entry-in-book', amended));
    else if (old.id === entry.id) refusals.push(refusal(field, 'contradicts', 'another-entry', amended));
    else if (old.person !== entry.person)
      refusals.push(refusal(field, 'contradicts', 'same-person', amended));
    else if (marked === undefined || !sameSign(old, marked, entry))
      refusals.push(refusal(field, 'contradicts', 'same-sign', amended));
    else if ((entry.kind === 'round' || entry.kind === 'series') && marked.round !== entry.round)
      refusals.push(refusal(`/entries/${index}/round`, 'contradicts', 'same-round', entry.round));
  }
  const lone = entries.flatMap(({ kind, amends }, index) =>
    kind === 'entered-in-error' && amends === null
      ? [refusal(`/entries/${index}/amends`, 'missing', 'entry-in-error', null)]
      : [],
  );
  return [...refusals, ...lone];
}

/** The entry that an amendment names: in the same request, or kept in its book. */
async function amendable(
  tx: Kysely<Tables>,
  site: string,
  { book }: Entry,
  id: string,
  entries: readonly Entry[],
): Promise<Entry | undefined> {
  const row = await tx
    .selectFrom('entry')
    .selectAll()
    .where('site', '=', site)
    .where('book', '=', book)
    .where('id', '=', id)
    .executeTakeFirst();
  return row === undefined ? entries.find((one) => one.id === id && one.book === book) : readableIn(row);
}

/** What is said of something else: a slip in it is said anew, and is no more than marked. */
const SAID_OF_ANOTHER: readonly Entry['kind'][] = [
  'act-now-closed',
  'countersigned',
  'fact-ended',
  'gauge-logged',
  'equipment-ended',
  'diary-ended',
  'series-decided',
];

/**
 * A pulse replaces a pulse, however each was taken; anything charted can be entered in error, and what closed, ended
 * or countersigned something, but not the mark itself.
 */
function sameSign(old: Entry, marked: Entry, next: Entry): boolean {
  const subject = subjectOf(marked);
  if (next.kind === 'entered-in-error')
    return subject === null ? SAID_OF_ANOTHER.includes(old.kind) : old.kind !== 'entered-in-error';
  return subject !== null && subject === subjectOf(next);
}

function subjectOf(entry: Entry): string | null {
  if (entry.kind === 'equipment') return `equipment ${entry.content.what}`;
  // A value from elsewhere replaces another of its sign from elsewhere, and never one that was taken here.
  if (entry.kind === 'reported') return `reported ${entry.content.value.of}`;
  if (entry.kind === 'series') return `series ${entry.content.of}`;
  if (entry.kind === 'diary-handed') return entry.kind;
  return entry.kind === 'round' || entry.kind === 'fact' ? entry.kind : signOf(entry);
}

/**
 * A value must be what the rule it names makes of its evidence, whichever program made it: a rule that gives something
 * else has another name. Values of rules that are not known here are left to `check`.
 */
async function wrongValues(tx: Kysely<Tables>, site: string, entries: readonly Entry[], program: string) {
  const named = entries.flatMap(({ content }) =>
    'computedBy' in content && content.computedBy !== null ? [content.computedBy.presetVersion] : [],
  );
  const inForce = await keptProtocols(tx, site, named);
  return entries.flatMap((entry, index): Refusal[] => {
    const again = recompute(entry, inForce);
    const within = `/entries/${index}`;
    if (again.state === 'impossible-evidence') {
      return again.refusals.map((refused) => ({ ...refused, field: within + refused.field }));
    }
    if (again.state === 'unknown-protocol') {
      return [refusal(`${within}/content/computedBy/presetVersion`, 'unknown-id', 'protocol-here', null)];
    }
    const made = madeBy(entry);
    if (made === null) return [];
    const { rule, preset, presetVersion, program: by } = made.by;
    const rules = inForce(presetVersion);
    const wanted = rules === null ? null : made.presetUnder(rules);
    if (preset !== wanted) {
      const choices = wanted === null ? [] : [wanted];
      return [refusal(`${within}/content/computedBy/preset`, 'contradicts', 'choice', preset, { choices })];
    }
    // Another program may have rules that this one does not know; its own it must know.
    if (again.state === 'unknown-rule' && by === program) {
      const choices = [made.rule];
      return [refusal(`${within}/content/computedBy/rule`, 'unknown-id', 'choice', rule, { choices })];
    }
    if (again.state !== 'differs') return [];
    return [refusal(within + again.at, 'contradicts', 'value-of-evidence', again.kept)];
  });
}

type Made = {
  readonly by: NonNullable<Extract<Entry, { kind: 'count' }>['content']['computedBy']>;
  /** The rule of this program, and the preset that it goes by under rules. */
  readonly rule: string;
  readonly presetUnder: (inForce: InForce) => string | null;
};

/** What made the value of an entry; null for one that holds none, and for a round (see `wrongSignings`). */
function madeBy(entry: Entry): Made | null {
  const { content, kind } = entry;
  if (entry.kind === 'series') {
    const { of, computedBy } = entry.content;
    return {
      by: computedBy,
      rule: SERIES_RULES[of],
      presetUnder: (inForce) => presetOfSeries(of, inForce),
    };
  }
  if (!('computedBy' in content) || content.computedBy === null || !isComputed(kind)) return null;
  return {
    by: content.computedBy,
    rule: COMPUTED[kind].rule,
    presetUnder: (inForce) => presetOf(kind, inForce),
  };
}

/** A protocol can be chosen only where it is kept, else nobody could say what was in force. */
async function unknownChoices(tx: Kysely<Tables>, site: string, entries: readonly Entry[]) {
  const named = entries.flatMap((entry) => (entry.kind === 'protocol-chosen' ? [entry.content.version] : []));
  const inForce = await keptProtocols(tx, site, named);
  return entries.flatMap((entry, index) =>
    entry.kind === 'protocol-chosen' && inForce(entry.content.version) === null
      ? [refusal(`/entries/${index}/content/version`, 'unknown-id', 'protocol-here', entry.content.version)]
      : [],
  );
}
