import fc from 'fast-check';
// @ts-expect-error: jstat ships no types
import jstat from 'jstat';
import { expect, test } from 'vitest';
import { H1 } from '../outOfOffice/testing.js';
import { componentsOf, homeSe, ownSds } from './components.js';
import { type Belief, probabilityOver, updated } from './normalNormal.js';
import { agePrior } from './prior.js';
import { type UsualQuestion, usualResult } from './usualResult.js';

// Source of the checks: out-of-office handbook 17.4, to the printed digits.
test('by hand: prior 130 and 15, measured 142 with 6, threshold 135', () => {
  const belief = updated({ mean: 130, sd: 15 }, { mean: 142, se: 6 });
  expect(belief.mean).toBeCloseTo(140.3448, 4);
  expect(belief.sd).toBeCloseTo(5.5709, 4);
  expect(probabilityOver(belief, 135)).toBeCloseTo(0.8313, 4);
});

test('a man of 50 to 59: what is thought before', () => {
  const prior = agePrior('systolic', 55, 'm');
  expect(prior?.mean).toBe(126.57);
  expect(prior?.sd).toBeCloseTo(13.5364, 4);
  expect(agePrior('systolic', 50, 'm')).toEqual(prior);
  expect(agePrior('systolic', 59, 'm')).toEqual(prior);
  expect(agePrior('systolic', 60, 'm')).not.toEqual(prior);
  expect(agePrior('systolic', 49, 'm')).not.toEqual(prior);
  expect(agePrior('systolic', 17, 'm')).toBeNull();
  expect(agePrior('systolic', 95, 'f')?.mean).toBe(140.68);
  expect(agePrior('systolic', null, 'f')).toBeNull();
});

test.each([
  ['one visit', 10.885, 148, 140, 139.5845, 8.4826, 0.4805],
  ['two visits', 7.6969, 148, 140, 142.7642, 6.6909, 0.6602],
  ['three visits', 6.2845, 148, 140, 144.2, 5.7001, 0.7694],
  ['a week at home', 5.796, 138, 135, 136.2291, 5.3281, 0.5912],
  ['24 hours', 7.59, 138, 135, 135.266, 6.6203, 0.516],
])('a man of 50 to 59, %s', (_, se, mean, threshold, posterior, sd, probability) => {
  const belief = updated(agePrior('systolic', 55, 'm'), { mean, se });
  expect(belief.mean).toBeCloseTo(posterior, 3);
  expect(belief.sd).toBeCloseTo(sd, 3);
  expect(probabilityOver(belief, threshold)).toBeCloseTo(probability, 3);
});

test('one, two and three visits of 148 about 130', () => {
  const prior = agePrior('systolic', 55, 'm');
  const chance = (visits: number) =>
    probabilityOver(updated(prior, { mean: 148, se: 10.885 / Math.sqrt(visits) }), 130);
  [0.8707, 0.9718, 0.9936].forEach((value, k) => {
    expect(chance(k + 1)).toBeCloseTo(value, 4);
  });
});

test('without a prior a week of 138 about 135', () => {
  expect(probabilityOver(updated(null, { mean: 138, se: 5.796 }), 135)).toBeCloseTo(0.6976, 4);
});

test('the normal distribution is that of a general-purpose package', () => {
  const { normal } = jstat as { normal: { cdf: (x: number, mean: number, sd: number) => number } };
  for (let t = 100; t <= 180; t += 5) {
    expect(probabilityOver({ mean: 140, sd: 9 }, t)).toBeCloseTo(1 - normal.cdf(t, 140, 9), 9);
  }
});

test('H1: day-to-day variation of the series itself, a negative one cut at 0', () => {
  const days = [1, 2, 3, 4, 5, 6].map((day) =>
    H1.filter(({ localDay }) => localDay === day).map(({ systolic }) => systolic as number),
  );
  const own = ownSds(days);
  expect(own?.reading).toBeCloseTo(Math.sqrt(10.7222), 4);
  expect(own?.day).toBe(0);
  // Too few to tell.
  expect(ownSds(days.slice(0, 2))).toBeNull();
  // By hand: two values a day, days 120, 130, 140 without scatter: MS between 200, within 0, so variance 100 by day.
  expect(
    ownSds([
      [120, 120],
      [130, 130],
      [140, 140],
    ]),
  ).toEqual({ day: 10, reading: 0 });
});

