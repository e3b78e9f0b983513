import { expect, test } from 'vitest';
import { type Belief, updated } from './normalNormal.js';
import { agePrior, assessmentSd } from './prior.js';

/** How much of the distance from what was thought before to what was measured is gone: the weight of the measurement. */
function weight(prior: Belief | null, se: number): number {
  if (prior === null) throw new Error('there is a prior');
  return updated(prior, { mean: prior.mean + 1, se }).mean - prior.mean;
}

// Out-of-office handbook 17.4, the column B of its table and the example by hand, to the printed digits.
test.each([
  ['one office visit', 10.885, 0.6073],
  ['two visits', 7.6969, 0.7557],
  ['three visits', 6.2845, 0.8227],
  ['a week at home, 4.2 % of 138', 5.796, 0.8451],
  ['24 hours, 5.5 % of 138', 7.59, 0.7608],
])('a man of 50 to 59, %s: what the measurement weighs', (_, se, share) => {
  expect(weight(agePrior('systolic', 55, 'm'), se)).toBeCloseTo(share, 4);
});

test('by hand: 225 of 261', () => {
  expect(weight({ mean: 130, sd: 15 }, 6)).toBeCloseTo(0.8621, 4);
});

// Out-of-office handbook 17.5: reliability of k measurements of 0.6 each by Spearman and Brown, 0.6 k / (1 + 0.6 (k - 1)).
test.each([
  [1, 0.6],
  [2, 0.75],
  [3, 0.8182],
  [4, 0.8571],
  [6, 0.9],
  [12, 0.9474],
])('%i measurements of a reliability of 0.6 each weigh as Spearman and Brown say: %d', (k, reliability) => {
  const sd = 12;
  const se = Math.sqrt((sd ** 2 * (1 - 0.6)) / 0.6);
  expect(weight({ mean: 120, sd }, se / Math.sqrt(k))).toBeCloseTo(reliability, 4);
});

// Out-of-office handbook 17.5: the variation of the mean of k office visits, in percent of the level.
test.each([
  [1, 8.6],
  [2, 6.0811],
  [3, 4.9652],
  [5, 3.846],
  [10, 2.7196],
  [13, 2.3852],
])('the mean of %i office visits varies by %d %%', (visits, percent) => {
  expect(assessmentSd('office', 'systolic', 100) / Math.sqrt(visits)).toBeCloseTo(percent, 4);
});
