import { expect, test } from 'vitest';
import { isCoarserThanThumb } from './clocksWithin.js';

// Physiology handbook 11: a reaction of 0.20 s scatters by 0.05 s.
test('clocks are coarser than a thumb from more than 50 ms on', () => {
  expect([0, 49.9, 50].map(isCoarserThanThumb)).toEqual([false, false, false]);
  expect(isCoarserThanThumb(50.1)).toBe(true);
});
