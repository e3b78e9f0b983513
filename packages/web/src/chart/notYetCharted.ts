import type { StoredEntry } from '@evenfall/record';
import type { WaitingRound } from '../store/kept.js';

/**
 * The rounds of a person that wait on this device and that the record does not hold: the record may be read again
 * after the server took a round and before this device heard that it did.
 */
export function notYetCharted(
  waiting: readonly WaitingRound[],
  person: string,
  charted: readonly Pick<StoredEntry, 'id'>[],
): readonly WaitingRound[] {
  const held = new Set(charted.map(({ id }) => id));
  return waiting.filter(
    (one) => one.draft !== null && one.person === person && !one.entries.every(({ id }) => held.has(id)),
  );
}
