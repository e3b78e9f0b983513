import fc from 'fast-check';
import { median as medianOf } from 'simple-statistics';
import { expect, test } from 'vitest';
import { localIntervals } from './localInterval.js';

test('is the median of the five before and the five after, itself left out, at the ends of what there is', () => {
  const interval = fc.oneof(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 300, max: 2000 }));
  fc.assert(
    fc.property(fc.array(interval, { minLength: 2, maxLength: 40 }), (intervals) => {
      const plain = intervals.map((_, at) =>
        medianOf([...intervals.slice(Math.max(0, at - 5), at), ...intervals.slice(at + 1, at + 6)]),
      );
      expect(localIntervals(intervals)).toEqual(plain);
    }),
  );
});

test('an interval without neighbours has none', () => {
  expect(localIntervals([812])).toEqual([]);
  expect(localIntervals([])).toEqual([]);
});
