import { type Refusal, refusal } from '@evenfall/clinical';
import type { Entry } from '@evenfall/record';
import type { Kysely } from 'kysely';
import type { Tables } from '../database/schema.js';
import { entryHere } from './entryHere.js';

/**
 * What is wrong with what is said of a diary or a series: each names one of the same person and book, in the same
 * request or kept already; a decision names readings that its series has; and a series keeps its kind and its round
 * when it is amended.
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
    if (entry.kind !== 'series-decided') continue;
    const { series, indexes } = entry.content;
    const found = await entryHere(tx, site, entry, series, entries);
    if (found?.kind !== 'series' || found.person !== entry.person) {
      refusals.push(refusal(`${within}/series`, 'unknown-id', 'series-of-person', series));
      continue;
    }
    const readings = found.content.readings.length;
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
