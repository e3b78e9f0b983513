import { IN_CARE, type InBook } from '../app/book.js';
import type { App } from '../app/context.js';
import { withoutFormsOf } from '../app/forms.js';
import { begunRound } from './draft.js';

/** Begins a round of a person, unless one is under way on this device. */
export function beginRound({ store, ids, clock }: App, person: string, inBook: InBook = IN_CARE): void {
  store.change((state) => {
    if (state.kept.drafts[person] !== undefined) return state;
    const draft = begunRound(person, { round: ids(), signing: ids(), begunAt: clock.stamp() }, inBook);
    return { ...state, kept: { ...state.kept, drafts: { ...state.kept.drafts, [person]: draft } } };
  });
}

/** Gives up a round that was not signed. */
export function discardRound({ store }: Pick<App, 'store'>, person: string): void {
  store.change((state) => {
    const { [person]: discarded, ...drafts } = state.kept.drafts;
    if (discarded === undefined) return state;
    return { ...state, kept: { ...withoutFormsOf(state.kept, discarded.round), drafts } };
  });
}
