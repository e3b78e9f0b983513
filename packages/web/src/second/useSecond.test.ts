import { expect, test } from 'vitest';
import { broughtHere } from './useSecond.js';

test('a touch is brought to this device’s clock over that of the place; both uncertainties count', () => {
  // The other device's clock is 5,000 ms behind the place's, this one's 1,000 ms: 2,000 there is 6,000 here.
  const mark = { id: 'a', atMs: 2000, offsetMs: 5000, withinMs: 4 };
  expect(broughtHere(mark, { offsetMs: 1000, withinMs: 6 })).toEqual({ id: 'a', atMs: 6000, withinMs: 10 });
});
