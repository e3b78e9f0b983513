import { expect, test } from 'vitest';
import { mean } from '../statistics/mean.js';
import { sampleSd } from '../statistics/sampleSd.js';
import { farFromMean } from './artefacts.js';
import { dayPartOf } from './homeDays.js';
import { homeResult, NOTHING_BY_HAND } from './homeResult.js';
import { DEFAULT_HOME_RULES, type HomeRules } from './homeRules.js';
import { type SeriesReading, valuesOf } from './seriesReading.js';
import { stiffnessIndex } from './stiffness.js';
import { A1, H1, readingAt } from './testing.js';

// The tables of the out-of-office handbook 19, row by row in their order, to the printed digits. All series are invented.

const ALL: HomeRules = { ...DEFAULT_HOME_RULES, droppedDays: 0, leastDays: null, leastReadings: null };
const isMorning = (one: SeriesReading) => dayPartOf(one, ALL) === 'morning';
const isFirst = ({ index }: SeriesReading) => index % 2 === 1;
const days = (from: number, to: number) => (one: SeriesReading) =>
  one.localDay + 1 >= from && one.localDay + 1 <= to;

type Selection = readonly [
  name: string,
  is: (one: SeriesReading) => boolean,
  n: number,
  systolic: number,
  diastolic: number,
  pulse: number,
  systolicSd: number,
  diastolicSd: number,
];
const SELECTIONS: readonly Selection[] = [
  ['all', () => true, 28, 138.1071, 85.8214, 74.3571, 4.9691, 3.0918],
  ['day 1 dropped', days(2, 7), 24, 136.5833, 84.9583, 73.6667, 3.1885, 2.2161],
  ['mornings, all days', isMorning, 14, 140.6429, 87.6429, 73, 4.4826, 2.5901],
  ['evenings, all days', (one) => !isMorning(one), 14, 135.5714, 84, 75.7143, 4.1642, 2.4495],
  ['mornings 2-7', (one) => isMorning(one) && days(2, 7)(one), 12, 139.0833, 86.75, 72.25, 2.1088, 1.2881],
  [
    'evenings 2-7',
    (one) => !isMorning(one) && days(2, 7)(one),
    12,
    134.0833,
    83.1667,
    75.0833,
    1.7816,
    1.2673,
  ],
  ['first of pair, 2-7', (one) => isFirst(one) && days(2, 7)(one), 12, 137.8333, 85.8333, 74, 3.2146, 2.1672],
  [
    'second of pair, 2-7',
    (one) => !isFirst(one) && days(2, 7)(one),
    12,
    135.3333,
    84.0833,
    73.3333,
    2.7414,
    1.9752,
  ],
  ['days 1-3', days(1, 3), 12, 139.9167, 86.9167, 75.5833, 6.2734, 3.6794],
  ['days 2-3', days(2, 3), 8, 136.25, 84.875, 74.125, 3.1053, 2.031],
  ['days 2-4', days(2, 4), 12, 137, 85.25, 74.0833, 3.2474, 2.1794],
  ['day 1 only', days(1, 1), 4, 147.25, 91, 78.5, 3.7749, 2.582],
  ['last 5 days', days(3, 7), 20, 136.5, 84.9, 73.4, 3.2363, 2.2688],
];

test.each(SELECTIONS)('H1, %s', (_, is, n, systolic, diastolic, pulse, systolicSd, diastolicSd) => {
  const found = homeResult(H1.filter(is), NOTHING_BY_HAND, ALL);
  expect(found.used).toBe(n);
  expect(found.mean.systolic).toBeCloseTo(systolic, 4);
  expect(found.mean.diastolic).toBeCloseTo(diastolic, 4);
  expect(found.mean.pulse).toBeCloseTo(pulse, 4);
  expect(found.sd.systolic).toBeCloseTo(systolicSd, 4);
  expect(found.sd.diastolic).toBeCloseTo(diastolicSd, 4);
});

test('H1: systolic is at 135 by every selection but the evenings, diastolic at 85 only with the first day', () => {
  const meansOf = (is: Selection[1]) => homeResult(H1.filter(is), NOTHING_BY_HAND, ALL).mean;
  const low = SELECTIONS.filter(([, is]) => (meansOf(is).systolic ?? 0) < 135).map(([name]) => name);
  expect(low).toEqual(['evenings 2-7']);
  expect(meansOf(() => true).diastolic).toBeGreaterThanOrEqual(85);
  expect(meansOf(days(2, 7)).diastolic).toBeLessThan(85);
});

test('A1: the stiffness index over the whole, awake and asleep; the double product is not that of the means', () => {
  const asleep = A1.filter(({ minuteOfDay }) => minuteOfDay >= 1380 || minuteOfDay < 420);
  const awake = A1.filter((one) => !asleep.includes(one));
  const of = (readings: readonly SeriesReading[]) =>
    stiffnessIndex(valuesOf(readings, 'systolic'), valuesOf(readings, 'diastolic'));
  expect((of(A1)?.r ?? 0) ** 2).toBeCloseTo(0.9944, 4);
  expect(of(A1)?.intercept).toBeCloseTo(-22.001, 4);
  expect(of(awake)?.index).toBeCloseTo(0.2269, 4);
  expect(of(awake)?.r).toBeCloseTo(0.9844, 4);
  expect(of(asleep)?.index).toBeCloseTo(0.222, 4);
  expect(of(asleep)?.r).toBeCloseTo(0.9987, 4);
  // "Wrong way": mean systolic times mean pulse.
  const meanOf = (of: 'systolic' | 'pulse') => mean(valuesOf(A1, of)) ?? 0;
  expect(meanOf('systolic') * meanOf('pulse')).toBeCloseTo(9729.7719, 4);
});

test('A3: the raw list, and what the rule of two SDs does to it and to what is left', () => {
  const typed = '142/88 76, 139/86 74, 264/92 80, 147/90 79, 138/134 77, 141/38 75, 145/89 212, 136/85 73, 69/44 70, 140/87 78, 208/51 81, 137/84 75'; // biome-ignore format: one list
  const raw = typed.split(', ').map((one, k) => readingAt(k + 1, 0, `${8 + k}:00`, one));
  const found = homeResult(raw, NOTHING_BY_HAND, ALL);
  expect(found.mean.systolic).toBeCloseTo(150.5, 4);
  expect(found.mean.diastolic).toBeCloseTo(80.6667, 4);
  expect(found.mean.pulse).toBeCloseTo(87.5, 4);
  const systolics = valuesOf(raw, 'systolic');
  const limits = (values: readonly number[]) => {
    const centre = values.reduce((a, b) => a + b, 0) / values.length;
    const two = 2 * (sampleSd(values) as number);
    return [centre - two, centre + two];
  };
  expect(limits(systolics)[0]).toBeCloseTo(57.4174, 4);
  expect(limits(systolics)[1]).toBeCloseTo(243.5826, 4);
  expect(farFromMean(systolics, 2)).toEqual([2]);
  const kept = raw.filter(({ index }) => [1, 2, 4, 8, 10, 12].includes(index));
  const [s, d] = [valuesOf(kept, 'systolic'), valuesOf(kept, 'diastolic')];
  expect(limits(s)[0]).toBeCloseTo(132.2252, 4);
  expect(limits(s)[1]).toBeCloseTo(148.1081, 4);
  expect(limits(d)[0]).toBeCloseTo(82.3462, 4);
  expect(limits(d)[1]).toBeCloseTo(90.9872, 4);
  expect([...farFromMean(s, 2), ...farFromMean(d, 2)]).toEqual([]);
});
