import type { RoundDraft } from '../round/draft.js';
import { type Kept, readKept } from './kept.js';
import { SHELF_KEY, type Shelf, type Store } from './store.js';

/** What was kept before anybody signed in on a device, and what an account keeps on it. */
type Both = { readonly before: Kept; readonly own: Kept };

/**
 * Gives whoever signs in what is theirs of what the device kept before: the rounds signed in their name or
 * begun by them, and, where they were who measured last, the forms begun. What is of somebody else stays; what the account has
 * already does too.
 */
export function takenOn({ before, own }: Both, agent: string): Both {
  const isMine = ({ entries }: Kept['waiting'][number]) => entries.every((entry) => entry.agent === agent);
  const has = new Set(own.waiting.map(({ round }) => round));
  const waiting = before.waiting.filter(isMine);
  const begun = before.agent === agent;
  const isMyDraft = ({ by }: RoundDraft) => (by === null ? begun : by === agent);
  const mine = Object.fromEntries(Object.entries(before.drafts).filter(([, draft]) => isMyDraft(draft)));
  const drafts = without(mine, own.drafts);
  const forms = begun ? without(before.forms, own.forms) : {};
  if (waiting.length + Object.keys(drafts).length + Object.keys(forms).length === 0) return { before, own };
  return {
    own: {
      ...own,
      // What was begun has its numbers from there: the next is after them.
      sequence: Math.max(own.sequence, before.sequence),
      waiting: [...waiting.filter(({ round }) => !has.has(round)), ...own.waiting],
      drafts: { ...own.drafts, ...drafts },
      forms: { ...own.forms, ...forms },
    },
    before: {
      ...before,
      waiting: before.waiting.filter((one) => !isMine(one)),
      drafts: without(before.drafts, drafts),
      forms: without(before.forms, forms),
    },
  };
}

/**
 * The same on the shelf: first in the account's store, then gone from where it was, so that a page closed in between loses
 * nothing and sends nothing but the same again.
 *
 * Errors: none thrown; where the shelf refuses, all stays where it was.
 */
export function takeOn(shelf: Shelf | null, store: Store, agent: string): void {
  try {
    const before = readKept(shelf?.getItem(SHELF_KEY) ?? null);
    if (shelf === null || before === null) return;
    const after = takenOn({ before, own: store.get().kept }, agent);
    if (after.before === before) return;
    store.change((state) => ({ ...state, kept: takenOn({ before, own: state.kept }, agent).own }));
    if (store.get().isKeeping) shelf.setItem(SHELF_KEY, JSON.stringify(after.before));
  } catch {
    // A device that keeps nothing kept nothing before either.
  }
}

function without<T>(
  all: Readonly<Record<string, T>>,
  gone: Readonly<Record<string, unknown>>,
): Record<string, T> {
  return Object.fromEntries(Object.entries(all).filter(([key]) => gone[key] === undefined));
}
