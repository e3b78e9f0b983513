import type { Flag } from '@evenfall/clinical';
import type { StoredEntry } from '../entry/entry.js';
import { ofRate } from './ofRate.js';
import type { ChartRound } from './projectChart.js';

/**
 * Why a rate that stands asked for a longer count, as long as no such count stands in its round: what was said beside it
 * when it was taken holds on after the signature. None for one set by hand, or that was broken off, or of another sign.
 */
export function openReasons(entry: StoredEntry, { values }: Pick<ChartRound, 'values'>): readonly Flag[] {
  if (entry.kind !== 'count' && entry.kind !== 'taps') return [];
  const { value, override } = entry.content;
  if (value === null || value.perMinute === null || override !== null) return [];
  const of = ofRate(entry);
  const { nextWindowSeconds } = value;
  const isFollowed =
    nextWindowSeconds !== null &&
    values.some(({ current }) =>
      current.some((one) => ofRate(one) === of && windowOf(one) >= nextWindowSeconds && one !== entry),
    );
  if (isFollowed) return [];
  // Of taps, why a statistic could not be told belongs into the story; that the rhythm has no name does not.
  return 'nextWhy' in value
    ? [...value.why.filter(({ code }) => code === 'rhythm-not-clear'), ...value.nextWhy]
    : value.why;
}

/**
 * Seconds for which a rate was counted, as the protocol asks for them; 0 for anything else. Of taps with a rate that asks for no
 * longer ones, the time from the first to the last.
 */
function windowOf(entry: StoredEntry): number {
  if (entry.kind === 'taps') {
    const { perMinute, nextWindowSeconds } = entry.content.value;
    const { seconds } = entry.content.evidence.taps;
    return perMinute !== null && nextWindowSeconds === null ? (seconds.at(-1) ?? 0) - (seconds[0] ?? 0) : 0;
  }
  if (entry.kind !== 'count') return 0;
  const { count } = entry.content.evidence;
  return 'n' in count ? count.windowSeconds : 0;
}
