import { expect, test } from 'vitest';
import { heightEffect } from './heightEffect.js';

test('C035 and C036: a cuff 10 cm below and above the heart', () => {
  // Bedside handbook 8, C035 (derived; measured slope found, Adiyaman 2006) and C036 (derived, 3.1).
  const below = heightEffect(10);
  expect(below.theoryMmHg).toBeCloseTo(7.8, 9);
  expect(below.measuredMmHg.systolic).toBeCloseTo(4.9, 9);
  expect(below.measuredMmHg.diastolic).toBeCloseTo(4.7, 9);
  expect(heightEffect(-10).theoryMmHg).toBeCloseTo(-7.8, 9);
});

test('two mmHg an inch is the same thing', () => {
  // Bedside handbook 3.1 (derived): 2.54 x 0.78 = 1.98.
  expect(heightEffect(2.54).theoryMmHg).toBeCloseTo(1.98, 2);
});
