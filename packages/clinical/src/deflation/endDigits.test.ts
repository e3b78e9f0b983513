import { expect, test } from 'vitest';
import { endDigits } from './endDigits.js';

/** So many readings that end in 0, 2, 4, 6 and 8. */
const ending = (...counts: readonly number[]) =>
  counts.flatMap((count, at) => Array.from({ length: count }, (_, more) => 100 + 10 * (more % 8) + 2 * at));

test('C047: 50 endings 22, 8, 6, 6, 8 are a clear preference', () => {
  // Bedside handbook 8, C047 (derived): chi-square 18.4, 4 degrees of freedom, p < 0.01.
  const found = endDigits(ending(22, 8, 6, 6, 8));
  expect(found).toMatchObject({ n: 50, offScale: 0, degreesOfFreedom: 4, preference: 'clear' });
  expect(found.counts.map(({ digit, readings }) => [digit, readings])).toEqual([
    [0, 22],
    [2, 8],
    [4, 6],
    [6, 6],
    [8, 8],
  ]);
  expect(found.chiSquare).toBeCloseTo(18.4, 10);
  expect(found.p).toBeLessThan(0.01);
});

test('C048: 25 endings spread evenly are none', () => {
  // Bedside handbook 8, C048 (derived): chi-square 0.
  expect(endDigits(ending(5, 5, 5, 5, 5))).toMatchObject({ n: 25, chiSquare: 0, p: 1, preference: 'none' });
});

// Bedside handbook 3.9 (derived): over 9.49 p < 0.05, over 13.28 p < 0.01, with at least 25 readings.
test.each([
  [[9, 7, 3, 3, 3], 6.4, 'none'],
  [[11, 5, 3, 3, 3], 9.6, 'likely'],
  [[12, 4, 3, 3, 3], 12.4, 'likely'],
  [[13, 3, 3, 3, 3], 16, 'clear'],
  [[10, 6, 3, 3, 3], 7.6, 'none'],
] as const)('%j give chi-square %d: %s', (counts, chiSquare, preference) => {
  const found = endDigits(ending(...counts));
  expect(found.chiSquare).toBeCloseTo(chiSquare, 10);
  expect(found.preference).toBe(preference);
});

test('too few readings tell nothing, and a reading that no gauge shows is counted apart', () => {
  expect(endDigits(ending(24, 0, 0, 0, 0))).toMatchObject({
    n: 24,
    chiSquare: null,
    p: null,
    preference: null,
  });
  expect(endDigits(ending(25, 0, 0, 0, 0))).toMatchObject({ n: 25, preference: 'clear' });
  expect(endDigits([...ending(24, 0, 0, 0, 0), 121, 147.5])).toMatchObject({
    n: 24,
    offScale: 2,
    preference: null,
  });
  expect(endDigits([])).toMatchObject({ n: 0, offScale: 0, preference: null });
});
