import { expect, test } from 'vitest';
import { forEachMeasure } from './byMeasure.js';
import { periodColumns } from './periodColumns.js';
import { periodResult } from './periodResult.js';
import type { SeriesReading } from './seriesReading.js';
import { spreadOf } from './spread.js';
import { A1, readingAt } from './testing.js';

const of = (readings: readonly SeriesReading[]) => {
  const { whole } = periodColumns(readings, readings.map(() => 'day')); // biome-ignore format: one thought
  return spreadOf(whole, periodResult(readings, whole));
};

// Out-of-office handbook 19, A1 and A2, to the printed digits.
test('A1: successive differences, the SD with divisor n, range, peak and trough', () => {
  const found = of(A1);
  expect(found.rmssd.systolic).toBeCloseTo(4.452, 4);
  expect(found.rmssd.diastolic).toBeCloseTo(3.3359, 4);
  expect(found.populationSd.systolic).toBeCloseTo(10.0254, 4);
  expect(found.populationSd.diastolic).toBeCloseTo(7.9088, 4);
  // Read off the list by eye: 146/92 at 16:30 and 84 at 12:00; 109/64 at 02:30 and 57 at 04:30. Mean 132.875.
  expect(found.mostMinusLeast).toEqual({ systolic: 37, diastolic: 28, pulse: 27 });
  expect(found.mostMinusMean.systolic).toBe(146 - 132.875);
  expect(found.meanMinusLeast.systolic).toBe(132.875 - 109);
});

const A2 = [0, 1, 3, 4, 8].map((hour, k) =>
  readingAt(k + 1, 0, `${hour}:00`, `${[120, 130, 126, 140, 134][k]}/80 70`),
);

test('A2: irregular times, by hand', () => {
  const found = of(A2);
  expect(found.rmssd.systolic).toBeCloseTo(9.3274, 4);
  expect(found.populationSd.systolic).toBeCloseTo(6.8118, 4);
  expect(found.mostMinusLeast.systolic).toBe(20);
  // Times less 3.2 h, pressures less 130: products 32 + 0 + 0.8 + 8 + 19.2 = 60, squares of time 38.8; of the squares of pressure,
  // 232, the line leaves 232 - 60 x 60 / 38.8, over 4.
  expect(found.sdAboutTrend.systolic).toBeCloseTo(Math.sqrt((232 - 3600 / 38.8) / 4), 10);
});

test('a steady rise has no SD about its trend; two values have none to be had, nor has nothing', () => {
  const rise = [0, 1, 2, 5].map((hour, k) => readingAt(k + 1, 0, `${hour}:00`, `${110 + 3 * hour}/80 70`));
  expect(of(rise).sdAboutTrend.systolic).toBeCloseTo(0, 10);
  expect(of(A2.slice(0, 2)).sdAboutTrend.systolic).toBeNull();
  expect(of([])).toEqual({
    populationSd: forEachMeasure(() => null),
    rmssd: forEachMeasure(() => null),
    sdAboutTrend: forEachMeasure(() => null),
    mostMinusLeast: forEachMeasure(() => null),
    mostMinusMean: forEachMeasure(() => null),
    meanMinusLeast: forEachMeasure(() => null),
  });
});
