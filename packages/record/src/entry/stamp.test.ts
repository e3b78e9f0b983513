import fc from 'fast-check';
import { expect, test } from 'vitest';
import { laterBy, offsetMinutes } from './offset.js';
import { refusalsOf } from './refusals.js';
import { stamp } from './stamp.js';

const stamped = (at: unknown) => ({ at, zone: 'Asia/Kolkata', asEntered: null });

// RFC 3339, section 5.8, and offsets in use that are no whole hour: India +05:30, Newfoundland -03:30, Nepal +05:45.
test.each([
  ['1985-04-12T23:20:50.52Z', 0],
  ['1996-12-19T16:39:57-08:00', -480],
  ['1937-01-01T12:00:27.87+00:20', 20],
  ['2026-11-25T09:30:00+05:30', 330],
  ['2026-11-25T09:30:00-03:30', -210],
  ['2026-11-25T09:30:00+05:45', 345],
  ['2026-11-25T09:30:00+14:00', 840],
  // Section 4.3: an unknown local offset; the instant is that of UTC.
  ['2026-11-25T09:30:00-00:00', 0],
])('takes %s, %d minutes east of UTC', (at, minutes) => {
  expect(stamp.parse(stamped(at)).at).toBe(at);
  expect(offsetMinutes(at)).toBe(minutes);
});

test('the offset is what lies between the clock on the wall and the instant', () => {
  const instant = fc.integer({ min: -2_000_000_000, max: 4_000_000_000 });
  fc.assert(
    fc.property(instant, fc.integer({ min: -14 * 60, max: 14 * 60 }), (seconds, minutes) => {
      const wall = new Date((seconds + minutes * 60) * 1000).toISOString().slice(0, 19);
      const size = Math.abs(minutes);
      const two = (part: number) => String(part).padStart(2, '0');
      const at = `${wall}${minutes < 0 ? '-' : '+'}${two(Math.floor(size / 60))}:${two(size % 60)}`;
      const read = stamp.parse(stamped(at)).at;
      expect(offsetMinutes(read)).toBe((Date.parse(`${wall}Z`) - Date.parse(read)) / 60_000);
    }),
  );
});

test.each([
  ['no offset', '2026-11-25T09:30:00'],
  ['no seconds', '2026-11-25T09:30Z'],
  ['no colon in the offset', '2026-11-25T09:30:00+0530'],
  ['a day that is not', '2026-02-29T09:30:00Z'],
  ['an hour that is not', '2026-11-25T24:00:00Z'],
  ['a year without a number, which no database keeps', '0000-01-01T00:00:00Z'],
  ['an offset of no place', '2026-11-25T09:30:00+14:01'],
  ['an offset of no place to the west', '2026-11-25T09:30:00-23:59'],
  ['more digits than any clock has', `2026-11-25T09:30:00.${'1'.repeat(200)}Z`],
])('refuses %s as not a time', (_, at) => {
  const read = stamp.safeParse(stamped(at));
  expect(read.success).toBe(false);
  if (!read.success) {
    expect(refusalsOf(read.error, stamped(at))).toMatchObject([
      { field: '/at', code: 'not-a-time', expected: 'datetime' },
    ]);
  }
});

test('keeps the text that somebody typed, and refuses what is not its own', () => {
  const typed = { at: '2026-11-25T09:30:00+01:00', zone: 'Europe/Madrid', asEntered: '9.30ish' };
  expect(stamp.parse(typed)).toEqual(typed);
  expect(stamp.safeParse({ ...typed, zone: '' }).success).toBe(false);
  expect(stamp.safeParse({ ...typed, asEntered: undefined }).success).toBe(false);
  expect(stamp.safeParse({ ...typed, extra: 1 }).success).toBe(false);
});

// RFC 3339, section 5.8: an offset written differently names the same instant, and the clock there shows its own time.
test('a later instant is written as the clock of the same place shows it', () => {
  expect(laterBy('2026-11-25T23:55:00.000+05:30', 600)).toBe('2026-11-26T00:05:00.000+05:30');
  expect(laterBy('2026-11-25T00:02:00.000-03:30', 0)).toBe('2026-11-25T00:02:00.000-03:30');
  expect(laterBy('2026-11-25T23:59:59Z', 1)).toBe('2026-11-26T00:00:00.000Z');
});
