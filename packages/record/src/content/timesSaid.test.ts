import { expect, test } from 'vitest';
import { saidAt, timeSaid, timesSaid } from './timesSaid.js';

const entered = (at: string, asEntered: string | null) => ({
  at: { at: `2025-11-18T${at}:00.000+01:00`, asEntered },
});

// How a sitting is typed is a decision of this project (out-of-office handbook 2: two readings, a minute or two apart).
test('a reading is about its time where the usual one of its sitting was taken for it, never where it was said or read', () => {
  const all = [entered('07:00', '~07:00'), entered('07:00', '07:00'), entered('07:00', null)];
  expect(all.map((one) => timeSaid(one).isAbout)).toEqual([true, false, false]);
  expect(timesSaid(all)).toEqual(new Map([[1, { isAbout: true, place: 1 }]]));
});

test('the second reading of a sitting has the time of the sitting, whatever minute keeps it after the first', () => {
  for (const [reading, isAbout] of [
    [entered('07:01', '~07:00'), true],
    [entered('07:01', '07:00'), false],
  ] as const) {
    expect(timeSaid(reading)).toEqual({ isAbout, place: 2 });
    expect(saidAt(reading)).toBe('2025-11-18T07:00:00.000+01:00');
  }
  expect(timeSaid(entered('07:03', '07:00')).place).toBe(4);
});

test('a sitting that passes midnight has the time and the day at which it was begun', () => {
  for (const asEntered of ['~23:59', '23:59']) {
    const second = entered('00:00', asEntered);
    expect(timeSaid(second).place).toBe(2);
    expect(saidAt(second)).toBe('2025-11-17T23:59:00.000+01:00');
  }
  expect(timeSaid(entered('23:59', '00:00')).place).toBe(1);
});

test('a time that was read stands as it is, and so does one that is nowhere near what was entered', () => {
  for (const reading of [entered('07:01', null), entered('19:00', '07:00'), entered('07:01', 'just now')]) {
    expect(timeSaid(reading).place).toBe(1);
    expect(saidAt(reading)).toBe(reading.at.at);
  }
});
