import type { StoredEntry } from '../entry/entry.js';

/** The ids of entries that amend each other in a ring, or themselves. Each entry is looked at once. */
export function inRing(entries: readonly StoredEntry[]): ReadonlySet<string> {
  const amended = new Map(entries.map(({ id, amends }) => [id, amends?.entry]));
  const seen = new Set<string>();
  const ring = new Set<string>();
  for (const { id: start } of entries) {
    const path = new Map<string, number>();
    let at: string | undefined = start;
    while (at !== undefined && !seen.has(at)) {
      seen.add(at);
      path.set(at, path.size);
      at = amended.get(at);
    }
    const begun = at === undefined ? undefined : path.get(at);
    if (begun === undefined) continue;
    for (const [id, step] of path) if (step >= begun) ring.add(id);
  }
  return ring;
}
