import { type Refusal, refusal } from '@evenfall/clinical';
import { type Entry, gatherAmendments, newReadings, type StoredEntry } from '@evenfall/record';
import type { Kysely } from 'kysely';
import type { Tables } from '../database/schema.js';
import { entryHere } from './entryHere.js';
import { LAST, readRows } from './rows.js';

/**
 * What is wrong with what is said of a diary or a series: each names one of the same person and book, in the same
 * request or kept already; a decision names readings that its series has; and a series keeps its kind and its round
 * when it is amended. Readings that another series of the person has are in the record already.
 */
export async function wrongSeries(
  tx: Kysely<Tables>,
  site: string,
  entries: readonly Entry[],
): Promise<Refusal[]> {
  const refusals: Refusal[] = [];
  for (const [index, entry] of entries.entries()) {
    const within = `/entries/${index}/content`;
    const diary = entry.kind === 'diary-ended' || entry.kind === 'series' ? entry.content.diary : null;
    if (diary !== null) {
      const found = await entryHere(tx, site, entry, diary, entries);
      if (found?.kind !== 'diary-handed' || found.person !== entry.person)
        refusals.push(refusal(`${within}/diary`, 'unknown-id', 'diary-of-person', diary));
    }
    if (entry.kind === 'series')
      refusals.push(...(await keptAlready(tx, site, entry, entries.slice(0, index), within)));
    if (entry.kind !== 'series-decided') continue;
    const { series, indexes } = entry.content;
    const found = await entryHere(tx, site, entry, series, entries);
    if (found?.kind !== 'series' || found.person !== entry.person) {
      refusals.push(refusal(`${within}/series`, 'unknown-id', 'series-of-person', series));
      continue;
    }
    const readings = await readingsOf(tx, site, entry, entries, found.id);
    for (const [place, at] of indexes.entries())
      if (at > readings)
        refusals.push(
          refusal(`${within}/indexes/${place}`, 'out-of-range', 'reading-of-series', at, {
            figures: { maximum: readings },
          }),
        );
  }
  return refusals;
}

type Series = Extract<Entry, { readonly kind: 'series' }>;
type SeriesTree = { readonly names: ReadonlySet<string>; readonly current: readonly Series[] };

/** Readings of a series that another one of its person has, each by its place. What it amends is itself. */
async function keptAlready(
  tx: Kysely<Tables>,
  site: string,
  entry: Series,
  before: readonly Entry[],
  within: string,
): Promise<Refusal[]> {
  // Two at once would each see a record without the other: they wait for each other at the person.
  await tx
    .selectFrom('person')
    .select('id')
    .where('site', '=', site)
    .where('book', '=', entry.book)
    .where('id', '=', entry.person ?? '')
    .forNoKeyUpdate()
    .execute();
  const trees = await treesOf(tx, site, entry, before);
  const own = (names: ReadonlySet<string>) => names.has(entry.id) || names.has(entry.amends?.entry ?? '');
  const others = trees.filter(({ names }) => !own(names)).flatMap(({ current }) => current);
  const existing = others.map(({ id, content }) => ({ series: id, readings: content.readings }));
  const { already } = newReadings(existing, entry.content.readings);
  return already.map(({ reading }) => {
    const place = entry.content.readings.indexOf(reading);
    return refusal(`${within}/readings/${place}`, 'repeated', 'reading-not-kept', reading.at.at);
  });
}

/** How many readings a series has with everything that was added to it. */
async function readingsOf(
  tx: Kysely<Tables>,
  site: string,
  entry: Entry,
  entries: readonly Entry[],
  series: string,
): Promise<number> {
  const trees = await treesOf(tx, site, entry, entries);
  const found = trees.find(({ names }) => names.has(series));
  return Math.max(0, ...(found?.current ?? []).map(({ content }) => content.readings.length));
}

/** The series of an entry's person as they stand, with those that came before it in the same request. */
async function treesOf(
  tx: Kysely<Tables>,
  site: string,
  { book, person }: Entry,
  before: readonly Entry[],
): Promise<SeriesTree[]> {
  const rows = await tx
    .selectFrom('entry')
    .selectAll()
    .where('site', '=', site)
    .where('book', '=', book)
    .where('person', '=', person)
    .where('kind', 'in', ['series', 'entered-in-error'])
    .execute();
  const kept = readRows(rows).entries;
  const sent = before
    .filter((one) => one.book === book && one.person === person && !kept.some(({ id }) => id === one.id))
    .filter(({ kind }) => kind === 'series' || kind === 'entered-in-error')
    .map((one): StoredEntry => ({ ...one, recordedAt: LAST }));
  return gatherAmendments([...kept, ...sent]).map(({ story, current }) => ({
    names: new Set(story.map(({ id }) => id)),
    current: current.filter((one) => one.kind === 'series'),
  }));
}
