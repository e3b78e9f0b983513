import { expect, test } from 'vitest';
import { intervalStatistics, wholeIntervalsMs } from './intervalStatistics.js';
import { type RepairedTaps, unrepairedTaps } from './repair.js';

/** Taps a hand's clock would give: the first at `from` seconds, then these intervals in ms. */
function tapsAt(from: number, intervals: readonly number[]): RepairedTaps {
  const seconds = [from];
  for (const interval of intervals) seconds.push((seconds.at(-1) as number) + interval / 1000);
  return unrepairedTaps({ of: 'pulse', source: 'file', seconds });
}

function statisticsOf(taps: RepairedTaps) {
  return intervalStatistics(taps, wholeIntervalsMs(taps));
}

// Bedside handbook 1.12, fixtures (derived), which are its check values C015 to C017 and one more.
const HANDBOOK = [
  {
    name: 'steady',
    intervals: [830, 840, 835, 825, 830, 840, 830, 835, 825, 830, 840, 835],
    expected: { mean: 832.92, cv: 0.0065, rmssd: 8.12, nrmssd: 0.0097, turning: 0.7, entropy: 0.49 },
  },
  {
    name: 'bigeminy',
    intervals: [500, 1000, 500, 1000, 500, 1000, 500, 1000, 500, 1000, 500, 1000],
    expected: { mean: 750, cv: 0.348, rmssd: 500, nrmssd: 0.667, turning: 1, entropy: 0.25 },
  },
  {
    name: 'AF-like',
    intervals: [620, 910, 540, 780, 1020, 650, 870, 590, 960, 700, 820, 560],
    expected: { mean: 751.67, cv: 0.219, rmssd: 283.87, nrmssd: 0.378, turning: 0.9, entropy: 0.855 },
  },
  {
    name: 'breathing swing',
    intervals: [780, 800, 830, 860, 880, 870, 840, 810, 780, 770, 790, 820],
    expected: { mean: 819.17, cv: 0.0455, rmssd: 24.86, nrmssd: 0.0304, turning: 0.2, entropy: 0.855 },
  },
] as const;

test.each(HANDBOOK)('$name, wherever the clock has its zero', ({ intervals, expected }) => {
  for (const from of [0, -3.21, 0.1, 86_400, 1_764_000_000]) {
    const result = statisticsOf(tapsAt(from, intervals));
    expect(result.meanIntervalMs).toBeCloseTo(expected.mean, 2);
    expect(result.cv).toBeCloseTo(expected.cv, expected.cv < 0.1 ? 4 : 3);
    expect(result.rmssdMs).toBeCloseTo(expected.rmssd, 2);
    expect(result.nrmssd).toBeCloseTo(expected.nrmssd, expected.nrmssd < 0.1 ? 4 : 3);
    expect(result.turningPointRatio).toBeCloseTo(expected.turning, 3);
    expect(result.shannonEntropy).toBeCloseTo(expected.entropy, 3);
  }
});

test('equal intervals are equal, not a histogram of binary digits', () => {
  const result = statisticsOf(tapsAt(0.1, new Array(20).fill(800)));
  expect(result).toMatchObject({ sdIntervalMs: 0, rmssdMs: 0, turningPointRatio: 0, shannonEntropy: 0 });
});

test('an interval in which taps were missed counts in the mean and nowhere else', () => {
  // Six beats in 4.8 s; the whole intervals are 790 and 810, twice, on either side of a gap of 1.6 s.
  const seconds = [0, 0.79, 1.6, 3.2, 3.99, 4.8];
  const result = statisticsOf({ seconds, beatsToNext: [1, 1, 2, 1, 1], repairs: [], flags: [] });
  expect(result.meanIntervalMs).toBeCloseTo(800, 9);
  expect(result.sdIntervalMs).toBeCloseTo(Math.sqrt(400 / 3), 6);
  expect(result.rmssdMs).toBeCloseTo(20, 6);
  expect(result.turningPointRatio).toBeNull();
});

test('null is not defined: one interval has a mean and no spread', () => {
  const none = statisticsOf(tapsAt(2, []));
  expect(Object.values(none).every((value) => value === null)).toBe(true);
  expect(statisticsOf(tapsAt(2, [800]))).toMatchObject({ sdIntervalMs: null, cv: null, rmssdMs: null });
});
