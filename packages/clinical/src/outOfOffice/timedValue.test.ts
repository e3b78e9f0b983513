import { expect, test } from 'vitest';
import { coveredHours, longestGap, withoutGaps } from './timedValue.js';

const at = (...hours: number[]) => ({ hours, values: hours.map(() => 120) });

test('a series is cut where neighbours lie further apart than the longest step, and not at it', () => {
  expect(withoutGaps(at(0, 1, 3, 5.01, 6), 2).starts).toEqual([0, 3]);
  expect(withoutGaps(at(), 2).starts).toEqual([]);
  expect(withoutGaps(at(4), 2).starts).toEqual([0]);
});

test('the longest time between neighbours, and from the first to the last', () => {
  expect(longestGap([0, 1, 4, 5])).toBe(3);
  // Three hours that begin at any minute of the day, hours being minutes over 60.
  for (let minute = 0; minute < 1440; minute++) {
    expect(longestGap([minute / 60, (minute + 180) / 60])).toBe(3);
    expect(withoutGaps({ hours: [minute / 60, (minute + 120) / 60], values: [1, 2] }, 2).starts).toEqual([0]);
  }
  expect(longestGap([7])).toBeNull();
  expect(longestGap([7, 7])).toBe(0);
  expect(coveredHours([1, 2, 9.5])).toBe(8.5);
  expect(coveredHours([])).toBe(0);
});
