import { expect, test } from 'vitest';
import { handDegrees, tickEnds } from './dialGeometry.js';

// A second hand goes round once a minute: 6 degrees a second (arithmetic).
test.each([
  [0, false, 0],
  [15, false, 90],
  [59.5, false, 357],
  [60, false, 0],
  [75, false, 90],
  [14.9, true, 84],
])('after %d s (in steps: %s) the hand stands at %d degrees', (seconds, steps, degrees) => {
  expect(handDegrees(seconds, steps)).toBeCloseTo(degrees, 9);
});

test('marks stand where a watch has them', () => {
  expect(tickEnds(0, 80, 90)).toEqual({ x1: 100, y1: 20, x2: 100, y2: 10 });
  expect(tickEnds(15, 80, 90)).toEqual({ x1: 180, y1: 100, x2: 190, y2: 100 });
  expect(tickEnds(30, 80, 90)).toEqual({ x1: 100, y1: 180, x2: 100, y2: 190 });
});
