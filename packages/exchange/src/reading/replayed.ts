import type { StoredEntry } from '@evenfall/record';

/** One saying of a value under its name, in the order of its source. */
export type TimedSaying = {
  readonly at: string;
  readonly saidAtMs: number;
  readonly isCorrection: boolean;
  readonly isInError: boolean;
};

/**
 * At which instants a value stands once its source said all of this, one after the other: a correction of an instant at
 * which nothing stands has moved what stood at another.
 *
 * @returns null where nobody can tell: two sayings of one time, or several that a correction could have moved
 */
export function replayed(sayings: readonly TimedSaying[]): ReadonlySet<string> | null {
  const ordered = sayings.toSorted((a, b) => a.saidAtMs - b.saidAtMs);
  const standing = new Set<string>();
  for (const [k, { at, saidAtMs, isCorrection, isInError }] of ordered.entries()) {
    if (ordered[k + 1]?.saidAtMs === saidAtMs) return null;
    if (isInError) {
      standing.delete(at);
      continue;
    }
    if (isCorrection && !standing.has(at)) {
      if (standing.size > 1) return null;
      standing.clear();
    }
    standing.add(at);
  }
  return standing;
}

/**
 * What still stands of a name though its source moved it away: of entries of one name, in any order, the ids of those at an
 * instant at which nothing stands once all of it is said again in the order of its source. None where nobody can tell,
 * where a saying has no time, and where somebody here took one back.
 */
export function movedAway(entries: readonly StoredEntry[]): string[] {
  const replaced = new Set(entries.flatMap(({ amends }) => amends?.entry ?? []));
  const said: TimedSaying[] = [];
  for (const { kind, role, content, measuredAt } of entries) {
    if (kind === 'entered-in-error' && role !== 'importer') return [];
    if (kind !== 'reported') continue;
    if (content.saidAt === null) return [];
    said.push({
      at: measuredAt.at,
      saidAtMs: Date.parse(content.saidAt),
      isCorrection: content.status === 'amended' || content.status === 'corrected',
      // What is withdrawn has no status of its own.
      isInError: content.status === 'unknown',
    });
  }
  const standing = replayed(said);
  if (standing === null) return [];
  return entries
    .filter(
      ({ id, kind, measuredAt }) => kind === 'reported' && !replaced.has(id) && !standing.has(measuredAt.at),
    )
    .map(({ id }) => id);
}
