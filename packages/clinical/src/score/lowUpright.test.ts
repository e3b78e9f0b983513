import { expect, test } from 'vitest';
import { lowUprightLimit } from './lowUpright.js';

// Bedside handbook 3.17: a child of 1 to 10 years is low under 70 + 2 x age, from 11 under 90; 3.14: an adult under 90.
test.each([
  ['4 years', 48, 88, null],
  ['4 years', 48, 78, null],
  ['4 years', 48, 77, 78],
  ['6 months', 6, 70, null],
  ['6 months', 6, 69, 70],
  ['11 years', 132, 89, 90],
  ['17 years', 215, 90, null],
  ['18 years', 216, 89, 90],
  ['50 years', 600, 90, null],
  ['an age that nobody said', null, 89, 90],
])('%s (%s months), %d mmHg', (_, ageMonths, systolic, limit) => {
  expect(lowUprightLimit(systolic, ageMonths)).toBe(limit);
});
