import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { endDigits } from '../deflation/endDigits.js';
import { averageReadings } from './averageReadings.js';
import type { AveragingRuleId } from './averagingRules.js';
import { UNKNOWN_READINGS_CIRCUMSTANCES as UNKNOWN } from './furtherReading.js';
import { readingsRulesOf } from './readingsRules.js';

/** 2500 people of a survey, three pressures by ear each. Source, licence and check values: fixtures/README.md. */
const PEOPLE = readFileSync(new URL('../../fixtures/nhanes-2009-2012-pressures.csv', import.meta.url), 'utf8')
  .trim()
  .split('\n')
  .slice(1)
  .map((row) => {
    const [s1 = 0, d1 = 0, s2 = 0, d2 = 0, s3 = 0, d3 = 0] = row.split(',').map(Number);
    return [
      { systolic: s1, diastolic: d1 },
      { systolic: s2, diastolic: d2 },
      { systolic: s3, diastolic: d3 },
    ] as const;
  });

const averages = (rule: AveragingRuleId) =>
  PEOPLE.map((taken) => averageReadings(taken, UNKNOWN, readingsRulesOf(rule)));
const meanOf = (values: readonly number[]) => values.reduce((sum, one) => sum + one, 0) / values.length;
const shareHigh = (of: readonly { systolic: number | null; diastolic: number | null }[]) =>
  of.filter(({ systolic, diastolic }) => (systolic ?? 0) >= 140 || (diastolic ?? 0) >= 90).length / of.length;

// Means of readings 1, 2 and 3 are 123.4216, 122.5080 and 121.6880: by hand, of all three 122.5392, of the last two 122.0980.
test.each([
  ['acc-aha-2017', 122.5392, 0.1736],
  ['ish-2020', 122.098, 0.1736],
] as const)('the averages of %s over the survey come to its check values', (rule, systolic, high) => {
  const found = averages(rule);
  expect(found.every((one) => one.systolic !== null && one.why.length === 0)).toBe(true);
  expect(meanOf(found.map((one) => one.systolic as number))).toBeCloseTo(systolic, 4);
  expect(shareHigh(found)).toBeCloseTo(high, 4);
});

test('a first reading alone names more people high than any average does', () => {
  expect(shareHigh(PEOPLE.map(([first]) => first))).toBeCloseTo(0.198, 4);
});

test('sounds that never went are a diastolic of 0 and are averaged as one', () => {
  const zero = PEOPLE.filter((taken) => taken.some(({ diastolic }) => diastolic === 0));
  expect(zero).toHaveLength(27);
  for (const taken of zero) {
    const { diastolic } = averageReadings(taken, UNKNOWN, readingsRulesOf('acc-aha-2017'));
    expect(diastolic).toBeCloseTo(meanOf(taken.map((one) => one.diastolic)), 9);
  }
});

// Counted apart from this program when the file was made; chi-square over 1500 for each digit: 61.2147, four degrees of freedom.
test('trained readers of a whole survey still prefer some end digits, and none reads between the marks', () => {
  const { counts, chiSquare, degreesOfFreedom, preference, offScale } = endDigits(
    PEOPLE.flatMap((taken) => taken.map(({ systolic }) => systolic)),
  );
  expect(counts.map(({ readings }) => readings)).toEqual([1418, 1413, 1702, 1618, 1349]);
  expect(chiSquare).toBeCloseTo(61.2147, 4);
  expect([degreesOfFreedom, preference, offScale]).toEqual([4, 'clear', 0]);
});
