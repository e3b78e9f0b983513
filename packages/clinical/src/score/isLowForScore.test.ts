import { expect, test } from 'vitest';
import { isLowForScore } from './isLowForScore.js';

// Royal College of Physicians 2017: a systolic of 101 to 110 is one point, 111 to 219 none.
test.each([
  [92, true],
  [110, true],
  [111, false],
  [220, false],
])('a systolic of %s is low for the score: %s', (systolic, isLow) => {
  expect(isLowForScore(systolic)).toBe(isLow);
});
