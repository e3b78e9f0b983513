import { expect, test } from 'vitest';
import { mayBeRate } from './mayBeRate.js';
import { DEFAULT_COUNT_RULES } from './rules.js';

const asked = (of: 'pulse' | 'breaths', n: number, windowSeconds: number) =>
  mayBeRate({ of, n, windowSeconds, clock: 'any', first: 1 }, DEFAULT_COUNT_RULES);

// Bedside handbook 1.7 and 2.4, the limits at which one looks at the person first; the question itself: common practice, no source.
test('a number that is usual as a rate and very fast as a count is asked about', () => {
  expect(asked('pulse', 76, 15)).toBe(true);
  expect(asked('pulse', 76, 30)).toBe(true);
  expect(asked('breaths', 16, 15)).toBe(true);
});

test('a count that gives a usual rate, a whole minute, and what is very fast as a rate too are not', () => {
  expect(asked('pulse', 19, 15)).toBe(false);
  expect(asked('pulse', 76, 60)).toBe(false);
  expect(asked('pulse', 36, 15)).toBe(false);
  expect(asked('breaths', 8, 30)).toBe(false);
});
