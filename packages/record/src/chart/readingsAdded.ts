import type { StoredEntry } from '../entry/entry.js';

/**
 * How many readings an entry of a series added to the one that it amends; null of the first entry. Two that amend the same
 * one each added to that, and not to each other.
 *
 * @param story every entry of a series, as `AmendedEntry` has it
 */
export function readingsAdded(entry: StoredEntry, story: readonly StoredEntry[]): number | null {
  const before = story.find(({ id }) => id === entry.amends?.entry);
  if (entry.kind !== 'series' || before?.kind !== 'series') return null;
  return entry.content.readings.length - before.content.readings.length;
}
