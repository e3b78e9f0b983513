import type { Expectation } from './expectation.js';

/** Rules of scores and of the standing test. */
export const score = {
  'score-from-age': (f, say) => `a person of ${say.short(f.value('fromYears'))} years or more for this score`,
  'score-not-in-pregnancy': () => 'a person who is not pregnant: this score is not made for pregnancy',
  'score-not-in-spinal-injury': () => 'a person without a spinal injury: this score is not made for one',
  'numbers-at-rest': () => 'the numbers at rest, lying or sitting, such as 148/84x68',
  'a-reading-on-the-feet': () => 'at least one reading on the feet, such as 112/70x76',
  'one-at-rest': () => 'one reading at rest: lying or sitting',
  'later-minutes': (f, say) => `a later time than ${say.short(f.value('beforeMinutes'))} min`,
  'pressure-and-pulse': () => 'a pressure, then x and the pulse: 148/84x68, 122/Px80, or 148/84 alone',
  'pulse-not-readings': () => 'a pulse after the x; the mean of some readings is not taken here',
  'minutes-of-a-reading': (_f, say, choices) =>
    `minutes at which there is a reading, joined by commas: ${say.allOf(choices)}`,
} as const satisfies Record<string, Expectation>;
