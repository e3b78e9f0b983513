import { expect, test } from 'vitest';
import { valuesOf } from './seriesReading.js';
import { stiffnessIndex } from './stiffness.js';
import { A1 } from './testing.js';

// Out-of-office handbook 19, A1, to the printed digits.
test('A1: both indices and the slope that halves the angle', () => {
  const found = stiffnessIndex(valuesOf(A1, 'systolic'), valuesOf(A1, 'diastolic'));
  expect(found?.slope).toBeCloseTo(0.7866, 4);
  expect(found?.index).toBeCloseTo(0.2134, 4);
  expect(found?.symmetric).toBeCloseTo(0.2111, 4);
  expect(found?.bisectorSlope).toBeCloseTo(0.7889, 4);
});

test('the slope halves the angle between the line of one pressure on the other and that of the other on it', () => {
  // A loose cloud, where the three lines lie apart: products 2, squares 20 and 10.
  const [x, y] = [[1, 3, 5, 7], [2, 5, 1, 4]]; // biome-ignore format: two rows
  const found = stiffnessIndex(x, y);
  const steep = (found?.slope ?? 0) / (found?.r ?? 1) ** 2;
  const half = (Math.atan(found?.slope ?? 0) + Math.atan(steep)) / 2;
  expect(found?.bisectorSlope).toBeCloseTo(Math.tan(half), 10);
});
