import type { Known } from '../store/known.js';
import type { Store } from '../store/store.js';

/** An answer as far as it matters here. */
type Answered = { readonly ok: boolean; readonly status: number };

/** Makes an answer known, unless what is there was said by one to a later question already; whether it did. */
export type Tell = (answer: Answered, change: (known: Known) => Known) => boolean;

/** Of each thing asked after: how many questions went out, and up to which of them answers are past. */
type Questions = { asked: number; past: number };

const questions = new WeakMap<Store, Map<string, Questions>>();

function allOf(store: Store): Map<string, Questions> {
  const all = questions.get(store) ?? new Map<string, Questions>();
  questions.set(store, all);
  return all;
}

/**
 * Begins a question. A page and what it sends ask after the same thing at once, and the server may answer in another
 * order: the older answer must not put back what was there before.
 *
 * @param what the thing asked after; questions after another thing count by themselves
 * @param isAfterChange whether what is asked after was changed just now: whatever comes of this question, no answer to an
 * earlier one is of what is there
 */
export function asking({ store }: { readonly store: Store }, what: string, isAfterChange = false): Tell {
  const all = allOf(store);
  const those = all.get(what) ?? { asked: 0, past: 0 };
  all.set(what, those);
  those.asked += 1;
  const mine = those.asked;
  if (isAfterChange) those.past = mine - 1;
  return (answer, change) => {
    if (mine <= those.past) return false;
    if (saysWhatIsThere(answer)) those.past = mine - 1;
    store.change((state) => ({ ...state, known: change(state.known) }));
    return true;
  };
}

/** No answer that is still on its way counts any more: what it is of was given up here. */
export function outdate({ store }: { readonly store: Store }, isGone: (what: string) => boolean): void {
  for (const [what, those] of allOf(store)) if (isGone(what)) those.past = those.asked;
}

/** That nothing is there is an answer too (404, or an id that can be nobody's); no network and a fault are none. */
function saysWhatIsThere({ ok, status }: Answered): boolean {
  return ok || status === 404 || status === 422;
}
