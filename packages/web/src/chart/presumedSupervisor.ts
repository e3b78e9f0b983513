import type { StoredEntry } from '@evenfall/record';

/**
 * Whom a countersigning opens with: whoever is measuring, where they can be asked to sign for it and nothing says that they
 * are learning. Null where somebody is to be chosen.
 *
 * @param supervisors whoever may be chosen, by id
 * @param learners who said on this device that they are learning, and whom the place knows as such
 * @param entries of the person: whose newest signing there is a learner's is one
 */
export function presumedSupervisor(
  measuring: string | null,
  supervisors: readonly string[],
  learners: readonly string[],
  entries: readonly StoredEntry[],
): string | null {
  if (measuring === null || !supervisors.includes(measuring) || learners.includes(measuring)) return null;
  const newest = entries
    .flatMap((entry) =>
      entry.agent === measuring &&
      entry.amends === null &&
      (entry.kind === 'round' || entry.kind === 'series')
        ? [entry]
        : [],
    )
    .toSorted((a, b) => Date.parse(a.recordedAt) - Date.parse(b.recordedAt))
    .at(-1);
  return newest?.content.status === 'preliminary' ? null : measuring;
}
