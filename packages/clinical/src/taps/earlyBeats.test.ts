import { expect, test } from 'vitest';
import { withoutEarlyBeats } from './earlyBeats.js';
import { localRatios } from './localInterval.js';

/** Steady intervals of 800 ms, but for these. */
function series(length: number, others: Record<number, number | null>): (number | null)[] {
  return Array.from({ length }, (_, i) => (i in others ? (others[i] as number | null) : 800));
}

function rest(intervals: (number | null)[], sd = 0.02) {
  return withoutEarlyBeats(intervals, localRatios(intervals.filter((one) => one !== null)), sd);
}

test('an early beat and its pause are taken out', () => {
  expect(rest(series(20, { 7: 560, 8: 1040 }))).toEqual(series(20, { 7: null, 8: null }));
});

test.each([
  ['15 % early is early', { 7: 680, 8: 920 }, 0.02, true],
  ['less is not', { 7: 681, 8: 919 }, 0.02, false],
  ['nor under 3.5 SD', { 7: 560, 8: 1040 }, 0.1, false],
  ['nor without a pause', { 7: 560, 8: 700 }, 0.02, false],
  ['nor where the next tap was missed', { 7: 560, 8: null }, 0.02, false],
  ['nor at the end', { 19: 560 }, 0.02, false],
  ['three of twenty are occasional', { 2: 560, 8: 560, 14: 560 }, 0.02, true],
  ['four are not', { 2: 560, 6: 560, 10: 560, 14: 560 }, 0.02, false],
])('%s', (_, others, sd, isOccasional) => {
  expect(rest(series(20, others), sd) !== null).toBe(isOccasional);
});
