import type { Entry } from '../entry/entry.js';

/** The rate an entry stands for: set by hand if it was, else computed; null when there is none. */
export function chartedPerMinute(entry: Entry): number | null {
  if (entry.kind !== 'count' && entry.kind !== 'taps') return null;
  return entry.content.override?.perMinute ?? entry.content.value?.perMinute ?? null;
}
