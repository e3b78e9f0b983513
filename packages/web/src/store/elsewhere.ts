import { readKept } from './kept.js';
import { SHELF_KEY, shelfKeyOf } from './store.js';

/** The part of `localStorage` that is needed to look through it. */
export type WholeShelf = {
  readonly length: number;
  readonly key: (at: number) => string | null;
  readonly getItem: (key: string) => string | null;
};

/** Signed rounds of somebody that wait on this device and that whoever is signed in cannot send. */
export type Elsewhere = {
  readonly agent: string;
  readonly rounds: number;
  /** Their account is closed: nobody signs in to send them until an owner opens it again. */
  readonly isClosed: boolean;
};

const OF_ACCOUNT = new RegExp(`^${SHELF_KEY}(\\.[0-9a-f-]{36})?$`);

/**
 * What waits in the stores of others on this device: of those who signed out, whose account was closed, or who signed
 * before there were accounts. How many rounds and whose, and nothing of what is in them.
 *
 * @param account whoever is signed in; null for nobody
 * @param closed the accounts that are known to be closed
 *
 * Errors: none thrown; a shelf that cannot be read has nothing.
 */
export function waitingElsewhere(
  shelf: WholeShelf | null,
  account: string | null,
  closed: readonly string[] = [],
): readonly Elsewhere[] {
  try {
    const keys = Array.from({ length: shelf?.length ?? 0 }, (_, at) => shelf?.key(at) ?? '');
    const own = account === null ? null : shelfKeyOf(account);
    const closedKeys = new Set(closed.map(shelfKeyOf));
    const found: Elsewhere[] = [];
    for (const key of keys.filter((one) => OF_ACCOUNT.test(one) && one !== own)) {
      const isClosed = closedKeys.has(key);
      for (const { entries, person } of readKept(shelf?.getItem(key) ?? null)?.waiting ?? []) {
        // An exercise is in no chart and waits for nobody but whoever did it.
        if (person === null) continue;
        const agent = entries[0]?.agent ?? '';
        const at = found.findIndex((one) => one.agent === agent && one.isClosed === isClosed);
        const rounds = found[at]?.rounds ?? 0;
        found.splice(at < 0 ? found.length : at, 1, { agent, rounds: rounds + 1, isClosed });
      }
    }
    return found;
  } catch {
    return [];
  }
}
