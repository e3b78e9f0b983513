import type { Expectation } from './expectation.js';

/** Rules of the signs that are neither counted nor taken with a cuff. */
export const sign = {
  'nothing-on-air': () => 'nothing here on air, or that the person is on oxygen',
  'named-prescriber': () => 'the name of whoever decided on scale 2',
  'prescriber-of-scale-two': () => 'a prescriber only beside scale 2',
  'word-not-score': () => 'a word and no score with the verbal tool',
  'score-not-word': () => 'a score and no word with this tool',
  'even-number': () => 'an even number: 0, 2, 4, 6, 8 or 10',
  'within-limits': (f, say) =>
    `from ${say.short(f.value('minimum'), 3)} to ${say.short(f.value('maximum'), 3)}`,
} as const satisfies Record<string, Expectation>;
