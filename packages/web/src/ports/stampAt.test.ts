import { offsetMinutes } from '@evenfall/record';
import { expect, test } from 'vitest';
import { localDate, stampAt } from './stampAt.js';

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
