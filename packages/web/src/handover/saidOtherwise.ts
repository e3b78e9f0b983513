import type { StoredEntry } from '@evenfall/record';

/** What its source said before, each once: what it said again as it was is no change to show. */
export function saidOtherwise(story: readonly StoredEntry[], current: readonly StoredEntry[]): StoredEntry[] {
  const what = (entry: StoredEntry) =>
    entry.kind === 'reported' ? JSON.stringify([entry.content.value, Date.parse(entry.measuredAt.at)]) : '';
  const said = new Set(current.map(what));
  return story.filter((entry) => {
    if (entry.kind !== 'reported' || said.has(what(entry))) return false;
    said.add(what(entry));
    return true;
  });
}
