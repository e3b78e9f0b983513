import { expect, test } from 'vitest';
import { isNearSeries, officeVisits } from './officeVisits.js';

// Worked out by hand: the two of one day first among themselves, (150 + 140) / 2 = 145; then (145 + 148) / 2 = 146.5.
test('pressures of one day are one visit, and the mean is over visits', () => {
  const found = officeVisits([
    { date: '2026-11-08', systolic: 150, diastolic: 94 },
    { date: '2026-11-01', systolic: 148, diastolic: 90 },
    { date: '2026-11-08', systolic: 140, diastolic: 90 },
  ]);
  expect(found).toEqual({
    systolic: 146.5,
    diastolic: 91,
    visits: [
      { date: '2026-11-01', rounds: 1, systolic: 148, diastolic: 90 },
      { date: '2026-11-08', rounds: 2, systolic: 145, diastolic: 92 },
    ],
  });
  expect(officeVisits([])).toBeNull();
});

// Three months, a decision of this project.
test('an office pressure of 92 days from a series belongs to it, of 93 not', () => {
  expect([0, 92, 93].map(isNearSeries)).toEqual([true, true, false]);
});
