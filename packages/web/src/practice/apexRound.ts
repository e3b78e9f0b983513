import type { SignDraft } from '../round/draft.js';
import { READY } from '../round/measuring.js';
import type { PracticeDraft } from './keptPractice.js';

/** A count that was not begun. */
const NOT_COUNTED: SignDraft = { values: [], notDone: null, measuring: READY };

/** The exercise with its count at the apex where the bedside's screens look for the pulse. */
export function atApex(draft: PracticeDraft): PracticeDraft {
  const { apex } = draft.tappedFrom ?? {};
  const { apex: countedApex = null } = draft.countedFrom;
  return {
    ...draft,
    round: { ...draft.round, pulse: draft.apex ?? NOT_COUNTED },
    countedFrom: { ...draft.countedFrom, pulse: countedApex },
    tappedFrom: apex === undefined ? {} : { pulse: apex },
  };
}

/** And what they made of that, back in its own place; of the rest of the round they change nothing. */
export function fromApex(was: PracticeDraft, now: PracticeDraft): PracticeDraft {
  return {
    ...now,
    round: was.round,
    apex: now.round.pulse,
    countedFrom: { ...was.countedFrom, apex: now.countedFrom.pulse },
    tappedFrom: {
      ...was.tappedFrom,
      ...(now.tappedFrom?.pulse === undefined ? {} : { apex: now.tappedFrom.pulse }),
    },
  };
}
