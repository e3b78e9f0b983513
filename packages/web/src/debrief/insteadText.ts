import type { Conduct, Cost, DebriefRules } from '@evenfall/practice';
import type { Aids } from '@evenfall/record';
import type { Words } from '@evenfall/words';

/**
 * What to do instead, with the margin and the waits of the protocol that the reading is judged by.
 * @param aids what helped the ear already: that is not advised once more
 */
export function insteadText(
  doInstead: Conduct['doInstead'] | Cost['doInstead'],
  { runRules: { inflation } }: DebriefRules,
  words: Words,
  aids: Pick<Aids, 'hasHearingAid' | 'isAmplified'>,
): string {
  const { marginMmHg, waitAfterEstimateSeconds, waitAfterReadingSeconds } = inflation;
  switch (doInstead) {
    case 'feel-and-add-thirty':
    case 'feel-first':
    case 'feel-and-listen-from-above':
    case 'let-out-and-higher':
    case 'no-higher':
      return words.sentence(`debrief.do-${doInstead}`, { marginMmHg });
    case 'rest-the-arm':
    case 'empty-and-wait':
      return words.sentence(`debrief.do-${doInstead}`, {
        afterFeelingSeconds: waitAfterEstimateSeconds,
        afterReadingSeconds: waitAfterReadingSeconds,
      });
    case 'amplify-or-feel':
      return words.sentence(`debrief.do-${amplify(aids)}`);
    default:
      return words.sentence(`debrief.do-${doInstead}`);
  }
}

/** What may still help an ear that did not hear the faint sounds. */
function amplify({ hasHearingAid, isAmplified }: Pick<Aids, 'hasHearingAid' | 'isAmplified'>) {
  if (hasHearingAid) return isAmplified ? 'feel-instead' : 'amplify-too';
  return isAmplified ? 'aid-too' : 'amplify-or-feel';
}
