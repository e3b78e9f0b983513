import { FORM_OF_CLASS } from '../app/book.js';
import { withoutFormsOf } from '../app/forms.js';
import type { RoundDraft } from '../round/draft.js';
import type { Kept } from '../store/kept.js';

/** What this device keeps, without the rounds begun, signed and typed that are chosen. */
function without(kept: Kept, isGone: (draft: RoundDraft) => boolean): Kept {
  const drafts = Object.values(kept.drafts);
  // What closes an act-now without an answer is of the charts alone, never of a class.
  const gone = [...drafts, ...waitingDrafts(kept)].filter(isGone);
  if (gone.length === 0) return kept;
  return {
    ...gone.reduce((left, { round }) => withoutFormsOf(left, round), kept),
    drafts: Object.fromEntries(Object.entries(kept.drafts).filter(([, draft]) => !isGone(draft))),
    waiting: kept.waiting.filter(({ draft }) => draft === null || !isGone(draft)),
  };
}

/** A class session was ended: nothing of it stays on this device, not even what the server never had. */
export function withoutSession(kept: Kept, session: string): Kept {
  return withoutFormsOf(
    without(kept, (draft) => draft.session === session),
    session,
  );
}

/** Somebody of a class was taken out. */
export function withoutClassPerson(kept: Kept, person: string): Kept {
  return without(kept, (draft) => draft.book === 'class' && draft.person === person);
}

/** The class sessions of which this device keeps something. */
export function sessionsIn(kept: Kept): readonly string[] {
  const drafts = [...Object.values(kept.drafts), ...waitingDrafts(kept)];
  const found = [
    ...drafts.flatMap(({ session }) => (session === null ? [] : [session])),
    ...Object.keys(kept.forms).flatMap((form) => FORM_OF_CLASS.exec(form)?.[1] ?? []),
  ];
  return [...new Set(found)];
}

/** Sessions that were ended elsewhere: what this device still has of them goes too. */
export function withoutEnded(kept: Kept, open: readonly string[]): Kept {
  return sessionsIn(kept)
    .filter((session) => !open.includes(session))
    .reduce(withoutSession, kept);
}

/** The drafts of the rounds that wait; a series, which is of no class, has none. */
function waitingDrafts({ waiting }: Kept): RoundDraft[] {
  return waiting.flatMap(({ draft }) => (draft === null ? [] : [draft]));
}
