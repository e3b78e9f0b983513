import { expect, test } from 'vitest';
import { followsOn } from './followsOn.js';

// The limit is a decision of this project: two days without a reading at most. At it and on both sides.
test.each([
  [12, true],
  [13, true],
  [14, true],
  [15, true],
  [16, true],
  [17, true],
  [18, true],
  [19, false],
  [40, false],
  [9, false],
])('a stretch of days 10 to 15 and readings from day %i on: %s', (firstDay, goesOn) => {
  expect(followsOn({ firstDay: 10, lastDay: 15 }, firstDay)).toBe(goesOn);
});
