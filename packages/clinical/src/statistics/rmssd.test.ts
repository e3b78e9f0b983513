import { expect, test } from 'vitest';
import { rmssd } from './rmssd.js';

test.each([
  // Bedside handbook 1.12, fixtures (derived).
  ['steady', [830, 840, 835, 825, 830, 840, 830, 835, 825, 830, 840, 835], 8.12],
  ['AF-like', [620, 910, 540, 780, 1020, 650, 870, 590, 960, 700, 820, 560], 283.87],
  ['breathing swing', [780, 800, 830, 860, 880, 870, 840, 810, 780, 770, 790, 820], 24.86],
])('%s', (_, intervals, expected) => {
  expect(rmssd(intervals)).toBeCloseTo(expected, 2);
});

test('looks only at neighbours that are both there', () => {
  // Differences 10 and 20; nothing across the gap. Root of (100 + 400) / 2.
  expect(rmssd([100, 110, null, 500, 520])).toBeCloseTo(Math.sqrt(250), 12);
  expect(rmssd([100, null, 110])).toBeNull();
  expect(rmssd([100])).toBeNull();
});
