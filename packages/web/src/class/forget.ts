import { FORM_OF_CLASS, type InBook } from '../app/book.js';
import { withoutFormsOf } from '../app/forms.js';
import { bookOfWaiting } from '../round/waiting.js';
import type { Kept, WaitingRound } from '../store/kept.js';

/** Something of this device that was begun or waits: whose it is, and where it was entered. */
type Held = InBook & { readonly person: string | null; readonly round: string };

/** What this device keeps, without the rounds begun, signed and typed that are chosen. */
function without(kept: Kept, isGone: (held: Held) => boolean): Kept {
  const gone = [...Object.values(kept.drafts), ...kept.waiting.map(heldOf)].filter(isGone);
  if (gone.length === 0) return kept;
  return {
    ...gone.reduce((left, { round }) => withoutFormsOf(left, round), kept),
    drafts: Object.fromEntries(Object.entries(kept.drafts).filter(([, draft]) => !isGone(draft))),
    waiting: kept.waiting.filter((one) => !isGone(heldOf(one))),
  };
}

/** What closes an act-now stands in its round, and goes with it. */
function heldOf(one: WaitingRound): Held {
  const { round, person, entries } = one;
  return { ...bookOfWaiting(one), person, round: entries[0]?.round ?? round };
}

/** A class session was ended: nothing of it stays on this device, not even what the server never had. */
export function withoutSession(kept: Kept, session: string): Kept {
  return withoutFormsOf(
    without(kept, (held) => held.session === session),
    session,
  );
}

/** Somebody of a class was taken out. */
export function withoutClassPerson(kept: Kept, person: string): Kept {
  return without(kept, (held) => held.book === 'class' && held.person === person);
}

/** The class sessions of which this device keeps something. */
export function sessionsIn(kept: Kept): readonly string[] {
  const held = [...Object.values(kept.drafts), ...kept.waiting.map(heldOf)];
  const found = [
    ...held.flatMap(({ session }) => (session === null ? [] : [session])),
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
