import fc from 'fast-check';
import { expect, test } from 'vitest';
import { roundTo } from '../contract/rounding.js';
import { isReachable } from './reachable.js';

test('C007: 73 a minute cannot come from 15 s', () => {
  // Bedside handbook 8, C007 (derived, 1.3): not a multiple of 4.
  expect(isReachable(73, 15)).toBe(false);
  expect(isReachable(72, 15)).toBe(true);
});

test.each([
  // Bedside handbook 1.3 (derived): multiples of 6, 4, 2 and 1.
  [10, 6],
  [15, 4],
  [30, 2],
  [60, 1],
])('whole rates reachable in %d s are the multiples of %d', (windowSeconds, step) => {
  for (let rate = 0; rate <= 200; rate += 1) expect(isReachable(rate, windowSeconds)).toBe(rate % step === 0);
});

test('a rate between whole numbers is reachable as it is and as it is shown', () => {
  expect(isReachable((60 * 55) / 45, 45)).toBe(true);
  expect(isReachable(73, 45)).toBe(true);
  expect(isReachable(74, 45)).toBe(false);
  expect(isReachable(73.4, 45)).toBe(false);
  expect(isReachable(-4, 15)).toBe(false);
});

test('whatever was counted can be charted', () => {
  fc.assert(
    fc.property(fc.nat(600), fc.integer({ min: 1, max: 300 }), (n, windowSeconds) => {
      expect(isReachable((60 * n) / windowSeconds, windowSeconds)).toBe(true);
      expect(isReachable(roundTo((60 * n) / windowSeconds, 0), windowSeconds)).toBe(true);
    }),
  );
});
