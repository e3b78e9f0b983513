import { expect, test } from 'vitest';
import { lyingDue, lyingFlags, minutesLying } from './lyingBefore.js';

// Bedside handbook 3.14, baseline of the standing test: lie 5 min, then measure.
test.each([
  [0, 300],
  [200, 100],
  [299.5, 0.5],
  [300, 0],
  [4000, 0],
])('after %d s lying, %d s more', (seconds, more) => {
  expect(lyingDue(seconds)).toBe(more);
});

test.each([
  [0, true],
  [4.9, true],
  [5, false],
  [5.1, false],
  [600, false],
])('a reading after %d min lying is too early: %s', (minutes, isShort) => {
  const flags = [{ code: 'lying-too-short', figures: { minutes, neededMinutes: 5 } }];
  expect(lyingFlags(minutes)).toEqual(isShort ? flags : []);
});

test('that nobody said how long is nothing said of too short', () => {
  expect(lyingFlags(null)).toEqual([]);
  // From which a fall on standing is told: then that it is not known is said.
  expect(lyingFlags(null, true)).toEqual([{ code: 'lying-not-known', figures: { neededMinutes: 5 } }]);
  expect(lyingFlags(5, true)).toEqual([]);
});

test('a reading that is taken when the wait is over is not too early', () => {
  for (let seconds = 0; seconds < 400; seconds += 1) {
    const minutes = minutesLying(seconds + lyingDue(seconds));
    expect([seconds, lyingFlags(minutes)]).toEqual([seconds, []]);
  }
});

test('minutes lying are kept to a tenth, up to a day', () => {
  expect([0, 2, 3, 71, 86_400].map(minutesLying)).toEqual([0, 0, 0.1, 1.2, 1440]);
  expect([86_403, -4].map(minutesLying)).toEqual([null, null]);
});
