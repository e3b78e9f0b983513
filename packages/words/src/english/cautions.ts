/**
 * What must be said where a number could make somebody act. Each stands on a surface; the sentences of flags carry
 * their own advice.
 * Source, worded anew: bedside handbook 7.5; DESIGN section 2, principle 8.
 */
export const cautions = {
  /** At the foot of every page, and in `evenfall --help`. */
  aid: 'A charting and teaching aid for trained people. It does not diagnose, and it replaces neither your judgement nor your local protocol nor emergency procedure: somebody who looks ill comes before any number.',
  /** Beside an alert whose rule was read in no source; a reader at the bedside has only the local protocol to look it up in. */
  confirmLocally: 'Confirm with your local protocol.',
} as const;
