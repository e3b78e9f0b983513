import { DEFAULT_COUNT_RULES } from '@evenfall/clinical';
import { NOTHING_CHOSEN } from '@evenfall/record';
import { expect, test } from 'vitest';
import { notInWindow, setWindowSeconds } from './setWindow.js';
import { readTypedSet } from './typedSet.js';

// Bedside handbook 1.5 and 2.1: an irregular pulse is counted a full minute.
test('how long a pulse known to be irregular was counted is asked for each set, and never presumed', () => {
  expect(setWindowSeconds('', '30', true, DEFAULT_COUNT_RULES)).toBeNull();
  expect(setWindowSeconds('15', '30', true, DEFAULT_COUNT_RULES)).toBe(15);
  expect(setWindowSeconds('', '15', false, DEFAULT_COUNT_RULES)).toBe(15);
});

// Bedside handbook 2: what is counted in 30 s goes by steps of 2 a minute, so 77 cannot come out of it, but of 60 s.
test('a rate that its window cannot give is known as such, with the step of the window', () => {
  const wrong = (text: string, windowSeconds: number) =>
    readTypedSet(
      text,
      { method: 'auscultation', counted: { windowSeconds, clock: 'any', first: 1 } },
      NOTHING_CHOSEN,
    ).wrong;
  expect(notInWindow(wrong('148/92 77', 30))).toEqual({ perMinute: 77, seconds: 30, stepPerMinute: 2 });
  expect(notInWindow(wrong('148/92 77', 60))).toBeNull();
  expect(notInWindow(wrong('148', 30))).toBeNull();
});
