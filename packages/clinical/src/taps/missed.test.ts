import { expect, test } from 'vitest';
import { manyMissed } from './missed.js';

/** So many whole intervals, then so many in which taps are missing. */
function series(whole: number, gaps: number): (number | null)[] {
  return [...new Array<number>(whole).fill(800), ...new Array<null>(gaps).fill(null)];
}

test.each([
  [18, 2, null],
  [17, 2, { gaps: 2, intervals: 19 }],
  [5, 1, null],
  [0, 0, null],
])('%i whole and %i with missed taps', (whole, gaps, figures) => {
  expect(manyMissed(series(whole, gaps))).toEqual(figures && { code: 'many-missed', figures });
});
