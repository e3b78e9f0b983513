import { readKept } from './kept.js';
import { SHELF_KEY, shelfKeyOf } from './store.js';

/** The part of `localStorage` that is needed to look through it. */
export type WholeShelf = {
  readonly length: number;
  readonly key: (at: number) => string | null;
  readonly getItem: (key: string) => string | null;
};

/** Signed rounds of somebody that wait on this device and that whoever is signed in cannot send. */
export type Elsewhere = { readonly agent: string; readonly rounds: number };

const OF_ACCOUNT = new RegExp(`^${SHELF_KEY}(\\.[0-9a-f-]{36})?$`);

/**
 * What waits in the stores of others on this device: of those who signed out, whose account was closed, or who signed
 * before there were accounts. How many rounds and whose, and nothing of what is in them.
 *
 * Errors: none thrown; a shelf that cannot be read has nothing.
 */
export function waitingElsewhere(shelf: WholeShelf | null, account: string): readonly Elsewhere[] {
  try {
    const keys = Array.from({ length: shelf?.length ?? 0 }, (_, at) => shelf?.key(at) ?? '');
    const counts = new Map<string, number>();
    for (const key of keys.filter((one) => OF_ACCOUNT.test(one) && one !== shelfKeyOf(account)))
      for (const { entries } of readKept(shelf?.getItem(key) ?? null)?.waiting ?? []) {
        const agent = entries[0]?.agent ?? '';
        counts.set(agent, (counts.get(agent) ?? 0) + 1);
      }
    return [...counts].map(([agent, rounds]) => ({ agent, rounds }));
  } catch {
    return [];
  }
}
