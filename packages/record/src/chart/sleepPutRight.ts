import type { SeriesContent, SeriesEvidence } from '../content/series.js';
import type { StoredEntry } from '../entry/entry.js';
import { firstDifference } from '../recompute/nearly.js';

type StoredSeries = Extract<StoredEntry, { readonly kind: 'series' }>;

/** When the person slept, by night and by day; null is not known, or none. */
export type SleepSaid = Pick<SeriesEvidence, 'asleep' | 'nap'>;

/** An amendment of a recording that says other hours of sleep: who and when is the entry's, why its reason. */
export type SleepPutRight = {
  readonly entry: StoredSeries;
  readonly before: SleepSaid;
  readonly after: SleepSaid;
};

/**
 * The amendments of a recording that put the hours of sleep right, in order of recording. What was said before stays in
 * the entry that each amends.
 *
 * @param story every entry of a series, as `AmendedEntry` has it
 */
export function sleepPutRight(story: readonly StoredEntry[]): SleepPutRight[] {
  const said = new Map(story.map((entry) => [entry.id, entry]));
  return story.flatMap((entry): SleepPutRight[] => {
    const old = said.get(entry.amends?.entry ?? '');
    if (entry.kind !== 'series' || old?.kind !== 'series') return [];
    const [before, after] = [sleepOf(old.content), sleepOf(entry.content)];
    return firstDifference(before, after) === null ? [] : [{ entry, before, after }];
  });
}

/** The evidence of a series with other hours of sleep; its value and what made it are to be made again. */
export function withSleep(
  { value: _value, computedBy: _by, ...evidence }: SeriesContent,
  { asleep, nap }: SleepSaid,
): SeriesEvidence {
  return { ...evidence, asleep, nap: asleep === null ? null : nap };
}

function sleepOf({ asleep, nap }: SeriesContent): SleepSaid {
  return { asleep, nap };
}
