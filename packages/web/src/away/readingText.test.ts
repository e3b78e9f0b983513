import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { linesText } from './flagText.js';
import { meanText, movedText, pairText, readingTime } from './readingText.js';

const words = wordsFor('en-GB');
const LIMIT = { comparison: '>=', limit: 135 } as const;

// H2 of the out-of-office handbook 19: 134.5833 is under 135 and is never shown as 135.
test.each([
  [134.5833, '134.6'],
  [134.9999, '134.9999'],
  [135, '135'],
  [136.5833, '137'],
])('a mean of %d beside 135 is shown as %s', (mean, text) => {
  expect(meanText(mean, LIMIT, words)).toBe(text);
});

test('what is not known is a dash, never a zero', () => {
  expect(pairText({ systolic: null, diastolic: 0 }, { systolic: LIMIT, diastolic: null }, words)).toBe('–/0');
});

test('a time that nobody said is about right', () => {
  const at = { at: '2025-03-03T07:30:00.000+00:00', zone: 'Europe/Lisbon', asEntered: '~07:30' };
  expect(readingTime({ at }, words)).toBe('about 3 Mar, 07:30');
  expect(readingTime({ at: { ...at, asEntered: '07:30' } }, words)).toBe('3 Mar, 07:30');
});

test('a later reading of a sitting has the time that was typed for it, and says which it is', () => {
  const at = { at: '2025-11-18T07:01:00.000+00:00', zone: 'Europe/Lisbon', asEntered: '~07:00' };
  expect(readingTime({ at }, words)).toBe('about 18 Nov, 07:00, second reading');
  expect(readingTime({ at: { ...at, asEntered: '07:00' } }, words)).toBe('18 Nov, 07:00, second reading');
  expect(readingTime({ at }, words, false)).toBe('about 18 Nov, 07:00');
  expect(readingTime({ at: { ...at, asEntered: null } }, words)).toBe('18 Nov, 07:01');
});

test('lines that follow each other are joined', () => {
  expect(linesText([5, 2, 3, 4, 9])).toBe('2-5, 9');
});

test('a mean that moves by less than its whole number is seen to move; one that moves further stays whole', () => {
  const of = (systolic: number | null, diastolic: number | null) => ({ systolic, diastolic });
  expect(movedText(of(138.1, 86.04), of(137.6, 85.5), words)).toEqual({
    before: '138.1/86.0',
    after: '137.6/85.5',
  });
  expect(movedText(of(137.5, 86), of(137.49, 86), words)).toEqual({ before: '138/86', after: '137/86' });
  expect(movedText(of(138.1, null), of(137.6, null), words)).toEqual({ before: '138.1/–', after: '137.6/–' });
});
