import { expect, test } from 'vitest';
import { type Comparison, passes, settled } from './threshold.js';

test.each<[Comparison, boolean, boolean, boolean]>([
  ['<', true, false, false],
  ['<=', true, true, false],
  ['>', false, false, true],
  ['>=', false, true, true],
])('%s a limit of 100: 99.9, 100 and 100.1', (comparison, below, at, above) => {
  expect([99.9, 100, 100.1].map((value) => passes(value, comparison, 100))).toEqual([below, at, above]);
});

test('a mean of 139.6 is below 140', () => {
  // Bedside handbook 0.2: the unrounded mean meets the limit.
  expect(passes(139.6, '>=', 140)).toBe(false);
});

test('the last digits of a division decide nothing', () => {
  expect(0.1 + 0.2 > 0.3).toBe(true);
  expect(passes(settled(0.1 + 0.2), '>', 0.3)).toBe(false);
  expect(passes(settled(0.300000001), '>', 0.3)).toBe(true);
});
