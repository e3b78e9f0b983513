import { offsetMinutes } from '@evenfall/record';
import { describe, expect, test } from 'vitest';
import { localDate, stampAt, stampOfLocal } from './stampAt.js';

// Instants and offsets from RFC 3339 section 5.8: 1996-12-19T16:39:57-08:00 is 1996-12-20T00:39:57Z.
const RFC_EXAMPLE = Date.parse('1996-12-20T00:39:57Z');

test.each([
  [-480, '1996-12-19T16:39:57.000-08:00', '1996-12-19'],
  [0, '1996-12-20T00:39:57.000+00:00', '1996-12-20'],
  [330, '1996-12-20T06:09:57.000+05:30', '1996-12-20'],
  [-210, '1996-12-19T21:09:57.000-03:30', '1996-12-19'],
])('at %d minutes east the RFC 3339 example reads %s', (offset, at, date) => {
  const stamp = stampAt(RFC_EXAMPLE, offset, 'Etc/Unknown');
  expect(stamp).toEqual({ at, zone: 'Etc/Unknown', asEntered: null });
  expect(Date.parse(stamp.at)).toBe(RFC_EXAMPLE);
  expect(offsetMinutes(stamp.at)).toBe(offset);
  expect(localDate(stamp)).toBe(date);
});

describe('a local time as typed', () => {
  // Europe/Lisbon 2026: on 29 March 01:00 jumped to 02:00, on 25 October 02:00 went back to 01:00 (IANA tz database).
  const spring = Date.parse('2026-03-29T01:00:00Z');
  const autumn = Date.parse('2026-10-25T01:00:00Z');
  const lisbon = (epochMs: number) => (epochMs >= spring && epochMs < autumn ? 60 : 0);
  const typed = (text: string) => stampOfLocal(text, 'Europe/Lisbon', lisbon)?.at ?? null;

  test.each([
    ['2026-01-15T08:30', '2026-01-15T08:30:00.000+00:00'],
    ['2026-07-15T08:30', '2026-07-15T08:30:00.000+01:00'],
    ['2026-03-29T00:59', '2026-03-29T00:59:00.000+00:00'],
    ['2026-03-29T02:00', '2026-03-29T02:00:00.000+01:00'],
    ['2026-10-25T02:00', '2026-10-25T02:00:00.000+00:00'],
  ])('%s', (text, at) => {
    expect(typed(text)).toBe(at);
  });

  test('one that the clocks jumped over is none; of one that came twice, the first', () => {
    expect(typed('2026-03-29T01:30')).toBeNull();
    expect(typed('2026-10-25T01:30')).toBe('2026-10-25T01:30:00.000+01:00');
  });

  test('what is no time is none', () => {
    for (const text of ['', '2026-02-30', '2026-13-01T08:00', 'noon']) expect(typed(text)).toBeNull();
  });
});
