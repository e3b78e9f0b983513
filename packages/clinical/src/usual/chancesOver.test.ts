import { expect, test } from 'vitest';
import { chancesWithVisits, withOfficeVisits } from './chancesOver.js';
import { USUAL_FIGURES as F } from './figures.js';
import type { UsualKnown } from './usualOf.js';

const none = { systolic: null, diastolic: null };
const KNOWN: UsualKnown = {
  ageYears: null,
  sex: null,
  office: none,
  home: none,
  ambulatory: { systolic: { mean: 138 }, diastolic: { mean: 86 } },
};

/** The normal distribution from 0 to z, by Simpson's rule: no library of the program is asked. */
function phi(z: number): number {
  const [steps, from] = [2000, -10];
  const width = (z - from) / steps;
  const density = (x: number) => Math.exp(-(x ** 2) / 2) / Math.sqrt(2 * Math.PI);
  let sum = density(from) + density(z);
  for (let k = 1; k < steps; k++) sum += density(from + k * width) * (k % 2 === 1 ? 4 : 2);
  return (sum * width) / 3;
}

// Out-of-office handbook 17.4, written out: the SE of k office visits is 8.6 % of the level over the root of k, that of a recording
// 5.5 %; the office is moved onto the scale of the recording by an offset with a variance of its own (a decision of this project).
test.each([1, 2, 3, 10])('%d office visits of 148 with a recording of 138, about 135', (visits) => {
  const officeVariance = (0.086 * 148) ** 2 / visits + F.homeOffsetSd.value ** 2;
  const wornVariance = (0.055 * 138) ** 2;
  const precision = 1 / officeVariance + 1 / wornVariance;
  const moved = 148 + F.homeOffsetSystolic.value;
  const centre = (moved / officeVariance + 138 / wornVariance) / precision;
  const chance = 1 - phi((135 - centre) * Math.sqrt(precision));

  const threshold = { systolic: 135, diastolic: 85 };
  const [found] = chancesWithVisits([threshold], KNOWN, { systolic: 148, diastolic: 92, visits });
  expect(found?.prior).toBe('office');
  expect(found?.systolic).toBeCloseTo(chance, 6);
});

test('the visits are as many for both numbers', () => {
  const { office } = withOfficeVisits(KNOWN, { systolic: 148, diastolic: 92, visits: 3 });
  expect(office).toEqual({
    systolic: { mean: 148, visits: 3 },
    diastolic: { mean: 92, visits: 3 },
  });
});
