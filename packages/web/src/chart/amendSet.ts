import { type ChartRound, projectChart, type StoredEntry } from '@evenfall/record';
import type { AmendFields } from './amendForm.js';
import { contentOfEntry } from './contentOfEntry.js';

/** Whether the rest of a set goes with a value that is another person's, as it was answered. */
export const WITH_SET = ['all', 'alone'] as const;

/** The other values that stand in the round of a value: taken or typed with it, and so of the same person. */
export function besideInSet(entries: readonly StoredEntry[], value: StoredEntry): readonly StoredEntry[] {
  const holds = ({ values }: ChartRound) =>
    values.some(({ story }) => story.some(({ id }) => id === value.id));
  const round = projectChart(entries).rounds.find(holds);
  if (round === undefined) return [];
  return round.values
    .filter(({ story }) => !story.some(({ id }) => id === value.id))
    .flatMap(({ current }) => current.filter((entry) => contentOfEntry(entry) !== null));
}

/** Whether it must be said what becomes of them: the person was the wrong one, and more than this value stands. */
export function isSetAsked(
  { what, reason }: Pick<AmendFields, 'what' | 'reason'>,
  beside: readonly StoredEntry[],
): boolean {
  return what === 'in-error' && reason === 'wrong-person' && beside.length > 0;
}
