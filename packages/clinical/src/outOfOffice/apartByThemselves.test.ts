import { expect, test } from 'vitest';
import { APART_BY_THEMSELVES, changeBetween } from './apartByThemselves.js';

// Out-of-office handbook 17.1: at home an SD of 7.7; awake -16.7 to 18.4, which it works out as an SD of 8.95.
test('a change lies as far to either side of what was found as two means scatter by themselves', () => {
  expect(APART_BY_THEMSELVES.home.sd).toBe(7.7);
  expect(APART_BY_THEMSELVES.awake).toMatchObject({ low: -16.7, high: 18.4 });
  expect(APART_BY_THEMSELVES.awake.sd).toBeCloseTo(8.95, 2);
  // 1.96 x 7.7 = 15.092, by hand.
  const home = changeBetween(-15.7, 'home');
  expect(home.low).toBeCloseTo(-30.792, 9);
  expect(home.high).toBeCloseTo(-0.608, 9);
  // Half of 18.4 + 16.7 = 17.55.
  const awake = changeBetween(-10, 'awake');
  expect(awake.low).toBeCloseTo(-27.55, 9);
  expect(awake.high).toBeCloseTo(7.55, 9);
});
