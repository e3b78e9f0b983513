import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lowest } from './lowest.js';

test('the lowest in their order; equal ones count each', () => {
  expect(lowest([112, 109, 111, 113, 109], 0, 5, 3)).toEqual([109, 109, 111]);
  expect(lowest([90, 112, 109, 80], 1, 3, 3)).toEqual([109, 112]);
  expect(lowest([90], 1, 1, 3)).toEqual([]);
});

test('they are the first of the stretch when it is sorted', () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 60, max: 80 })),
      fc.nat(20),
      fc.nat(20),
      fc.nat(5),
      (values, from, more, count) => {
        const to = Math.min(values.length, from + more);
        const sorted = values.slice(from, to).sort((a, b) => a - b);
        expect(lowest(values, from, to, count)).toEqual(sorted.slice(0, count));
      },
    ),
  );
});
