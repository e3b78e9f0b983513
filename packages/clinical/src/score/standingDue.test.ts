import { expect, test } from 'vitest';
import { isAtFirst, isAtThird } from './falls.js';
import { isNoneToCome, minutesUpright, missedUpright, standingAsk, standingDue } from './standingDue.js';

// Bedside handbook 3.14: stand, pressure and pulse at 1 and at 3 minutes.
test.each([
  [0, { minutes: 1, inSeconds: 60 }],
  [43, { minutes: 1, inSeconds: 17 }],
  [59, { minutes: 1, inSeconds: 1 }],
  [60, { minutes: 1, inSeconds: 0 }],
  [61, { minutes: 1, inSeconds: 0 }],
  // A reading keeps its time on the feet to a tenth, taken to its whole minute, half up (standing test): 87 s are 1.5
  // min, and the first minute is over.
  [86.9, { minutes: 1, inSeconds: 0 }],
  [87, { minutes: 3, inSeconds: 93 }],
  [180, { minutes: 3, inSeconds: 0 }],
  [206.9, { minutes: 3, inSeconds: 0 }],
  [207, null],
])('%d s on the feet and nothing taken: %j', (seconds, due) => {
  expect(standingDue(seconds, [])).toEqual(due);
});

test('a reading that is taken when it is asked for counts as the one that was asked for, at every second', () => {
  const isIt = { 1: isAtFirst, 3: isAtThird } as const;
  for (let seconds = 0; seconds <= 300; seconds += 1) {
    for (const taken of [[], [1]]) {
      const due = standingDue(seconds, taken);
      if (due === null) continue;
      const minutes = minutesUpright(seconds + due.inSeconds) ?? Number.NaN;
      const says = isIt[due.minutes as 1 | 3]({ minutes });
      expect([seconds, taken, due.minutes, says]).toEqual([seconds, taken, due.minutes, true]);
    }
  }
});

test('a reading that is in is not asked for again, and one at another minute does not stand for it', () => {
  expect(standingDue(70, [1])).toEqual({ minutes: 3, inSeconds: 110 });
  expect(standingDue(70, [0])).toEqual({ minutes: 3, inSeconds: 110 });
  expect(standingDue(150, [1, 2])).toEqual({ minutes: 3, inSeconds: 30 });
  expect(standingDue(185, [1.1, 2.4])).toEqual({ minutes: 3, inSeconds: 0 });
  expect(standingDue(185, [1.1, 2.5])).toBeNull();
});

// Bedside handbook 3.14: at 1 and at 3 minutes.
test('a minute that is over and has no reading was missed, from the second on at which it is asked for no more', () => {
  expect(missedUpright(86.9, [])).toEqual([]);
  expect(missedUpright(90, [])).toEqual([1]);
  expect(missedUpright(90, [1.2])).toEqual([]);
  expect(missedUpright(240, [1])).toEqual([3]);
  expect(missedUpright(240, [])).toEqual([1, 3]);
  expect(missedUpright(240, [1, 3.2])).toEqual([]);
  expect(missedUpright(240, [1, 5])).toEqual([3]);
  for (let seconds = 0; seconds <= 400; seconds += 1) {
    const due = standingDue(seconds, [1]);
    expect([seconds, missedUpright(seconds, [1])]).toEqual([seconds, due === null ? [3] : []]);
  }
});

// Bedside handbook 3.14: a fall within 3 min, or a delayed one after it; an early fall that passed shows in no later reading.
test('a late reading is asked for in the place of the third alone, and once', () => {
  expect(standingAsk(190, [3.1])).toEqual({ due: null, missed: 1, isLate: false });
  expect(standingAsk(240, [1])).toEqual({ due: null, missed: 3, isLate: true });
  expect(standingAsk(240, [])).toEqual({ due: null, missed: 3, isLate: true });
  expect(standingAsk(330, [1, 5])).toEqual({ due: null, missed: 3, isLate: false });
  expect(standingAsk(240, [1, 3])).toEqual({ due: null, missed: null, isLate: false });
  expect(standingAsk(100, [])).toEqual({ due: { minutes: 3, inSeconds: 80 }, missed: 1, isLate: false });
});

test('none is to come once both minutes were measured or are over, and none is to be made up for', () => {
  const none = (seconds: number, taken: readonly number[]) => isNoneToCome(standingAsk(seconds, taken));
  // The third minute is over at 210 s (3.5 min, taken to its whole minute, half up).
  expect([none(185, [1.1]), none(185, [1.1, 3]), none(240, [1, 3.1])]).toEqual([false, true, true]);
  expect([none(240, [1]), none(330, [1, 5]), none(70, [1])]).toEqual([false, true, false]);
});

test('the minutes of a reading are those of the clock, to a tenth, up to the longest that is kept', () => {
  expect([0, 2, 3, 71, 3600].map(minutesUpright)).toEqual([0, 0, 0.1, 1.2, 60]);
  expect([3602, 3603, -4].map(minutesUpright)).toEqual([60, null, null]);
});
