import type { Words } from '@evenfall/words';
import type { BegunAlarm } from '../round/begunAlarm.js';

/** What a round that nobody signed yet asks for, in one line: its readings, and the most urgent of why. */
export function begunText(
  { pressures, condition, others, isUnasked, recheck }: BegunAlarm,
  words: Words,
): string {
  const why = [
    recheck === null ? null : words.title('recheckReason', recheck),
    isUnasked ? words.sentence('people.begunUnasked') : null,
  ].filter((one) => one !== null);
  const numbers = words.say.allOf(pressures);
  // Severe, and nothing that is acted on at once once what it asks was answered.
  if (condition === null && !isUnasked && recheck === 'recheck-severe' && pressures.length > 0)
    return words.sentence('people.begunSevere', { numbers, text: why.join(', ') });
  const text = condition === null ? why.join(', ') : words.title('condition', condition);
  return words.sentence('people.begunAlarm', { numbers, text, others });
}
