/** What the bedside says of it; the rest is in `../review.ts` and comes later. */
export const review = {
  signAs: 'In the role of',
  asLearner: 'I am learning: keep it preliminary until it is countersigned',
  preliminary: 'A learner’s round is practice until somebody qualified has countersigned it.',
} as const;
