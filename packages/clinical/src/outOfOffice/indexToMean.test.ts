import { expect, test } from 'vitest';
import { correlation } from '../statistics/correlation.js';
import { groupVariability, variabilityGroup, variabilityIndependentOfMean } from './indexToMean.js';
import { cvPercent } from './variability.js';

// V1 of the out-of-office handbook 19, by the log-log slope.
const PEOPLE = [
  [112, 7.1],
  [121, 8],
  [129, 9.4],
  [138, 10.1],
  [146, 12.2],
  [157, 13.9],
].map(([mean = 0, sd = 0]) => ({ mean, sd }));

test('V1: variability of six people, independent of their means', () => {
  const group = variabilityGroup(PEOPLE);
  expect(group?.mean).toBeCloseTo(133.8333, 4);
  expect(group?.x).toBeCloseTo(2.0182, 4);
  expect(group?.a).toBeCloseTo(5.096643e-4, 9);
  if (group === null) throw new Error('the group has a line');
  const found = PEOPLE.map((one) => variabilityIndependentOfMean(one, group));
  [10.1709, 9.8049, 10.1244, 9.494, 10.2352, 10.0712].forEach((value, k) => {
    expect(found[k]).toBeCloseTo(value, 4);
  });
});

test('one person, two, or people who are all alike, have none', () => {
  expect(variabilityGroup(PEOPLE.slice(0, 1))).toBeNull();
  // Two are always on one curve: from three on is a decision of this project.
  expect(variabilityGroup(PEOPLE.slice(0, 2))).toBeNull();
  expect(variabilityGroup(PEOPLE.slice(0, 3))).not.toBeNull();
  expect(variabilityGroup([PEOPLE[0], PEOPLE[0], PEOPLE[0]] as typeof PEOPLE)).toBeNull();
  expect(variabilityGroup([...PEOPLE, { mean: 130, sd: 0 }])).toBeNull();
});

// V1 by the smallest sum of squares, and what shows that VIM does not go with the mean: the same source, to the printed digits.
test('V1: the power by least squares of the SDs themselves', () => {
  const found = groupVariability(PEOPLE, 'least-squares');
  expect(found?.x).toBeCloseTo(2.0594, 4);
  expect(found?.a).toBeCloseTo(4.163755e-4, 9);
  expect(found?.rest).toBeCloseTo(0.4186, 4);
  [10.2458, 9.8457, 10.1397, 9.482, 10.1985, 10.0052].forEach((value, k) => {
    expect(found?.each[k]).toBeCloseTo(value, 4);
  });
});

test('V1: SD and CV go with the mean, VIM does not', () => {
  expect(groupVariability(PEOPLE, 'log-log')?.correlation).toBeCloseTo(0.0246, 4);
  const means = PEOPLE.map((one) => one.mean);
  expect(correlation(means, PEOPLE.map((one) => one.sd))).toBeCloseTo(0.9898, 4); // biome-ignore format: one thought
  const cvs = PEOPLE.map((one) => cvPercent(one.mean, one.sd) as number);
  [6.3393, 6.6116, 7.2868, 7.3188, 8.3562, 8.8535].forEach((value, k) => {
    expect(cvs[k]).toBeCloseTo(value, 4);
  });
  expect(correlation(means, cvs)).toBeCloseTo(0.9757, 4);
  expect(groupVariability(PEOPLE.slice(0, 1), 'log-log')).toBeNull();
});

test('of SDs that are a power of the mean both ways find it, and everybody has the same VIM', () => {
  for (const power of [-1, 0, 1, 2.5]) {
    const people = [100, 118, 131, 150].map((one) => ({ mean: one, sd: 9 * (one / 120) ** power }));
    for (const by of ['log-log', 'least-squares'] as const) {
      const found = groupVariability(people, by);
      expect(found?.x).toBeCloseTo(power, 6);
      for (const one of found?.each ?? []) expect(one).toBeCloseTo(found?.each[0] as number, 6);
    }
  }
});
