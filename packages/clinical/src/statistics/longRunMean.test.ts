import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cosinePowers } from './cosinePowers.js';
import { longRunHalfWidth } from './longRunMean.js';
import { sampleSd } from './sampleSd.js';
import { tQuantile } from './studentT.js';
import { strongestWave } from './wave.js';

function halfWidth(values: readonly number[], probability = 0.95): number {
  const n = values.length;
  const series = { n, powers: cosinePowers(values, n - 1), wave: null, furtherVariance: 0 };
  return longRunHalfWidth(series, probability);
}

/** A series without any dependence: each of 60 places once, in an order that a linear congruence mixes. */
const MIXED = Array.from({ length: 60 }, (_, i) => ((i * 37) % 61) / 61);

/** A quarter of such values, each four times in a row: a quarter as many say as much about the mean. */
const SLOW = MIXED.slice(0, 15).flatMap((value) => [value, value, value, value]);

test('of independent values it is near the textbook t interval, and not narrower', () => {
  // Textbook: t(0.975, n - 1) SD / root n. The series may be seen to wander a little: up to a third wider.
  const textbook = (tQuantile(0.975, 59) * (sampleSd(MIXED) as number)) / Math.sqrt(60);
  expect(halfWidth(MIXED)).toBeGreaterThan(0.9 * textbook);
  expect(halfWidth(MIXED)).toBeLessThan(1.33 * textbook);
});

test('values that vary slowly say less about the mean', () => {
  expect(halfWidth(SLOW)).toBeGreaterThan(1.5 * halfWidth(MIXED));
});

test('timing errors that one value gives the next nearly cancel in the mean', () => {
  // A steady 1 with taps early and late in turn: only the first and the last error touch the mean.
  const errors = MIXED.map((value) => value - 0.5);
  const seen = errors.slice(1).map((error, i) => 1 + error - (errors[i] as number));
  expect(halfWidth(seen)).toBeLessThan(
    0.4 * halfWidth(seen.toSorted((a, b) => ((a * 7919) % 1) - ((b * 7919) % 1))),
  );
});

test('a wave that is known for one averages out', () => {
  // Twelve whole turns, so that the wave itself leaves the mean alone.
  const breathing = MIXED.map((value, t) => 0.1 * value + Math.cos((Math.PI * 24 * (t + 0.5)) / 60));
  const powers = cosinePowers(breathing, 59);
  const wave = strongestWave(powers, 60, { shortest: 3, longest: 12 });
  const known = longRunHalfWidth({ n: 60, powers, wave, furtherVariance: 0 }, 0.95);
  expect(known).toBeLessThan(0.6 * halfWidth(breathing));
  expect(known).toBeGreaterThan(0.1 * halfWidth(MIXED));
});

test('values that are all alike give 0, or what is known from elsewhere', () => {
  expect(halfWidth(new Array(12).fill(0))).toBe(0);
  const powers = new Float64Array(11);
  const known = longRunHalfWidth({ n: 12, powers, wave: null, furtherVariance: 0.04 }, 0.95);
  expect(known).toBeCloseTo(1.96 * 0.2, 3);
});

test('scales with the values, does not see a shift or a turn end for end, grows with the probability', () => {
  const list = fc.array(fc.integer({ min: 300, max: 2000 }), { minLength: 5, maxLength: 80 });
  fc.assert(
    fc.property(list, (values) => {
      const width = halfWidth(values);
      const near = (other: number) => expect(Math.abs(other - width)).toBeLessThanOrEqual(1e-6 * (1 + width));
      near(halfWidth(values.map((value) => value * 3)) / 3);
      near(halfWidth(values.map((value) => value + 50)));
      near(halfWidth([...values].reverse()));
      expect(halfWidth(values, 0.99)).toBeGreaterThanOrEqual(width);
    }),
  );
});
