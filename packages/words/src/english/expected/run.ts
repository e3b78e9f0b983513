import type { Expectation } from './expectation.js';

/** Rules of a run of the cuff, of its moments and of the shorthand of a pressure. */
export const run = {
  moment: (_f, say, choices) => `the moment “${say.anyOf(choices)}”`,
  'moment-of-method': (_f, say, choices) => `a moment of this method: ${say.anyOf(choices)}`,
  'after-first-sound': () => 'a place after the first sound',
  'before-last-sound': () => 'a place before the last sound',
  'later-than-before': (f, say) =>
    `a time after the one before it (${say.short(f.value('beforeSeconds'), 3)} s)`,
  'not-above-moment-before': (f, say) =>
    `at most the pressure before it, of ${say.short(f.value('beforeMmHg'), 3)} mmHg`,
  'not-above-peak': (f, say) =>
    `at most the highest pressure of ${say.short(f.value('peakMmHg'), 3)} mmHg, at which the valve was opened`,
  'below-systolic': (f, say) => `less than the systolic of ${say.short(f.value('systolic'), 3)} mmHg`,
  'diastolic-below': () => 'a diastolic under the systolic',
  'same-as-moment': (f, say) =>
    `the same as the moment “pulse back” (${say.short(f.value('momentMmHg'), 3)} mmHg), or only one of the two`,
  'at-least': (f, say) => `${say.short(f.value('minimum'), 3)} or more`,
  'over-zero': () => 'more than 0',
  'over-zero-at-most': (f, say) => `more than 0 and at most ${say.short(f.value('maximum'), 3)}`,
  'one-reading': () => 'one reading as it was taken, not a mean of several',
  pressure: () => 'a pressure such as 148/92, 118/62/0 or 122/P',
  'numbers-in-mmhg': () =>
    'numbers in mmHg alone, such as 148/92, 118/62/0 or 122/P, and after them the pulse: 148/92 76',
  'second-number': (f, say) => {
    const systolic = say.short(f.value('systolic'), 3);
    return `a second number after ${systolic}, such as 148/92, or ${systolic}/P if it was only felt`;
  },
  'two-or-three-numbers': () => 'two numbers (148/92) or three (118/62/0)',
  'two-numbers-of-a-device': () => 'two numbers where a device showed them',
  'gap-limits': () => 'where sounds went and where they came back, such as 186-152',
  'gap-falling': () => 'the higher number first, such as 186-152',
  'gap-by-ear-only': () => 'a gap only beside a systolic and a diastolic that were heard',
  'gap-between-sounds': (f, say) =>
    `a gap between ${say.short(f.value('systolic'), 3)} and ${say.short(f.value('lowestMmHg'), 3)} mmHg`,
  'marker-of-each-time': () => 'for each moment with a time who marked it, and for none without',
  'cuff-of-scheme': () => 'a cuff of that scheme, or a letter (S, M, L, XL) where there is no scheme',
} as const satisfies Record<string, Expectation>;
