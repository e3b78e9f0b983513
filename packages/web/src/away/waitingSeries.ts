import type { StoredEntry } from '@evenfall/record';
import type { WaitingRound } from '../store/kept.js';

type StoredSeries = Extract<StoredEntry, { readonly kind: 'series' }>;

/** The series of a person that wait on this device, as they will stand; those that the record holds by now are not among them. */
export function waitingSeries(
  waiting: readonly WaitingRound[],
  person: string,
  charted: readonly Pick<StoredEntry, 'id'>[],
): StoredSeries[] {
  const held = new Set(charted.map(({ id }) => id));
  return waiting
    .filter((one) => one.person === person && one.draft === null)
    .flatMap(({ entries }) => entries as readonly StoredEntry[])
    .filter((entry): entry is StoredSeries => entry.kind === 'series' && !held.has(entry.id))
    .map((entry) => ({ ...entry, recordedAt: entry.writtenAt }));
}
