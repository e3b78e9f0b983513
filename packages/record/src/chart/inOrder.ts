import type { StoredEntry } from '../entry/entry.js';

/**
 * Entries in the order of the work: rounds by when they began; within a round each device's entries by its
 * sequence numbers, whatever its clock said; ties by id. The order of the input does not matter.
 */
export function inOrder<E extends StoredEntry>(entries: readonly E[]): E[] {
  const begun = new Map<string, number>();
  for (const entry of entries) {
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
