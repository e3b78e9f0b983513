import fc from 'fast-check';
import { sampleStandardDeviation } from 'simple-statistics';
import { expect, test } from 'vitest';
import { sampleSd } from './sampleSd.js';

const values = fc.array(fc.double({ min: -1e4, max: 1e4, noNaN: true }), { minLength: 2, maxLength: 80 });

test('divides by n - 1, as a general-purpose library does', () => {
  fc.assert(
    fc.property(values, (list) => {
      expect(sampleSd(list)).toBeCloseTo(sampleStandardDeviation(list), 8);
    }),
  );
});

test('one value has no spread, which is null and not zero', () => {
  expect(sampleSd([])).toBeNull();
  expect(sampleSd([812])).toBeNull();
  expect(sampleSd([812, 812])).toBe(0);
});
