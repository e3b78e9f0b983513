import { expect, test } from 'vitest';
import { isLowSystolic, lowSystolicLimit } from './lowSystolic.js';

test.each([
  // Bedside handbook 8 and 5.3 (second-hand, 3.17): age in months, the limit; under it is low, at it is not.
  ['C075, 4 years', 48, 78],
  ['C076, 10 years', 120, 90],
  ['C076, 11 years', 132, 90],
  ['C077, 6 months', 6, 70],
  ['W9, 6 years', 72, 82],
  ['3.17, first month', 0.9, 60],
  ['3.17, 1 month', 1, 70],
  ['3.17, 11.9 months', 11.9, 70],
  ['3.17, 12 months', 12, 72],
  ['3.17, 10 years to the day before 11', 131.9, 90],
  ['3.17, 17 years', 215, 90],
])('%s: low under its limit', (_c, months, limit) => {
  expect(lowSystolicLimit(months)).toMatchObject({ limitMmHg: limit, sure: 'second-hand' });
  expect(isLowSystolic(limit - 0.1, months)).toBe(true);
  expect(isLowSystolic(limit, months)).toBe(false);
});

test('C075 to C077 and W9 as they are printed', () => {
  expect([isLowSystolic(77, 48), isLowSystolic(78, 48)]).toEqual([true, false]);
  expect([isLowSystolic(89, 120), isLowSystolic(89, 132)]).toEqual([true, true]);
  expect(isLowSystolic(69, 6)).toBe(true);
  expect(isLowSystolic(80, 72)).toBe(true);
});
