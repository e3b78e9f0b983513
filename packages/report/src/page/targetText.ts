import type { TargetBeside } from '@evenfall/clinical';
import type { Words } from '@evenfall/words';

/** What a guideline aims at under treatment, as a sentence; null where the rule set names nothing. */
export function targetText(target: TargetBeside | null, words: Words): string | null {
  if (target === null) return null;
  const each = target.targets.map((one) => words.sentence('series.targetUnder', one));
  return words.sentence('series.targetSays', {
    guideline: words.title('guideline', target.guideline),
    text: words.say.allOf(each),
    isMet: target.isMet,
  });
}
