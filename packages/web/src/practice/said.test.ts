import { expect, test } from 'vitest';
import { parseSaid } from './said.js';

// A pressure as the conventions write it (docs/conventions.md 1): 128/76; 20 to 300 is the scale of a gauge.
test.each([
  ['188/92', { first: 188, last: 92 }],
  [' 124 / 78 ', { first: 124, last: 78 }],
  ['150', { first: 150, last: null }],
  ['20', { first: 20, last: null }],
  ['300/20', { first: 300, last: 20 }],
])('%s is said', (text, said) => {
  expect(parseSaid(text)).toEqual(said);
});

test.each([
  '',
  '19',
  '301',
  '120/19',
  '301/80',
  '80/120',
  '100/100',
  '120/',
  '/80',
  '1e2',
  '-120/80',
  '120/80/60',
  'a lot',
])('“%s” is not', (text) => {
  expect(parseSaid(text)).toBeNull();
});
