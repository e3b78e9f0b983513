import { expect, test } from 'vitest';
import { GOOD_OBSERVER, PERFECT_OBSERVER } from '../observer/observer.js';
import { written } from './written.js';

const straight = PERFECT_OBSERVER.reader;

// Physiology handbook 6.3: viewed 20 degrees off its axis a gauge seems to show 2 mmHg more or less.
test('a needle looked at from beside is read two millimetres off, from either side; straight on it is read as it stands', () => {
  expect(written(121.3, straight, 1, null)).toBe(121.3);
  expect(written(121.3, { ...straight, offAxisDegrees: 20 }, 1, null)).toBeCloseTo(123.3, 9);
  expect(written(121.3, { ...straight, offAxisDegrees: -20 }, 1, null)).toBeCloseTo(119.3, 9);
  expect(written(121.3, { ...straight, offAxisDegrees: 10 }, 1, null)).toBeCloseTo(122.3, 9);
  expect(written(121.3, { ...GOOD_OBSERVER.reader, offAxisDegrees: 20 }, 1, null)).toBe(124);
  for (const { reader } of [GOOD_OBSERVER, PERFECT_OBSERVER]) expect(reader.offAxisDegrees).toBe(0);
});
