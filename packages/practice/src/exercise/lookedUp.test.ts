import { expect, test } from 'vitest';
import { NOTHING_ENTERED } from './exercise.js';
import { wasLookedUp } from './lookedUp.js';

// Decision of this project: one number is an attempt, whichever it is; a blank is never a zero (docs/conventions.md).
test('an exercise with nothing written was looked up, and one number is an attempt, a zero too', () => {
  expect(wasLookedUp({ entered: NOTHING_ENTERED })).toBe(true);
  for (const key of Object.keys(NOTHING_ENTERED))
    expect(wasLookedUp({ entered: { ...NOTHING_ENTERED, [key]: 0 } })).toBe(false);
});
