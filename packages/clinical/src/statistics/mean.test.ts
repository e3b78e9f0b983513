import fc from 'fast-check';
import * as simple from 'simple-statistics';
import { expect, test } from 'vitest';
import { mean } from './mean.js';

test('the mean of nothing is null, not zero', () => {
  expect(mean([])).toBeNull();
});

test('a long sum does not lose its last digits', () => {
  // The mean of a value with itself is the value, which plain summing of 0.1 a thousand times misses.
  expect(mean(new Array(1000).fill(0.1))).toBe(0.1);
  expect(mean([1, 2, 3, 4])).toBe(2.5);
});

test('a stretch of a list: its end is not of it; one without a value has none', () => {
  expect(mean([9, 1, 2, 3, 9], 1, 4)).toBe(2);
  expect(mean([1, 2], 1, 1)).toBeNull();
  expect(mean([1, 2], 1, 0)).toBeNull();
});

test('is what a general-purpose library gives', () => {
  const values = fc.array(fc.double({ min: -1e4, max: 1e4, noNaN: true }), { minLength: 1, maxLength: 80 });
  fc.assert(
    fc.property(values, (list) => {
      expect(mean(list)).toBeCloseTo(simple.mean(list), 9);
    }),
  );
});
