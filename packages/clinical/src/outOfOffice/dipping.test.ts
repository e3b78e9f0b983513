import { expect, test } from 'vitest';
import { dipClass, dipPercent } from './dipping.js';

// A5 of the out-of-office handbook 19: the limits of the classes, from both sides.
test.each([
  [140, 126, 10, 'dipper'],
  [140, 126.1, 9.9286, 'non-dipper'],
  [140, 112, 20, 'extreme'],
  [140, 111.9, 20.0714, 'extreme'],
  [140, 112.1, 19.9286, 'dipper'],
  [150, 120, 20, 'extreme'],
  [135, 121.5, 10, 'dipper'],
  [140, 140, 0, 'non-dipper'],
  [140, 140.1, -0.0714, 'reverse'],
] as const)('%d by day and %d by night fall by %d %%: %s', (day, night, percent, name) => {
  expect(dipPercent(day, night)).toBeCloseTo(percent, 4);
  expect(dipClass(day, night)).toBe(name);
});

test('without one of the means there is no fall', () => {
  expect(dipPercent(null, 120)).toBeNull();
  expect(dipPercent(130, null)).toBeNull();
});
