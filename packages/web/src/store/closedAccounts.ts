import { readKept } from './kept.js';
import { SHELF_KEY, shelfKeyOf } from './store.js';

/** The part of `localStorage` that is needed to look through it and to take from it. */
export type EmptyableShelf = {
  readonly length: number;
  readonly key: (at: number) => string | null;
  readonly getItem: (key: string) => string | null;
  readonly setItem: (key: string, text: string) => void;
  readonly removeItem: (key: string) => void;
};

const OF_ACCOUNT = new RegExp(`^${SHELF_KEY}\\.([0-9a-f-]{36})(\\.unread)?$`);

/** The accounts of which this device keeps something, in order of their ids; none on a shelf that cannot be read. */
export function accountsKept(shelf: EmptyableShelf | null): readonly string[] {
  try {
    const keys = Array.from({ length: shelf?.length ?? 0 }, (_, at) => shelf?.key(at) ?? '');
    return [...new Set(keys.flatMap((key) => OF_ACCOUNT.exec(key)?.[1] ?? []))].sort();
  } catch {
    return [];
  }
}

/**
 * Takes from the device what closed accounts keep on it. Signed rounds that no server has taken stay: they are in no
 * chart yet, and an owner who opens the account again has them sent. What cannot be read is left alone, for the same
 * reason.
 *
 * Errors: none thrown; what the shelf refuses stays as it was.
 */
export function forgetClosed(shelf: EmptyableShelf | null, closed: readonly string[]): void {
  for (const account of closed) {
    try {
      const key = shelfKeyOf(account);
      const text = shelf?.getItem(key) ?? null;
      if (text === null) continue;
      const kept = readKept(text);
      if (kept === null) continue;
      if (kept.waiting.length === 0) shelf?.removeItem(key);
      else {
        const waitingOnly = JSON.stringify({ ...kept, drafts: {}, forms: {} });
        if (waitingOnly !== text) shelf?.setItem(key, waitingOnly);
      }
    } catch {
      // A shelf that refuses keeps what it has.
    }
  }
}
