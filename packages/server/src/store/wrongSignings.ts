import { type Refusal, ROUND_RULE, refusal } from '@evenfall/clinical';
import { type Entry, misnamed, recomputeRound } from '@evenfall/record';
import type { Kysely } from 'kysely';
import type { Tables } from '../database/schema.js';
import { keptProtocols } from './protocols.js';
import { readableIn, readRows } from './rows.js';

/** Rounds of pulse and breaths, before anything was made of a round. */
const LAST_SCHEMA_WITHOUT_VALUE = 1;

type Signing = Entry & { readonly kind: 'round' };

/**
 * What is wrong with signings: each names entries of its own person, round and sign, in the same request or kept
 * already, and a kept protocol; a learner's stays one; and what was made of them is what the rule it names makes.
 */
export async function wrongSignings(
  tx: Kysely<Tables>,
  site: string,
  entries: readonly Entry[],
  program: string,
): Promise<Refusal[]> {
  const refusals: Refusal[] = [];
  for (const [index, signing] of entries.entries()) {
    if (signing.kind !== 'round') continue;
    const named = await namedBy(tx, site, signing, entries);
    const misnamed = wrongNames(signing, index, named);
    refusals.push(
      ...misnamed,
      ...(await wrongStatus(tx, site, signing, index, entries)),
      ...lackingValue(signing, index),
    );
    const { protocolVersion } = signing.content;
    const inForce = await keptProtocols(tx, site, [protocolVersion]);
    if (inForce(protocolVersion) === null) {
      const field = `/entries/${index}/content/protocolVersion`;
      refusals.push(refusal(field, 'unknown-id', 'protocol-here', protocolVersion));
    } else if (misnamed.length === 0) {
      refusals.push(...wrongValue(signing, index, [...named.values()], inForce, program));
    }
  }
  return refusals;
}

function wrongNames(signing: Signing, index: number, named: ReadonlyMap<string, Entry>): Refusal[] {
  const within = `/entries/${index}`;
  const others = misnamed(signing, named).map(({ at, id }) =>
    refusal(within + at, 'unknown-id', 'entry-of-round', id),
  );
  const doubtful = signing.content.signs.flatMap((sign, place) => {
    if (!('entries' in sign)) return [];
    return sign.entries.flatMap((id, at) => {
      const entry = named.get(id);
      if (entry === undefined) return [];
      const field = `${within}/content/signs/${place}/entries/${at}`;
      // An amendment stands in the place of what it amends: with both, one reading would count twice.
      if (entry.amends !== null && named.has(entry.amends.entry))
        return [refusal(field, 'repeated', 'entry-or-amendment', id)];
      return isAnothers(entry, signing) ? [refusal(field, 'contradicts', 'own-entry', id)] : [];
    });
  });
  return others.length > 0 ? others : doubtful;
}

/** A supervisor's reading stands beside a learner's, never in their mean; what puts one right may be anybody's. */
function isAnothers({ amends, agent }: Entry, signing: Signing): boolean {
  return (
    signing.content.status === 'preliminary' &&
    signing.amends === null &&
    amends === null &&
    agent !== signing.agent
  );
}

/** What a learner signed becomes final by a countersigning and by no amendment. */
async function wrongStatus(
  tx: Kysely<Tables>,
  site: string,
  { book, amends, content }: Signing,
  index: number,
  entries: readonly Entry[],
): Promise<Refusal[]> {
  if (amends === null || content.status === 'preliminary') return [];
  const row = await tx
    .selectFrom('entry')
    .selectAll()
    .where('site', '=', site)
    .where('book', '=', book)
    .where('id', '=', amends.entry)
    .executeTakeFirst();
  const old = readableIn(row) ?? entries.find((one) => one.id === amends.entry && one.book === book);
  if (old?.kind !== 'round' || old.content.status === 'final') return [];
  const field = `/entries/${index}/content/status`;
  return [refusal(field, 'contradicts', 'choice', content.status, { choices: ['preliminary'] })];
}

/** Since there is a rule of rounds, a signing says what it makes of its entries: without it nothing would alert. */
function lackingValue({ schema, content }: Signing, index: number): Refusal[] {
  return schema > LAST_SCHEMA_WITHOUT_VALUE && content.value === null
    ? [refusal(`/entries/${index}/content/value`, 'missing', 'value-of-evidence', null)]
    : [];
}

function wrongValue(
  signing: Signing,
  index: number,
  named: readonly Entry[],
  inForce: Parameters<typeof recomputeRound>[2],
  program: string,
): Refusal[] {
  const again = recomputeRound(signing, named, inForce);
  const within = `/entries/${index}`;
  if (again.state === 'differs')
    return [refusal(within + again.at, 'contradicts', 'value-of-evidence', again.kept)];
  const by = signing.content.computedBy;
  if (again.state === 'unknown-protocol')
    return [
      refusal(`${within}/content/computedBy/presetVersion`, 'unknown-id', 'protocol-here', by?.presetVersion),
    ];
  // Another program may have rules that this one does not know; its own it must know.
  if (again.state === 'unknown-rule' && by?.program === program)
    return [
      refusal(`${within}/content/computedBy/rule`, 'unknown-id', 'choice', by.rule, {
        choices: [ROUND_RULE],
      }),
    ];
  return [];
}

/** The entries that a signing names, from the same request or as kept in its book. */
async function namedBy(
  tx: Kysely<Tables>,
  site: string,
  signing: Signing,
  entries: readonly Entry[],
): Promise<ReadonlyMap<string, Entry>> {
  const ids = signing.content.signs.flatMap((sign) => ('entries' in sign ? sign.entries : []));
  const sent = entries.filter(({ id, book }) => book === signing.book && ids.includes(id));
  const found = new Map(sent.map((entry) => [entry.id, entry]));
  const others = ids.filter((id) => !found.has(id));
  if (others.length === 0) return found;
  const rows = await tx
    .selectFrom('entry')
    .selectAll()
    .where('site', '=', site)
    .where('book', '=', signing.book)
    .where('id', 'in', others)
    .execute();
  for (const entry of readRows(rows).entries) found.set(entry.id, entry);
  return found;
}
