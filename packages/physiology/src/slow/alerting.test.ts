import { expect, test } from 'vitest';
import {
  firstReadingCourse,
  firstReadingLeft,
  sittingLeft,
  whiteCoatCourse,
  whiteCoatShare,
} from './alerting.js';

// Physiology handbook 15.
test.each([
  [5, 0.55],
  [10, 0.303],
  [16, 0.148],
])('after %d minutes %f of the rise of sitting down is left', (minutes, left) => {
  expect(sittingLeft(60 * minutes)).toBeCloseTo(left, 3);
});

test('readings two minutes apart fall by 5.0, 0.95 and 0.30', () => {
  const at = (minutes: number) => 5.5 * firstReadingLeft(60 * minutes) + 1.5 * sittingLeft(60 * minutes);
  expect(at(0) - at(2)).toBeCloseTo(5, 1);
  expect(at(2) - at(4)).toBeCloseTo(0.95, 1);
  expect(at(4) - at(6)).toBeCloseTo(0.3, 1);
});

test('nothing before it begins', () => {
  expect([-1e-9, 0, 30].map(firstReadingCourse)).toEqual([0, 1, 1]);
  expect(firstReadingCourse(93)).toBeCloseTo(Math.exp(-1), 6);
  expect([whiteCoatCourse(0), sittingLeft(-5), sittingLeft(0)]).toEqual([0, 1, 1]);
});

// Mancia 1985, 1987 by physiology handbook 18, rows 19 to 21.
test('a white coat is highest within four minutes and 15 to 28 percent of it is left at the tenth', () => {
  expect(whiteCoatCourse(120 - 1e-6)).toBeCloseTo(1, 6);
  expect([120, 150, 180].map(whiteCoatCourse)).toEqual([1, 1, 1]);
  expect(whiteCoatCourse(181)).toBeLessThan(1);
  expect(whiteCoatCourse(600)).toBeGreaterThan(0.15);
  expect(whiteCoatCourse(600)).toBeLessThan(0.28);
  expect(1 - whiteCoatShare('nurse')).toBeCloseTo(0.467, 2);
  expect([whiteCoatShare('doctor'), whiteCoatShare('known')]).toEqual([1, 0]);
});
