import { type Expectation, nearest, oneOf } from './expectation.js';

/** Rules of any object and number from outside, of counts and of taps. */
export const counting = {
  'an-object': () => 'an object with named fields',
  'known-field': (_f, say, choices) =>
    choices.length === 0 ? 'no such field' : `one of the fields ${say.anyOf(choices)}`,
  'a-number': () => 'a number in digits, with a decimal point where it needs one and nothing else',
  'a-whole-number': () => 'a whole number',
  'a-value': () => 'a value',
  'a-list': () => 'a list of values',
  'one-of': oneOf,
  once: () => 'only once',
  'not-negative': (f, say) => `${say.short(f.value('minimum'))} or more`,
  'at-least-first-beat': (f, say) =>
    `at least ${say.short(f.value('minimum'))}, because the clock started on a beat that was called one`,
  'at-most-per-minute': (f, say) =>
    `at most ${say.short(f.value('ceilingPerMinute'))} a minute (this gives ${say.beside(f.value('perMinute'), f.value('ceilingPerMinute'))})`,
  'reachable-in-window': (f, say) =>
    `a rate that ${say.short(f.value('windowSeconds'))} s can give, such as ${say.anyOf(nearest(f).map((rate) => say.number(rate)))}, or another window`,
  'rate-by-hand': (f, say) =>
    `a number over 0 and at most ${say.short(f.value('ceilingPerMinute'))} a minute (that none was counted is a count of 0)`,
  'window-over-zero-at-most': (f, say) =>
    `seconds over 0 and at most ${say.short(f.value('longestWindowSeconds'))}`,
  'window-at-least': (f, say) => `${say.short(f.value('shortestWindowSeconds'), 3)} s or more`,
  'before-window-ends': (f, say) =>
    `a moment before the window of ${say.short(f.value('windowSeconds'))} s ended`,
  'at-least-one-time': () => 'at least one time, in seconds, one a line',
  'later-than-the-one-before': (f, say) =>
    `a time after the one before it (${say.short(f.value('beforeSeconds'), 3)})`,
  'nearer-to-zero-than': (f, say) => `a time nearer to zero than ${say.short(f.value('furthestSeconds'))} s`,
} as const satisfies Record<string, Expectation>;
