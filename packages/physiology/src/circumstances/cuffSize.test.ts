import { expect, test } from 'vitest';
import { bladderFor, sizeBias, sizesTooSmall } from './cuffSize.js';

// Ishigami 2023 by physiology handbook 12, 15.
test('one size too large, one and two too small', () => {
  expect(sizeBias(-1)).toEqual({ systolic: -3.6, diastolic: -1.3 });
  expect(sizeBias(1)).toEqual({ systolic: 4.8, diastolic: 1.8 });
  expect(sizeBias(2).systolic).toBeCloseTo(19.5, 1);
  expect(sizeBias(2).diastolic).toBeCloseTo(7.4, 1);
  expect(sizeBias(0)).toEqual({ systolic: 0, diastolic: 0 });
});

// What was measured ends at two sizes, and the book doubts even those by hand (physiology handbook 19).
test('beyond two sizes too small nothing is added to what was measured, whatever is put round whatever arm', () => {
  expect(sizeBias(1.9).systolic).toBeLessThan(19);
  expect(sizeBias(2.1)).toEqual(sizeBias(2));
  for (const [arm, bladder] of [
    [29, 'infant'],
    [47, 'child'],
    [60, 'infant'],
  ] as const) {
    const { systolic, diastolic } = sizeBias(sizesTooSmall(arm, bladder));
    expect(systolic).toBeLessThanOrEqual(19.6);
    expect(diastolic).toBeLessThanOrEqual(7.5);
  }
});

// Physiology handbook 14: an arm of 47 cm in a standard cuff reads +19/+7, one of 20 cm -4/-1.
test('the wide and the thin arm of the book in a standard cuff', () => {
  const wide = sizeBias(sizesTooSmall(47, 'adult'));
  expect(Math.abs(wide.systolic - 19)).toBeLessThan(1);
  expect(Math.abs(wide.diastolic - 7)).toBeLessThan(1);
  const thin = sizeBias(sizesTooSmall(20, 'adult'));
  expect(Math.abs(thin.systolic + 4)).toBeLessThan(0.5);
  expect(Math.abs(thin.diastolic + 1)).toBeLessThan(0.5);
});

test('no bias for an arm at either end of what a cuff is made for, some beyond', () => {
  expect([27, 31, 34.99].map((arm) => sizesTooSmall(arm, 'adult'))).toEqual([0, 0, 0]);
  expect(sizesTooSmall(35, 'adult')).toBeGreaterThan(0);
  expect(sizesTooSmall(26.9, 'adult')).toBeLessThan(0);
});

test('the bladder for an arm, the larger where two meet', () => {
  expect([14.9, 15, 21.9, 22, 26.9, 27, 34.9, 35, 45, 60].map(bladderFor)).toEqual([
    'infant',
    'child',
    'child',
    'small-adult',
    'small-adult',
    'adult',
    'adult',
    'large-adult',
    'thigh',
    'thigh',
  ]);
});
