import { type Refusal, refusal } from '@evenfall/clinical';
import type { Entry } from '@evenfall/record';
import type { Kysely } from 'kysely';
import type { Tables } from '../database/schema.js';
import { entryHere } from './entryHere.js';

/**
 * What is wrong with entries that name equipment: a line of a log and a reading name a gauge that is known in their
 * book, the end of a thing names it. A thing is named by the entry that first said it, never by what put that right.
 */
export async function wrongEquipment(
  tx: Kysely<Tables>,
  site: string,
  entries: readonly Entry[],
): Promise<Refusal[]> {
  const refusals: Refusal[] = [];
  for (const [index, entry] of entries.entries()) {
    const named = namedBy(entry);
    if (named === null) continue;
    const thing = await entryHere(tx, site, entry, named.id, entries);
    const isThere = thing?.kind === 'equipment' && thing.amends === null;
    if (!isThere || (named.isGauge && thing.content.what !== 'gauge')) {
      const expected = named.isGauge ? 'gauge-here' : 'equipment-here';
      refusals.push(refusal(`/entries/${index}${named.at}`, 'unknown-id', expected, named.id));
    }
  }
  return refusals;
}

type Named = { readonly id: string; readonly at: string; readonly isGauge: boolean };

function namedBy(entry: Entry): Named | null {
  switch (entry.kind) {
    case 'gauge-logged':
      return { id: entry.content.gauge, at: '/content/gauge', isGauge: true };
    case 'equipment-ended':
      return { id: entry.content.equipment, at: '/content/equipment', isGauge: false };
    case 'run': {
      const { gauge } = entry.content.evidence;
      return gauge === null ? null : { id: gauge, at: '/content/evidence/gauge', isGauge: true };
    }
    default:
      return null;
  }
}
