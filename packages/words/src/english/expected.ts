import type { RefusalCode } from '@evenfall/clinical';
import type { Figures } from '../figures.js';
import type { Say } from '../say.js';

type Expected = (f: Figures, say: Say, choices: readonly string[]) => string;

const oneOf: Expected = (_f, say, choices) => say.anyOf(choices);

/** What each rule of input would have taken, as a phrase that fits after "expected". */
export const expected = {
  // Counting and tapping.
  'an-object': () => 'an object with named fields',
  'known-field': (_f, say, choices) =>
    choices.length === 0 ? 'no such field' : `one of the fields ${say.anyOf(choices)}`,
  'a-number': () => 'a number such as 15 or 7.5, with a decimal point and nothing else',
  'a-whole-number': () => 'a whole number',
  'one-of': oneOf,
  'not-negative': (f, say) => `${say.short(f.value('minimum'))} or more`,
  'at-least-first-beat': (f, say) =>
    `at least ${say.short(f.value('minimum'))}, because the clock started on a beat that was called one`,
  'at-most-per-minute': (f, say) =>
    `at most ${say.short(f.value('ceilingPerMinute'))} a minute (this gives ${say.number(f.value('perMinute'))})`,
  'window-over-zero-at-most': (f, say) =>
    `seconds over 0 and at most ${say.short(f.value('longestWindowSeconds'))}`,
  'before-window-ends': (f, say) =>
    `a moment before the window of ${say.short(f.value('windowSeconds'))} s ended`,
  'a-list': () => 'a list of times in seconds',
  'at-least-one-time': () => 'at least one time, in seconds, one a line',
  'later-than-the-one-before': (f, say) =>
    `a time after the one before it (${say.short(f.value('beforeSeconds'), 3)})`,
  'nearer-to-zero-than': (f, say) => `a time nearer to zero than ${say.short(f.value('furthestSeconds'))} s`,
  // The command line.
  command: (_f, say, choices) => `a command: ${say.anyOf(choices)}`,
  'nearest-command': (_f, say, choices) => `a command (nearest: ${say.anyOf(choices)})`,
  'nearest-option': (_f, say, choices) => `an option that exists (nearest: ${say.anyOf(choices)})`,
  'a-value': () => 'a value after it',
  'no-value': () => 'no value; it is on when present',
  once: () => 'only once',
  'no-argument': () => 'nothing but options',
  'fewer-arguments': () => 'fewer arguments',
  'a-file': () => 'a file or folder, or - for standard input',
  'readable-file': () => 'a file or folder that exists and can be read',
  'files-in-folder': () => 'at least one file in the folder',
} as const satisfies Record<string, Expected>;

/** What to say for a rule that has no phrase of its own: true, if less exact. */
export const expectedByCode = {
  missing: (_f, say, choices) => (choices.length === 0 ? 'a value' : say.anyOf(choices)),
  'unknown-field': () => 'a field that exists',
  'unknown-id': (_f, say, choices) => (choices.length === 0 ? 'an id that exists' : say.anyOf(choices)),
  'unknown-option': () => 'an option that exists',
  repeated: () => 'only once',
  'not-a-number': () => 'a number',
  'not-whole': () => 'a whole number',
  'not-a-time': () => 'a time',
  'out-of-range': (f, say) => limits(f, say),
  'out-of-order': () => 'a value that follows the one before it',
  'not-below-systolic': () => 'a diastolic below the systolic',
  impossible: () => 'a value that can occur',
  contradicts: () => 'values that agree with each other',
  ambiguous: () => 'a value that can be read in one way only',
} as const satisfies Record<RefusalCode, Expected>;

function limits(f: Figures, say: Say): string {
  const least = f.has('minimum') ? [`at least ${say.short(f.value('minimum'))}`] : [];
  const most = f.has('maximum') ? [`at most ${say.short(f.value('maximum'))}`] : [];
  const both = [...least, ...most];
  return both.length === 0 ? 'a value within the limits' : say.allOf(both);
}
