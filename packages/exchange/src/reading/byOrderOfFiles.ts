import type { EntryFrame, StoredEntry } from '@evenfall/record';

/**
 * How many values of a file changed what is kept of their source though nothing tells which of the two was said later: of
 * such values the file that is brought last stands.
 *
 * @param entries what was kept before the file
 */
export function byOrderOfFiles(
  placed: readonly { readonly frame: EntryFrame }[],
  entries: readonly StoredEntry[],
): number {
  const before = new Map(entries.map((entry) => [entry.id, entry]));
  return placed.filter(({ frame: { kind, content, amends } }) => {
    const was = before.get(amends?.entry ?? '');
    if (was === undefined) return false;
    const isKeptTold = was.kind === 'reported' && was.content.saidAt !== null;
    return !isKeptTold || (kind === 'reported' && content.saidAt === null);
  }).length;
}
