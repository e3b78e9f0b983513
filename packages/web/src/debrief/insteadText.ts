import type { Conduct, Cost, DebriefRules } from '@evenfall/practice';
import type { Words } from '@evenfall/words';

/** What to do instead, with the margin and the waits of the protocol that the reading is judged by. */
export function insteadText(
  doInstead: Conduct['doInstead'] | Cost['doInstead'],
  { runRules: { inflation } }: DebriefRules,
  words: Words,
): string {
  const { marginMmHg, waitAfterEstimateSeconds, waitAfterReadingSeconds } = inflation;
  switch (doInstead) {
    case 'feel-and-add-thirty':
    case 'feel-first':
    case 'let-out-and-higher':
    case 'no-higher':
      return words.sentence(`debrief.do-${doInstead}`, { marginMmHg });
    case 'rest-the-arm':
    case 'empty-and-wait':
      return words.sentence(`debrief.do-${doInstead}`, {
        afterFeelingSeconds: waitAfterEstimateSeconds,
        afterReadingSeconds: waitAfterReadingSeconds,
      });
    default:
      return words.sentence(`debrief.do-${doInstead}`);
  }
}
