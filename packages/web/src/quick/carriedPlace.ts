import { projectNewest, type RunPlace, type StoredEntry } from '@evenfall/record';

/** Where the cuff was at the newest reading of a person, and when: carried over, shown, and changed in one touch. */
export type CarriedPlace = { readonly place: RunPlace; readonly at: string };

/**
 * Null where there is no reading at the upper arm yet, and for one whose arm somebody had to decide on: that decision
 * held for its own reading. A person who stood then does not stand now.
 */
export function carriedPlace(entries: readonly StoredEntry[]): CarriedPlace | null {
  const newest = projectNewest(entries).pressure?.entry;
  const entry = entries.find(({ id }) => id === newest);
  if (entry?.kind !== 'run') return null;
  const { place } = entry.content.evidence;
  if (place.override !== null) return null;
  const posture = place.posture === 'stand' ? 'sit' : place.posture;
  return { place: { ...place, posture }, at: entry.measuredAt.at };
}
