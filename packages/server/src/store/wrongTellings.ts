import { type Refusal, refusal } from '@evenfall/clinical';
import { type Entry, type Seen, type WrongTelling, wrongTelling } from '@evenfall/record';
import type { Kysely } from 'kysely';
import type { Tables } from '../database/schema.js';
import { readRows } from './rows.js';
import type { Incoming } from './takeEntries.js';

type Telling = Extract<Entry, { kind: 'act-now-closed' }>;

/**
 * What is wrong with what was told of something to act on at once, as `wrongTelling` says. What comes from another record
 * was let in there; and one that is kept already is answered as ever.
 */
export async function wrongTellings(
  tx: Kysely<Tables>,
  site: string,
  incoming: readonly Incoming[],
): Promise<Refusal[]> {
  const refusals: Refusal[] = [];
  for (const [index, { entry, recordedAt, cameAt }] of incoming.entries()) {
    if (entry.kind !== 'act-now-closed' || recordedAt !== undefined) continue;
    const kept = await ofRound(tx, site, entry);
    if (kept.some(({ id }) => id === entry.id)) continue;
    const sent = incoming
      .map((one) => one.entry)
      .filter(({ book, person, round }) => isSame(entry, book, person, round));
    const { saw } = entry.content;
    const seen: readonly Seen[] = [...kept, ...sent].filter(({ id }) => saw === null || saw.includes(id));
    for (const wrong of wrongTelling(entry.content, seen, entry.writtenAt, cameAt)) {
      const { field, code, expected } = REFUSED[wrong];
      const got = field === 'toldAt' ? entry.content.toldAt.at : entry.content[field];
      const at = `/entries/${index}/content/${field}${field === 'toldAt' ? '/at' : ''}`;
      refusals.push(refusal(at, code, expected, got));
    }
  }
  return refusals;
}

const REFUSED = {
  'nobody-told': { field: 'toldWhom', code: 'missing', expected: 'somebody-told' },
  'nothing-said': { field: 'saidBack', code: 'missing', expected: 'something-said' },
  'before-measured': { field: 'toldAt', code: 'out-of-range', expected: 'told-after-measured' },
  ahead: { field: 'toldAt', code: 'out-of-range', expected: 'told-by-now' },
} as const satisfies Record<WrongTelling, object>;

function isSame(telling: Telling, book: string, person: string | null, round: string | null): boolean {
  return book === telling.book && person === telling.person && round === telling.round;
}

async function ofRound(tx: Kysely<Tables>, site: string, { book, person, round }: Telling) {
  const rows = await tx
    .selectFrom('entry')
    .selectAll()
    .where('site', '=', site)
    .where('book', '=', book)
    .where('person', '=', person)
    .where('round', '=', round)
    .execute();
  return readRows(rows).entries;
}
