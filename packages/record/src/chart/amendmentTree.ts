import type { StoredEntry } from '../entry/entry.js';
import { inOrder } from './inOrder.js';

/**
 * How a value stands: as signed, amended once over, contested (two amendments of one entry disagree about what it
 * is, or whether it stands at all; both are shown), or entered in error (still readable).
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
    const story = storyOf(original, replacedBy);
    const leaves = story.filter(({ id }) => !replacedBy.has(id));
    const current = leaves.filter((leaf) => leaf.kind !== 'entered-in-error');
    const isDisputed = leaves.some((leaf) => isDispute(leaf, replacedBy));
    return { original, current, story, standing: standingOf(original, current, isDisputed) };
  });
}

type ReplacedBy = ReadonlyMap<string, readonly StoredEntry[]>;

/** The original and what replaced it, in order of recording, none before what it amends. */
function storyOf(original: StoredEntry, replacedBy: ReplacedBy): StoredEntry[] {
  const story: StoredEntry[] = [];
  const next = [original];
  for (let entry = next.shift(); entry !== undefined; entry = next.shift()) {
    story.push(entry);
    next.push(...(replacedBy.get(entry.id) ?? []));
    next.sort(byRecording);
  }
  return story;
}

/** Whether an entry says "in error" of what somebody else amended instead, so that a value stands there too. */
function isDispute({ kind, amends }: StoredEntry, replacedBy: ReplacedBy): boolean {
  const beside = amends === null ? [] : (replacedBy.get(amends.entry) ?? []);
  return kind === 'entered-in-error' && beside.some((entry) => isStanding(entry, replacedBy));
}

/** Whether a value stands at the end of what an entry became. */
function isStanding(entry: StoredEntry, replacedBy: ReplacedBy): boolean {
  const next = replacedBy.get(entry.id) ?? [];
  if (next.length === 0) return entry.kind !== 'entered-in-error';
  return next.some((one) => isStanding(one, replacedBy));
}

function standingOf(original: StoredEntry, current: readonly StoredEntry[], isDisputed: boolean): Standing {
  if (current.length === 0) return 'entered-in-error';
  if (current.length > 1 || isDisputed) return 'contested';
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
  return (
    Date.parse(a.recordedAt) - Date.parse(b.recordedAt) || a.sequence - b.sequence || (a.id < b.id ? -1 : 1)
  );
}
