import type { StoredEntry } from '../entry/entry.js';

/**
 * Entries in the order of the work: rounds by when they began; within a round each device's entries by its
 * sequence numbers, whatever its clock said; ties by id. The order of the input does not matter. An amendment that
 * says another time moves its value and not the round: a round began when it was taken.
 */
export function inOrder<E extends StoredEntry>(entries: readonly E[]): E[] {
  const begun = new Map<string, number>();
  const firsts = entries.filter(({ amends }) => amends === null);
  const known = new Set(firsts.flatMap((entry) => [roundKey(entry), deviceKey(entry)]));
  const lone = entries.filter(
    (entry) => entry.amends !== null && !(known.has(roundKey(entry)) && known.has(deviceKey(entry))),
  );
  for (const entry of [...firsts, ...lone]) {
    for (const key of [roundKey(entry), deviceKey(entry)]) {
      begun.set(key, Math.min(begun.get(key) ?? Number.POSITIVE_INFINITY, Date.parse(entry.measuredAt.at)));
    }
  }
  const started = (key: string) => begun.get(key) ?? 0;
  return [...entries].sort(
    (a, b) =>
      started(roundKey(a)) - started(roundKey(b)) ||
      compareText(roundKey(a), roundKey(b)) ||
      started(deviceKey(a)) - started(deviceKey(b)) ||
      compareText(deviceKey(a), deviceKey(b)) ||
      a.sequence - b.sequence ||
      compareText(a.id, b.id),
  );
}

function roundKey(entry: StoredEntry): string {
  return entry.round ?? entry.id;
}

function deviceKey(entry: StoredEntry): string {
  return `${roundKey(entry)} ${entry.device}`;
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
