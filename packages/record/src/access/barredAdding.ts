import { type Refusal, refusal } from '@evenfall/clinical';
import { chartSeries } from '../chart/chartSeries.js';
import { mayAddTo } from '../chart/signersOf.js';
import type { Entry, StoredEntry } from '../entry/entry.js';

/**
 * What nobody may put in the place of a learner's series that waits to be countersigned but those who signed it: whoever adds to
 * it has signed it, and could look at it no more. And what a learner may not put in the place of a series, final or not, that
 * somebody else signed last. A mark that it was entered in error adds nothing.
 *
 * @param record what is kept of the person, at least their series and what was said of them
 * @returns a refusal at `/amends/entry`. Source: decision of this project (as `mayAddTo`).
 */
export function barredAdding(entry: Entry, record: readonly StoredEntry[]): Refusal[] {
  const { kind, amends, agent } = entry;
  if (kind !== 'series' || amends === null) return [];
  const series = chartSeries(record, () => null).find(({ amended }) =>
    amended.story.some(({ id }) => id === amends.entry),
  );
  if (series === undefined) return [];
  // What is sent says itself whether it is a learner's: somebody else's is neither.
  const may = mayAddTo(series, agent, entry.content.status === 'preliminary');
  if (may !== 'waits' && may !== 'others') return [];
  const rule = series.isPreliminary ? 'series-countersigned' : 'own-entry-of-learner';
  return [refusal('/amends/entry', 'contradicts', rule, amends.entry)];
}
