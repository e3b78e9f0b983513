import { expect, test } from 'vitest';
import { marksBeside } from './marksBeside.js';
import { readingAt } from './testing.js';

const NIGHT = { by: 'asleep-range', asleep: { from: 23 * 60, to: 7 * 60 } } as const;
const marked = (clock: string, asleep: boolean | null) => ({
  ...readingAt(1, 0, clock, '120/80 70'),
  asleep,
});

// A start is included, an end is not (out-of-office handbook 7).
test.each([
  ['22:59', true, 1],
  ['23:00', true, 0],
  ['06:59', true, 0],
  ['07:00', true, 1],
  ['07:00', false, 0],
  ['03:00', false, 1],
] as const)(
  'asleep 23:00 to 07:00 was typed; a reading of %s marked %s differs: %i',
  (clock, asleep, differ) => {
    expect(marksBeside([marked(clock, asleep)], NIGHT)).toEqual({ marked: 1, differ });
  },
);

test('marks that are used themselves, and readings without one, have nothing beside them', () => {
  expect(marksBeside([marked('03:00', true)], { by: 'asleep-marks' })).toBeNull();
  expect(marksBeside([marked('03:00', null)], NIGHT)).toBeNull();
});
