import { freshKept, type Kept, readKept } from './kept.js';
import { type Known, NOTHING_KNOWN } from './known.js';
import { mergeKept } from './mergeKept.js';

/** All that the page shows: what this device keeps, and what the server said. */
export type State = {
  readonly kept: Kept;
  readonly known: Known;
  /** Whether this browser keeps anything at all between visits. */
  readonly isKeeping: boolean;
};

export type Store = {
  readonly get: () => State;
  readonly change: (change: (state: State) => State) => void;
  readonly subscribe: (onChange: () => void) => () => void;
  /** Reads what another tab of this device wrote. */
  readonly reread: () => void;
};

/** The part of `localStorage` that the store needs. */
export type Shelf = {
  readonly getItem: (key: string) => string | null;
  readonly setItem: (key: string, text: string) => void;
};

export const SHELF_KEY = 'evenfall';

/** Where the drafts and waiting rounds of one account are kept on a device that several sign in on. */
export function shelfKeyOf(account: string | null): string {
  return account === null ? SHELF_KEY : `${SHELF_KEY}.${account}`;
}

/**
 * The one store. Every change starts from what is on the shelf (another tab may have written) and is on the
 * shelf before anybody is told of it, so that a reload finds it.
 *
 * @param key where on the shelf: what one account keeps, another never sees
 *
 * Errors: none thrown. A shelf that refuses leaves `isKeeping` false; what cannot be read is put aside, unread,
 * under a key of its own, never overwritten. While a full shelf cannot take it aside it stays where it is, and this
 * page keeps nothing there.
 */
export function createStore(
  shelf: Shelf | null,
  device: () => string,
  known: Known = NOTHING_KNOWN,
  key: string = SHELF_KEY,
): Store {
  const listeners = new Set<() => void>();
  let text: string | null = null;
  /** Whether the shelf has something that is neither read nor put aside. */
  let isBarred = false;
  let state: State = { kept: freshKept(device()), known, isKeeping: true };

  function fromShelf(): Kept | null {
    try {
      const found = shelf?.getItem(key) ?? null;
      if (found === text) return state.kept;
      const kept = readKept(found, key !== SHELF_KEY);
      isBarred = kept === null && found !== null && !(shelf !== null && putAside(shelf, key, found));
      if (kept !== null) text = found;
      return kept;
    } catch {
      return null;
    }
  }

  function toShelf(kept: Kept): boolean {
    try {
      const written = JSON.stringify(kept);
      if (shelf === null || isBarred) return false;
      shelf.setItem(key, written);
      text = written;
      return true;
    } catch {
      return false;
    }
  }

  function become(next: State): void {
    state = next;
    for (const listener of listeners) listener();
  }

  /** What is kept now: the shelf's, or, while the shelf refuses what this page has, that and this together. */
  function now(): Kept {
    const was = state.kept;
    const found = fromShelf();
    if (found === null || found === was) return was;
    return state.isKeeping ? found : mergeKept(found, was);
  }

  const first = fromShelf() ?? state.kept;
  state = { ...state, kept: first, isKeeping: toShelf(first) };

  return {
    get: () => state,
    subscribe(onChange) {
      listeners.add(onChange);
      return () => listeners.delete(onChange);
    },
    reread() {
      const kept = now();
      if (kept !== state.kept) become({ ...state, kept });
    },
    change(change) {
      const kept = now();
      const next = change({ ...state, kept });
      if (next.kept === kept && next.known === state.known && kept === state.kept) return;
      const isKeeping = next.kept === kept ? state.isKeeping : toShelf(next.kept);
      become({ ...next, isKeeping });
    },
  };
}

/** How much that cannot be read is kept aside at most, each in a place of its own. Source: decision of this project. */
const MOST_ASIDE = 20;

/** Puts aside what cannot be read, beside what was put aside before; false where the shelf does not take it. */
function putAside(shelf: Shelf, key: string, found: string): boolean {
  try {
    for (let at = 1; at <= MOST_ASIDE; at += 1) {
      const place = at === 1 ? `${key}.unread` : `${key}.unread.${at}`;
      const there = shelf.getItem(place);
      if (there === null) shelf.setItem(place, found);
      if (there === null || there === found) return true;
    }
    return false;
  } catch {
    return false;
  }
}
