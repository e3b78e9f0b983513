import { type Refusal, ROUND_RULE, refusal } from '@evenfall/clinical';
import { type Entry, recomputeRound, signOf } from '@evenfall/record';
import type { Kysely } from 'kysely';
import type { Tables } from '../database/schema.js';
import { keptProtocols } from './protocols.js';
import { readRows } from './rows.js';

type Signing = Entry & { readonly kind: 'round' };

/**
 * What is wrong with signings: each names entries of its own person, round and sign, in the same request or kept
 * already, and a kept protocol; and what was made of them is what the rule it names makes of them.
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
    refusals.push(...misnamed);
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
  return signing.content.signs.flatMap((sign, place) => {
    if (!('entries' in sign)) return [];
    return sign.entries.flatMap((id, at) => {
      const entry = named.get(id);
      const isRight =
        entry !== undefined &&
        entry.person === signing.person &&
        entry.round === signing.round &&
        signOf(entry) === sign.sign;
      const field = `/entries/${index}/content/signs/${place}/entries/${at}`;
      return isRight ? [] : [refusal(field, 'unknown-id', 'entry-of-round', id)];
    });
  });
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
