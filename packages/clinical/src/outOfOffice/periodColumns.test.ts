import { expect, test } from 'vitest';
import { periodColumns } from './periodColumns.js';
import { readingAt } from './testing.js';

const readings = [
  readingAt(1, 0, '20:00', '140/90 70'),
  readingAt(2, 0, '21:00', '138/88 72'),
  readingAt(3, 0, '23:30', '120/70 60'),
  { ...readingAt(4, 1, '01:30', '118/68 58'), systolic: null },
  readingAt(5, 1, '07:00', '130/82 66'),
  readingAt(6, 1, '08:00', '142/92 74'),
];

test('values of the whole, of day and of night, each with its hours since the first reading', () => {
  const { whole, day, night } = periodColumns(readings, ['day', 'day', 'night', 'night', 'day', 'day']);
  expect(whole.diastolic).toEqual({
    hours: [0, 1, 3.5, 5.5, 11, 12],
    clockHours: [20, 21, 23, 1, 7, 8],
    values: [90, 88, 70, 68, 82, 92],
    starts: [0],
  });
  // Two days with the night between them are two runs.
  expect(day.systolic).toEqual({ hours: [0, 1, 11, 12], values: [140, 138, 130, 142], starts: [0, 2] });
  // A blank is left out and ends nothing.
  expect(night.systolic).toEqual({ hours: [3.5], values: [120], starts: [0] });
  expect(night.pulse).toEqual({ hours: [3.5, 5.5], values: [60, 58], starts: [0] });
});

test('measures that no reading lacks share their times; one with a blank has its own', () => {
  const { whole, night } = periodColumns(readings, ['day', 'day', 'night', 'night', 'day', 'day']);
  expect(whole.pulse.hours).toBe(whole.diastolic.hours);
  expect(night.pulse.hours).toBe(night.diastolic.hours);
  expect(whole.systolic.hours).toEqual([0, 1, 3.5, 11, 12]);
});

test('a reading of neither period ends a run; one whose night has no value does too', () => {
  expect(periodColumns(readings, ['day', 'neither', 'day', 'night', 'day', 'day']).day.systolic).toEqual({
    hours: [0, 3.5, 11, 12],
    values: [140, 120, 130, 142],
    starts: [0, 1, 2],
  });
});
