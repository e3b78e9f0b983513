import type { StoredEntry } from '../entry/entry.js';

/** Of what an entry is a rate, counted or tapped; null for anything else. */
export function ofRate(entry: StoredEntry): 'pulse' | 'breaths' | null {
  if (entry.kind === 'count') return entry.content.evidence.count.of;
  return entry.kind === 'taps' ? entry.content.evidence.taps.of : null;
}
