import type { Entry, StoredEntry } from '../entry/entry.js';
import { projectChart } from './projectChart.js';

/** The newest standing value of a sign: what a list of people shows. */
export type LatestValue = {
  readonly entry: string;
  readonly perMinute: number;
  readonly byHand: boolean;
  readonly measuredAt: string;
  readonly contested: boolean;
  /** A learner's value that nobody qualified has countersigned. */
  readonly preliminary: boolean;
};

/** What the list of people shows of one person, projected from the person's entries. */
export type Latest = { readonly pulse: LatestValue | null; readonly breaths: LatestValue | null };

/**
 * The newest number of each sign that is not entered in error, nor in a round that is. What has no number (a void
 * count, a single tap) never hides one that has.
 */
export function projectLatest(entries: readonly StoredEntry[]): Latest {
  const latest: { pulse: LatestValue | null; breaths: LatestValue | null } = { pulse: null, breaths: null };
  for (const round of projectChart(entries).rounds) {
    for (const { current, standing } of [...round.values].reverse()) {
      const entry = current.at(-1);
      if (entry === undefined || (entry.kind !== 'count' && entry.kind !== 'taps')) continue;
      const of = entry.kind === 'count' ? entry.content.evidence.count.of : entry.content.evidence.taps.of;
      const perMinute = chartedPerMinute(entry);
      if (perMinute === null) continue;
      latest[of] ??= {
        entry: entry.id,
        perMinute,
        byHand: entry.content.override !== null,
        measuredAt: entry.measuredAt.at,
        contested: standing === 'contested',
        preliminary: round.isPreliminary,
      };
    }
  }
  return latest;
}

/** The rate an entry stands for: set by hand if it was, else computed; null when there is none. */
export function chartedPerMinute(entry: Entry): number | null {
  if (entry.kind !== 'count' && entry.kind !== 'taps') return null;
  return entry.content.override?.perMinute ?? entry.content.value?.perMinute ?? null;
}
