import type { DecidedReading } from '@evenfall/record';
import type { Words } from '@evenfall/words';

/** That a hand took a reading out of the mean, and why: nobody may take it for one like the others. Nothing of any other reading. */
export function takenOutText(decided: DecidedReading | undefined, words: Words): string[] {
  if (decided?.decision !== 'out') return [];
  return [words.sentence('exchanged.takenOutByHand', { reason: decided.reason })];
}
