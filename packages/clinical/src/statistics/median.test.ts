import fc from 'fast-check';
import * as simple from 'simple-statistics';
import { expect, test } from 'vitest';
import { MAD_TO_SD, median, medianAbsoluteDeviation } from './median.js';
import { normalQuantile } from './normal.js';

// Whole numbers among others, so that ties come often.
const value = fc.oneof(fc.integer({ min: -5, max: 5 }), fc.double({ min: -1e4, max: 1e4, noNaN: true }));
const values = fc.array(value, { minLength: 1, maxLength: 200 });

test('is what a general-purpose library gives, ties and all', () => {
  fc.assert(
    fc.property(values, (list) => {
      expect(median(list)).toBeCloseTo(simple.median(list), 9);
      expect(medianAbsoluteDeviation(list)).toBeCloseTo(simple.medianAbsoluteDeviation(list), 9);
    }),
  );
});

test('leaves the values as they were', () => {
  const list = [3, 1, 2];
  median(list);
  medianAbsoluteDeviation(list);
  expect(list).toEqual([3, 1, 2]);
});

test('the median of nothing is null', () => {
  expect(median([])).toBeNull();
  expect(medianAbsoluteDeviation([])).toBeNull();
});

test('the factor to a standard deviation is that of the normal distribution, to the digits it is printed with', () => {
  expect(MAD_TO_SD).toBeCloseTo(1 / normalQuantile(0.75), 4);
});
