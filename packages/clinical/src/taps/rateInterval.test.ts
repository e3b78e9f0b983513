import { expect, test } from 'vitest';
import { generator, independentIntervals, slowIntervals, tapped } from '../../fixtures/people.mjs';
import { tapResult } from './tapResult.js';

function intervalOf(seconds: readonly number[]): { low: number; high: number; rate: number } {
  const { lowPerMinute, highPerMinute, perMinute } = tapResult(
    { of: 'pulse', source: 'key', seconds },
    { repair: false },
  );
  return { low: lowPerMinute as number, high: highPerMinute as number, rate: perMinute as number };
}

test('holds the rate, evenly as a ratio', () => {
  const chance = generator(3);
  const { low, high, rate } = intervalOf(tapped(chance, independentIntervals(chance, 30, 0.8, 0.1), 0.02));
  expect(low).toBeLessThan(rate);
  expect(high / rate).toBeCloseTo(rate / low, 9);
});

test('null under five intervals, and why', () => {
  const four = tapResult({ of: 'pulse', source: 'key', seconds: [0, 0.8, 1.7, 2.4, 3.3] }, { repair: true });
  expect(four).toMatchObject({ lowPerMinute: null, highPerMinute: null });
  expect(four.why).toContainEqual({ code: 'too-few-for-range', figures: { intervals: 4, needs: 5 } });
  const five = tapResult(
    { of: 'pulse', source: 'key', seconds: [0, 0.8, 1.7, 2.4, 3.3, 4] },
    { repair: true },
  );
  expect(five.lowPerMinute).toBeGreaterThan(0);
});

test.each([
  ['independent', 0],
  ['slowly varying', 0.8],
])('covers the true rate in about 95 of 100 people, %s', (_, correlation) => {
  // A quick look, with room for chance (SD 1.1 in 400); the stated draw of 10,000 is in prove/taps.mjs.
  const chance = generator(95);
  let covered = 0;
  for (let i = 0; i < 400; i++) {
    const [rate, cv, taps] = [chance.uniform(40, 140), chance.uniform(0.01, 0.25), chance.whole(15, 80)];
    const how = { correlation, breathsPerMinute: chance.uniform(9, 24), breathingShare: 0.25 };
    const intervals =
      correlation === 0
        ? independentIntervals(chance, taps - 1, 60 / rate, cv)
        : slowIntervals(chance, taps - 1, 60 / rate, cv, how);
    const { low, high } = intervalOf(tapped(chance, intervals, chance.uniform(0.015, 0.035)));
    if (low <= rate && rate <= high) covered++;
  }
  expect(covered / 400).toBeGreaterThan(0.92);
  expect(covered / 400).toBeLessThan(1);
});

test('a tapper who is late in turn costs little: jitter touches only the ends', () => {
  const chance = generator(8);
  const jittery = intervalOf(tapped(chance, new Array(40).fill(0.8), 0.03));
  // Both ends off by 30 ms of 32 s: SD 0.13 %, so about 0.27 % either way.
  expect(jittery.high / jittery.rate - 1).toBeLessThan(0.008);
});

test('equal intervals are known no better than the step of their times', () => {
  const tenths = intervalOf(Array.from({ length: 13 }, (_, i) => i * 0.8));
  // Two times rounded to 0.1 s: SD 0.1 / root 6 of 9.6 s.
  expect(tenths.high / tenths.rate).toBeCloseTo(Math.exp((1.96 * 0.1) / Math.sqrt(6) / 9.6), 5);
  const fine = intervalOf(Array.from({ length: 13 }, (_, i) => i * 0.80001));
  expect(fine.high).toBeCloseTo(fine.low, 9);
});
