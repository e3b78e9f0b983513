import { expect, test } from 'vitest';
import { straightLine } from './straightLine.js';

test('a line through its points, and the one nearest to three that lie on none', () => {
  expect(straightLine([1, 2, 4], [3, 5, 9])).toEqual({ slope: 2, intercept: 1 });
  // By hand: means 1 and 5/3; sum of products (-1)(-5/3) + 0 + (1)(1/3) = 2, sum of squares 2.
  const found = straightLine([0, 1, 2], [0, 3, 2]);
  expect(found?.slope).toBeCloseTo(1, 12);
  expect(found?.intercept).toBeCloseTo(2 / 3, 12);
});

test('none through points of one place, or through no point', () => {
  expect(straightLine([2, 2], [1, 3])).toBeNull();
  expect(straightLine([], [])).toBeNull();
});
