import { expect, test } from 'vitest';
import { dipBeside, dipClass, dipPercent } from './dipping.js';

// A5 of the out-of-office handbook 19: the limits of the classes, from both sides.
test.each([
  [140, 126, 10, 'dipper'],
  [140, 126.1, 9.9286, 'non-dipper'],
  [140, 112, 20, 'extreme'],
  [140, 111.9, 20.0714, 'extreme'],
  [140, 112.1, 19.9286, 'dipper'],
  [150, 120, 20, 'extreme'],
  [135, 121.5, 10, 'dipper'],
  [140, 140, 0, 'non-dipper'],
  [140, 140.1, -0.0714, 'reverse'],
] as const)('%d by day and %d by night fall by %d %%: %s', (day, night, percent, name) => {
  expect(dipPercent(day, night)).toBeCloseTo(percent, 4);
  expect(dipClass(day, night)).toBe(name);
});

test('without one of the means there is no fall', () => {
  expect(dipPercent(null, 120)).toBeNull();
  expect(dipPercent(130, null)).toBeNull();
});

// Out-of-office handbook 19: A1 (the systolic falls as usual, the diastolic more) and A4, to the printed digits.
test('the ratio of night to day, and the class of the diastolic by itself', () => {
  const a1 = dipBeside(
    { systolic: 137.3125, diastolic: 86.03125 },
    { systolic: 115.125, diastolic: 68.5 },
    true,
  );
  expect(a1.systolicRatio).toBeCloseTo(0.8384, 4);
  expect(a1.diastolicRatio).toBeCloseTo(0.7962, 4);
  expect(a1.diastolicClass).toBe('extreme');
  const [day, night] = [
    { systolic: 128.75, diastolic: 78.125 },
    { systolic: 137, diastolic: 82.75 },
  ];
  const a4 = dipBeside(day, night, false);
  expect(a4.systolicRatio).toBeCloseTo(1.0641, 4);
  expect(a4.diastolicRatio).toBeCloseTo(1.0592, 4);
  expect(a4.diastolicClass).toBeNull();
  expect(dipBeside(day, night, true).diastolicClass).toBe('reverse');
  expect(dipBeside({ ...day, diastolic: null }, night, true)).toMatchObject({
    diastolicRatio: null,
    diastolicClass: null,
  });
});
