import { expect, test } from 'vitest';
import { variabilityGroup, variabilityIndependentOfMean } from './indexToMean.js';

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

test('one person, or people who are all alike, have none', () => {
  expect(variabilityGroup(PEOPLE.slice(0, 1))).toBeNull();
  expect(variabilityGroup([PEOPLE[0], PEOPLE[0]] as typeof PEOPLE)).toBeNull();
  expect(variabilityGroup([...PEOPLE, { mean: 130, sd: 0 }])).toBeNull();
});
