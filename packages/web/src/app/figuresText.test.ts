import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { rangeText, unbroken } from './figuresText.js';

const words = wordsFor('en-GB');

// Ranges of docs/conventions.md section 5: any/1 excludes both ends, beat/0 includes the low one.
test.each([
  [{ lowPerMinute: 72, highPerMinute: 80, lowIncluded: false }, 'over 72, under 80'],
  [{ lowPerMinute: 76, highPerMinute: 80, lowIncluded: true }, '76 to under 80'],
  [{ lowPerMinute: 70.4, highPerMinute: 77.6 }, '70 to 78'],
  [{ lowPerMinute: 71.96, highPerMinute: 73.04 }, '72.0 to 73.0'],
  [{ lowPerMinute: null, highPerMinute: null, lowIncluded: null }, null],
])('%j reads %s', (ends, text) => {
  expect(rangeText(ends, words)).toBe(text);
});

test('a number stays with its unit at the end of a line', () => {
  const weak = { code: 'weak', figures: { fullWindowSeconds: 60 } };
  expect(words.detail(weak)).toContain('60 s');
  expect(unbroken(words.detail(weak))).toContain('60\u00a0s');
});
