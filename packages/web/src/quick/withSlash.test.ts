import { expect, test } from 'vitest';
import { withSlash } from './withSlash.js';

test.each([
  ['148 92', '148/92'],
  ['148 92 76', '148/92 76'],
  [' 98 60 ', '98/60'],
  ['148/92 76', null],
  ['148', null],
  ['148 9', null],
  ['', null],
  ['148 P', null],
])('"%s" is asked about as %s', (text, meant) => {
  expect(withSlash(text)).toBe(meant);
});
