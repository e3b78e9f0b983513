import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { dayText, instantText, shortStampText, stampText } from './times.js';

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
