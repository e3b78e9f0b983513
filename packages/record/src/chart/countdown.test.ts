import { expect, test } from 'vitest';
import { countdown } from './countdown.js';

const DUE = { fromAt: '2026-11-25T10:20:00+01:00', byAt: '2026-11-25T10:25:00+01:00' };
const at = (time: string) => Date.parse(`2026-11-25T${time}+01:00`);

// Bedside handbook 3.16: a time from which and a time by which; each limit at it and on both sides.
test.each([
  ['10:05:00', 'ahead', 15],
  ['10:05:01', 'ahead', 15],
  ['10:19:59', 'ahead', 1],
  ['10:20:00', 'now', 5],
  ['10:20:01', 'now', 5],
  ['10:24:30', 'now', 1],
  ['10:25:00', 'now', 0],
  ['10:25:01', 'late', 0],
  ['10:26:00', 'late', 1],
  ['12:25:59', 'late', 120],
] as const)('at %s it is %s, %d minutes', (time, is, minutes) => {
  expect(countdown(DUE, at(time))).toEqual({ is, minutes });
});

test('without a last time it is never late: due since, from its first time on', () => {
  const open = { ...DUE, byAt: null };
  expect(countdown(open, at('10:19:59'))).toEqual({ is: 'ahead', minutes: 1 });
  expect(countdown(open, at('10:20:00'))).toEqual({ is: 'since', minutes: 0 });
  expect(countdown(open, at('18:20:00'))).toEqual({ is: 'since', minutes: 480 });
});

test('goes by instants, whatever offsets they are written with', () => {
  const utc = { fromAt: '2026-11-25T09:20:00Z', byAt: '2026-11-25T09:25:00Z' };
  expect(countdown(utc, at('10:22:00'))).toEqual(countdown(DUE, at('10:22:00')));
});
