import { mean } from 'simple-statistics';
import { expect, test } from 'vitest';
import { generator, independentIntervals, slowIntervals, tapped, timesOf } from '../../fixtures/people.mjs';
import { wholeIntervalsMs } from './intervalStatistics.js';
import { unrepairedTaps } from './repair.js';
import { tapJitter } from './tapJitter.js';

function jitterOf(seconds: readonly number[]) {
  return tapJitter(wholeIntervalsMs(unrepairedTaps({ of: 'pulse', source: 'key', seconds })));
}

test('is the root of minus the lag-one autocovariance, divisor m - 1', () => {
  const intervals = Array.from({ length: 40 }, (_, i) => 800 + ((i * 17) % 41));
  const seconds = timesOf(intervals.map((ms) => ms / 1000));
  const centre = mean(intervals);
  const products = intervals
    .slice(1)
    .map((interval, i) => (interval - centre) * ((intervals[i] as number) - centre));
  const covariance = products.reduce((sum, one) => sum + one, 0) / 39;
  expect(jitterOf(seconds).tapJitterMs).toBeCloseTo(Math.sqrt(-covariance), 6);
});

test('taps late in turn are no jitter: the model does not hold', () => {
  const { tapJitterMs, why } = jitterOf(Array.from({ length: 32 }, (_, i) => 0.8 * i + (i % 2) * 0.01));
  expect(tapJitterMs).toBeNull();
  expect(why).toMatchObject([{ code: 'jitter-cannot-be-told' }]);
});

test.each([15, 25, 40])('finds a jitter of %i ms apart from a person who varies beat by beat', (ms) => {
  const chance = generator(ms);
  const jitters: number[] = [];
  for (let i = 0; i < 200; i++) {
    const { tapJitterMs } = jitterOf(
      tapped(chance, independentIntervals(chance, 120, 0.85, 0.02), ms / 1000),
    );
    if (tapJitterMs !== null) jitters.push(tapJitterMs ** 2);
  }
  expect(jitters.length).toBeGreaterThan(100);
  expect(Math.sqrt(jitters.reduce((sum, one) => sum + one, 0) / jitters.length)).toBeCloseTo(ms, -1);
});

test('under 30 whole intervals it is not told', () => {
  const seconds = Array.from({ length: 30 }, (_, i) => 0.8 * i + ((i * i) % 7) * 0.01);
  expect(jitterOf(seconds).why).toEqual([
    { code: 'too-few-for-jitter', figures: { intervals: 29, needs: 30 } },
  ]);
});

test('a breathing person covers it up: null, never 0', () => {
  const chance = generator(4);
  const how = { correlation: 0, breathsPerMinute: 9, breathingShare: 0.99 };
  const { tapJitterMs, why } = jitterOf(tapped(chance, slowIntervals(chance, 60, 0.8, 0.1, how), 0.01));
  expect(tapJitterMs).toBeNull();
  expect(why[0]?.figures.autocorrelation).toBeGreaterThan(0);
  expect(jitterOf(Array.from({ length: 40 }, (_, i) => i)).tapJitterMs).toBeNull();
});
