import { expect, test } from 'vitest';
import { autocovariances } from './autocovariances.js';

test('products over the number of pairs, about the common mean', () => {
  // By hand: mean 2.5, distances -1.5 -0.5 0.5 1.5. Lag 0: 5 / 4. Lag 1: (0.75 - 0.25 + 0.75) / 3.
  const [variance, neighbours] = autocovariances([1, 2, 3, 4], 1);
  expect(variance).toBeCloseTo(1.25, 12);
  expect(neighbours).toBeCloseTo(1.25 / 3, 12);
});

test('a gap is no pair and no value', () => {
  // Mean 2, distances -1, 1, gap, -1, 1: two pairs of neighbours, both -1; no pair three apart but one, product 1.
  const [variance, neighbours, , three] = autocovariances([1, 3, null, 1, 3], 3);
  expect(variance).toBe(1);
  expect(neighbours).toBe(-1);
  expect(three).toBe(1);
});

test('null where there is no pair', () => {
  expect(autocovariances([], 1)).toEqual([null, null]);
  expect(autocovariances([812], 1)).toEqual([0, null]);
});