test('a standard week has the published variation, and the long-term part stays', () => {
  const parts = componentsOf('systolic', 138, null);
  expect(homeSe(parts, 7, 28)).toBeCloseTo(0.042 * 138, 10);
  expect(homeSe(parts, 1e6, 4e6)).toBeCloseTo(parts.long, 3);
  expect(homeSe(componentsOf('diastolic', 86, null), 7, 28)).toBeCloseTo(0.039 * 86, 10);
});

const QUESTION: UsualQuestion = {
  component: 'systolic',
  ageYears: 55,
  sex: 'm',
  office: null,
  home: { mean: 138, readings: 28, days: 7, own: null },
  ambulatory: null,
  threshold: 135,
  offset: 0,
};

test('the question as a whole gives the row of the table, with no offset between the scales but its uncertainty', () => {
  const found = usualResult(QUESTION);
  expect(found?.probabilityFlatPrior).toBeCloseTo(0.6976, 4);
  // The prior is wider by the uncertain offset, so that it pulls less than the handbook's 136.23.
  expect(found?.mean).toBeGreaterThan(136.2291);
  expect(found?.mean).toBeLessThan(138);
  expect(found?.scale).toBe('home');
  expect(found?.oneMoreDay?.sd).toBeLessThan(found?.sd ?? 0);
});

test('near the threshold no number of days settles it; far from it nothing is needed', () => {
  expect(usualResult({ ...QUESTION, home: { mean: 136, readings: 28, days: 7, own: null } })).toMatchObject({
    isSettled: false,
    settledAfterDays: null,
  });
  expect(usualResult({ ...QUESTION, home: { mean: 150, readings: 28, days: 7, own: null } })).toMatchObject({
    isSettled: true,
    settledAfterDays: 0,
  });
  expect(usualResult({ ...QUESTION, home: null })).toBeNull();
});

test('a single office pressure: how wide the range is that cannot be classed about 140', () => {
  // Powers 2011, Ann Intern Med: with a within-person CV of 10 %, single systolic pressures between 120 and 157 (37 mmHg) could
  // not be classed with 80 % certainty. Its people were treated for a high pressure (from memory), so their usual pressures lie
  // about the threshold and not where a whole population has its own. Without any prior the range is 24 mmHg wide
  // (2 x 0.8416 x 14); with usual pressures about 140 that spread as much as one person's readings it is 33 mmHg, for a
  // prior draws every reading towards the threshold. The rest is theirs: they estimated spread and CV from their own visits.
  const se = 14;
  const undecided = (prior: Belief | null) => {
    const range = Array.from({ length: 101 }, (_, k) => 90 + k).filter((mean) => {
      const p = probabilityOver(updated(prior, { mean, se }), 140);
      return p > 0.2 && p < 0.8;
    });
    return [range[0], range.at(-1)];
  };
  expect(undecided(null)).toEqual([129, 151]);
  expect(undecided({ mean: 140, sd: 14 })).toEqual([124, 156]);
});

test('more evidence never widens the answer, and the answer lies between prior and evidence', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 90, max: 200 }),
      fc.integer({ min: 18, max: 95 }),
      fc.constantFrom('f' as const, 'm' as const),
      (mean, ageYears, sex) => {
        const one = usualResult({
          ...QUESTION,
          ageYears,
          sex,
          home: { mean, readings: 24, days: 6, own: null },
        });
        const more = usualResult({
          ...QUESTION,
          ageYears,
          sex,
          office: { mean: mean + 5, visits: 2 },
          home: { mean, readings: 24, days: 6, own: null },
        });
        if (one === null || more === null || one.prior === null) throw new Error('there is an answer');
        expect(more.sd).toBeLessThanOrEqual(one.sd);
        expect(one.mean).toBeGreaterThanOrEqual(Math.min(mean, one.prior.mean) - 1e-9);
        expect(one.mean).toBeLessThanOrEqual(Math.max(mean, one.prior.mean) + 1e-9);
        expect(one.oneMoreDay?.narrowerMmHg).toBeGreaterThan(0);
      },
    ),
  );
});
