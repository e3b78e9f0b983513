import type { RoundDraft } from './draft.js';

/** Whether a round is somebody else's: what one measured, another neither goes on with nor signs. */
export function isOfAnother({ by }: Pick<RoundDraft, 'by'>, agent: string | null): boolean {
  return by !== null && by !== agent;
}

/** The round is of whoever first says or measures something in it, and stays theirs. */
export function takenBy(draft: RoundDraft, agent: string | null): RoundDraft {
  return draft.by === null && agent !== null ? { ...draft, by: agent } : draft;
}

/**
 * Whoever measures now says that the round was theirs all along, and the name on the device another's. One that stood under the
 * name of a learner stays preliminary all the same.
 */
export function claimedBy(draft: RoundDraft, agent: string, learners: readonly string[] = []): RoundDraft {
  const isOfLearner = draft.isOfLearner || (draft.by !== null && learners.includes(draft.by));
  return { ...draft, by: agent, isOfLearner };
}
