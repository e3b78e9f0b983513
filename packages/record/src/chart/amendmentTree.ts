import type { StoredEntry } from '../entry/entry.js';
import { inOrder } from './inOrder.js';

/**
 * How a value stands: as signed, amended once over, amended by two people who disagree (both are shown), or
 * entered in error (still readable).
 */
export type Standing = 'as-signed' | 'amended' | 'contested' | 'entered-in-error';

/** A charted value with everything that ever replaced it. */
export type AmendedEntry = {
  /** As first signed. */
  readonly original: StoredEntry;
  /** What stands now: one entry, or several when amendments disagree. Empty when all are in error. */
  readonly current: readonly StoredEntry[];
  /** Every entry of the story in order of recording, the original first. */
  readonly story: readonly StoredEntry[];
  readonly standing: Standing;
};

/**
 * Gathers entries and their amendments, however deep. Order of the input does not matter; the answer is in
 * the order of the originals (see {@link inOrder}). An amendment whose original is not among the
 * entries stands as an original itself, so that nothing disappears.
 */
export function gatherAmendments(entries: readonly StoredEntry[]): AmendedEntry[] {
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  const replacedBy = new Map<string, StoredEntry[]>();
  const originals: StoredEntry[] = [];
  for (const entry of inOrder(entries)) {
    const of = entry.amends?.entry;
    if (of === undefined || !byId.has(of) || reachesItself(entry, byId)) originals.push(entry);
    else replacedBy.set(of, [...(replacedBy.get(of) ?? []), entry]);
  }
  return originals.map((original) => {
    const story = [original];
    const leaves: StoredEntry[] = [];
    for (let at = 0; at < story.length; at += 1) {
      const entry = story[at] as StoredEntry;
      const next = replacedBy.get(entry.id) ?? [];
      if (next.length === 0) leaves.push(entry);
      story.push(...next);
    }
    const current = leaves.filter((leaf) => leaf.kind !== 'entered-in-error');
    return { original, current, story: story.sort(byRecording), standing: standingOf(original, current) };
  });
}

function standingOf(original: StoredEntry, current: readonly StoredEntry[]): Standing {
  if (current.length === 0) return 'entered-in-error';
  if (current.length > 1) return 'contested';
  return current[0] === original ? 'as-signed' : 'amended';
}

/** Amendments that name each other in a ring (only a damaged backup could) must not hang a reader. */
function reachesItself(entry: StoredEntry, byId: ReadonlyMap<string, StoredEntry>): boolean {
  let at: StoredEntry | undefined = entry;
  for (let steps = 0; at !== undefined && steps <= byId.size; steps += 1) {
    at = at.amends === null ? undefined : byId.get(at.amends.entry);
    if (at === entry) return true;
  }
  return false;
}

function byRecording(a: StoredEntry, b: StoredEntry): number {
  return Date.parse(a.recordedAt) - Date.parse(b.recordedAt) || a.sequence - b.sequence;
}
