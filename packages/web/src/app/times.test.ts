import { loadWords, wordsFor } from '@evenfall/words';
import { describe, expect, test } from 'vitest';
import { dayText, instantText, shortStampText, stampText, timeText } from './times.js';

const words = wordsFor('en-GB');

test.each([
  ['1948-03-05', '5 Mar 1948'],
  ['2026-12-31', '31 Dec 2026'],
  ['0099-01-01', '1 Jan 99'],
])('the date %s is read as %s in every zone', (date, text) => {
  const zone = process.env.TZ;
  try {
    for (const here of ['Pacific/Kiritimati', 'UTC', 'Pacific/Pago_Pago']) {
      process.env.TZ = here;
      expect(dayText(date, words)).toBe(text);
    }
  } finally {
    process.env.TZ = zone;
  }
});

test.each(['en-GB', 'en-US'])('an instant has the same 24 hours as a stamp in %s', (locale) => {
  const zone = process.env.TZ;
  try {
    process.env.TZ = 'UTC';
    expect(instantText('2026-03-05T22:05:00Z', wordsFor(locale))).toMatch(/22:05$/);
    expect(instantText('2026-03-05T00:05:00Z', wordsFor(locale))).toMatch(/00:05$/);
  } finally {
    process.env.TZ = zone;
  }
});

test('a stamp is read by the clock of the place where it was made', () => {
  const at = '2026-03-05T23:41:07.120-08:00';
  expect(stampText({ at }, words)).toBe('5 Mar 2026, 23:41');
  expect(shortStampText(at, '2026-03-05', words)).toBe('23:41');
  expect(shortStampText(at, '2026-03-06', words)).toBe('5 Mar');
  expect(shortStampText(at, '2027-03-05', words)).toBe('5 Mar 2026');
});

describe('in the manner that this device’s user wants', () => {
  const at = '2026-03-05T14:05:07.120-08:00';
  const inManner = (change: Parameters<typeof words.inManner>[0]) => words.inManner(change);

  test.each([
    [null, '5 Mar 2026', '5 Mar'],
    ['day-month-year', '5 Mar 2026', '5 Mar'],
    ['month-day-year', 'Mar 5, 2026', 'Mar 5'],
    // ISO 8601: year first, and a month that no day is taken for.
    ['year-month-day', '2026-03-05', '03-05'],
  ] as const)('dates %s', (dates, whole, short) => {
    expect(dayText('2026-03-05', inManner({ dates }))).toBe(whole);
    expect(shortStampText(at, '2026-04-01', inManner({ dates }))).toBe(short);
  });

  test.each([
    ['00:05', /^12:05\sam$/i],
    ['11:59', /^11:59\sam$/i],
    ['12:00', /^12:00\spm$/i],
    ['23:59', /^11:59\spm$/i],
  ])('the clock of twelve hours says %s as %s', (time, text) => {
    expect(timeText(time, inManner({ hours: 12 }))).toMatch(text);
    expect(timeText(time, words)).toBe(time);
  });

  test('in Spanish', async () => {
    const spanish = await loadWords('es-ES');
    expect(stampText({ at }, spanish)).toBe('5 mar 2026, 14:05');
    expect(stampText({ at }, spanish.inManner({ hours: 12 }))).toMatch(/^5 mar 2026, 2:05\sp\.\sm\.$/);
    expect(dayText('2026-03-05', spanish.inManner({ dates: 'day-month-year' }))).toBe('5 mar 2026');
  });
});
