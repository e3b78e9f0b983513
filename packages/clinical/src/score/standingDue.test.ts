import { expect, test } from 'vitest';
import { minutesUpright, standingDue } from './standingDue.js';

// Bedside handbook 3.14: stand, pressure and pulse at 1 and at 3 minutes.
test.each([
  [0, { minutes: 1, inSeconds: 60 }],
  [43, { minutes: 1, inSeconds: 17 }],
  [59, { minutes: 1, inSeconds: 1 }],
  [60, { minutes: 1, inSeconds: 0 }],
  [61, { minutes: 1, inSeconds: 0 }],
  // A time on the feet is taken to its whole minute, half up (standing test): at 90 s the first minute is over.
  [89.9, { minutes: 1, inSeconds: 0 }],
  [90, { minutes: 3, inSeconds: 90 }],
  [180, { minutes: 3, inSeconds: 0 }],
  [209, { minutes: 3, inSeconds: 0 }],
  [210, null],
])('%d s on the feet and nothing taken: %j', (seconds, due) => {
  expect(standingDue(seconds, [])).toEqual(due);
});

test('a reading that is in is not asked for again, and one at another minute does not stand for it', () => {
  expect(standingDue(70, [1])).toEqual({ minutes: 3, inSeconds: 110 });
  expect(standingDue(70, [0])).toEqual({ minutes: 3, inSeconds: 110 });
  expect(standingDue(150, [1, 2])).toEqual({ minutes: 3, inSeconds: 30 });
  expect(standingDue(185, [1.1, 2.4])).toEqual({ minutes: 3, inSeconds: 0 });
  expect(standingDue(185, [1.1, 2.5])).toBeNull();
});

test('the minutes of a reading are those of the clock, to a tenth, up to the longest that is kept', () => {
  expect([0, 2, 3, 71, 3600].map(minutesUpright)).toEqual([0, 0, 0.1, 1.2, 60]);
  expect([3602, 3603, -4].map(minutesUpright)).toEqual([60, null, null]);
});
