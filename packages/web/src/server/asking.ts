import type { Known } from '../store/known.js';
import type { Store } from '../store/store.js';

/** Makes an answer known, unless one to a later question after the same thing is known already. */
export type Tell = (answer: { readonly ok: boolean }, change: (known: Known) => Known) => void;

/** Of each thing asked after: how many questions went out, and the last of them that was answered with what is there. */
type Questions = { asked: number; answered: number };

const questions = new WeakMap<Store, Map<string, Questions>>();

/**
 * Begins a question. A page and what it sends ask after the same thing at once, and the server may answer in another
 * order: the older answer must not put back what was there before.
 *
 * @param what the thing asked after; questions after another thing count by themselves
 */
export function asking({ store }: { readonly store: Store }, what: string): Tell {
  const all = questions.get(store) ?? new Map<string, Questions>();
  questions.set(store, all);
  const those = all.get(what) ?? { asked: 0, answered: 0 };
  all.set(what, those);
  those.asked += 1;
  const mine = those.asked;
  return ({ ok }, change) => {
    if (mine < those.answered) return;
    if (ok) those.answered = mine;
    store.change((state) => ({ ...state, known: change(state.known) }));
  };
}
