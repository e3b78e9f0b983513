import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dayAfter } from './calendar.js';

const day = fc
  .date({ min: new Date('1999-01-01'), max: new Date('2101-12-31'), noInvalidDate: true })
  .map((date) => date.toISOString().slice(0, 10));

test('days are added as the calendar of the platform adds them', () => {
  fc.assert(
    fc.property(day, fc.integer({ min: 0, max: 800 }), (from, days) => {
      const date = new Date(`${from}T00:00:00Z`);
      date.setUTCDate(date.getUTCDate() + days);
      expect(dayAfter(from, { days })).toBe(date.toISOString().slice(0, 10));
    }),
  );
});

test('months are added to days that every month has as the calendar of the platform adds them', () => {
  fc.assert(
    fc.property(day, fc.integer({ min: 0, max: 60 }), (from, months) => {
      const safe = `${from.slice(0, 8)}28`;
      const date = new Date(`${safe}T00:00:00Z`);
      date.setUTCMonth(date.getUTCMonth() + months);
      expect(dayAfter(safe, { months })).toBe(date.toISOString().slice(0, 10));
    }),
  );
});

// Civil calendar: 2028 is a leap year, 2100 is none, 2000 is one.
test.each([
  ['2026-08-31', { months: 6 }, '2027-02-28'],
  ['2027-08-31', { months: 6 }, '2028-02-29'],
  ['2099-12-31', { months: 2 }, '2100-02-28'],
  ['1999-12-31', { months: 2 }, '2000-02-29'],
  ['2026-12-31', { days: 1 }, '2027-01-01'],
  ['2026-11-25', {}, '2026-11-25'],
])('%s and %j is %s', (from, step, to) => {
  expect(dayAfter(from, step)).toBe(to);
});
