import type { StoredEntry } from '../entry/entry.js';
import { inOrder } from './inOrder.js';
import { inRing } from './inRing.js';

/**
 * How a value stands: as signed, amended once over, contested (two amendments of one entry disagree about what it
 * is, or whether it stands at all; both are shown), or entered in error (still readable). A mark of error that was
 * itself amended is taken back: what amended it stands.
 */
export type Standing = 'as-signed' | 'amended' | 'contested' | 'entered-in-error';

/** A charted value with everything that ever replaced it. */
export type AmendedEntry = {
  /** As first signed. */
  readonly original: StoredEntry;
  /** What stands now: one entry, or several when amendments disagree. Empty when all are in error. */
  readonly current: readonly StoredEntry[];
  /** Every entry of the story in order of recording, each after what it amends: the original first. */
  readonly story: readonly StoredEntry[];
  readonly standing: Standing;
};

/** What amends each entry, by the id of what is amended; an entry that nothing amends is not in it. */
type ReplacedBy = ReadonlyMap<string, readonly StoredEntry[]>;

/**
 * Gathers entries and their amendments, however deep. Order of the input does not matter; the answer is in
 * the order of the originals (see {@link inOrder}). An amendment whose original is not among the
 * entries stands as an original itself, so that nothing disappears.
 */
export function gatherAmendments(entries: readonly StoredEntry[]): AmendedEntry[] {
  const known = new Set(entries.map(({ id }) => id));
  const ring = inRing(entries);
  const ranks = ranksOf(entries);
  const replacedBy = new Map<string, StoredEntry[]>();
  const originals: StoredEntry[] = [];
  for (const entry of inOrder(entries)) {
    const of = entry.amends?.entry;
    // Amendments that name each other in a ring (only a damaged backup could) must not hang a reader.
    if (of === undefined || !known.has(of) || ring.has(entry.id)) {
      originals.push(entry);
      continue;
    }
    const beside = replacedBy.get(of);
    if (beside === undefined) replacedBy.set(of, [entry]);
    else beside.push(entry);
  }
  return originals.map((original) => {
    const story = storyOf(original, replacedBy, ranks);
    const standing = standingIn(story, replacedBy);
    const leaves = story.filter(({ id }) => !replacedBy.has(id));
    const current = leaves.filter(isValue);
    // Somebody says "in error" of what somebody else amended instead, so that a value stands there too.
    const isDisputed = leaves.some(
      (leaf) => !isValue(leaf) && leaf.amends !== null && standing.has(leaf.amends.entry),
    );
    return { original, current, story, standing: standingOf(original, current, isDisputed) };
  });
}

/** The original and what replaced it, in order of recording, none before what it amends. */
function storyOf(
  original: StoredEntry,
  replacedBy: ReplacedBy,
  ranks: ReadonlyMap<string, number>,
): StoredEntry[] {
  const rank = ({ id }: StoredEntry) => ranks.get(id) ?? 0;
  const story: StoredEntry[] = [];
  // What may come next, the latest first, so that the earliest is taken from the end.
  const next = [original];
  for (let entry = next.pop(); entry !== undefined; entry = next.pop()) {
    story.push(entry);
    for (const amending of replacedBy.get(entry.id) ?? []) {
      let [low, high] = [0, next.length];
      while (low < high) {
        const middle = (low + high) >> 1;
        if (rank(next[middle] as StoredEntry) > rank(amending)) low = middle + 1;
        else high = middle;
      }
      next.splice(low, 0, amending);
    }
  }
  return story;
}

/** The ids at the end of which a value stands. A story has what amends after what is amended. */
function standingIn(story: readonly StoredEntry[], replacedBy: ReplacedBy): ReadonlySet<string> {
  const standing = new Set<string>();
  for (const entry of story.toReversed()) {
    const next = replacedBy.get(entry.id);
    if (next === undefined ? isValue(entry) : next.some(({ id }) => standing.has(id))) standing.add(entry.id);
  }
  return standing;
}

function isValue({ kind }: StoredEntry): boolean {
  return kind !== 'entered-in-error';
}

function standingOf(original: StoredEntry, current: readonly StoredEntry[], isDisputed: boolean): Standing {
  if (current.length === 0) return 'entered-in-error';
  if (current.length > 1 || isDisputed) return 'contested';
  return current[0] === original ? 'as-signed' : 'amended';
}

/** The place of each entry in the order of recording, by id. */
function ranksOf(entries: readonly StoredEntry[]): ReadonlyMap<string, number> {
  const dated = entries.map((entry) => ({ entry, at: Date.parse(entry.recordedAt) }));
  dated.sort(
    (a, b) => a.at - b.at || a.entry.sequence - b.entry.sequence || (a.entry.id < b.entry.id ? -1 : 1),
  );
  return new Map(dated.map(({ entry }, rank) => [entry.id, rank]));
}
