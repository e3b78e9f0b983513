import fc from 'fast-check';
// @ts-expect-error: jstat ships no types
import jstat from 'jstat';
import { expect, test } from 'vitest';
import { cosinor } from './cosinor.js';

const wave = (t: number) =>
  120 + 12 * Math.cos((2 * Math.PI * (t - 15)) / 24) + 4 * Math.cos((2 * Math.PI * (t - 9)) / 12);
const HOURS = Array.from({ length: 24 }, (_, t) => t);

// C1 and C2 of the out-of-office handbook 19.
test('C1: a curve with a known answer', () => {
  const one = cosinor(HOURS, HOURS.map(wave), 1);
  const [day] = one?.harmonics ?? [];
  expect(one?.mesor).toBeCloseTo(120, 10);
  expect(day?.beta).toBeCloseTo(-8.4853, 4);
  expect(day?.gamma).toBeCloseTo(-8.4853, 4);
  expect(day?.amplitude).toBeCloseTo(12, 10);
  expect(day?.peakHour).toBeCloseTo(15, 10);
  expect(day?.acrophaseDegrees).toBeCloseTo(-225, 8);
  expect(one?.r2).toBeCloseTo(0.9, 10);
  expect(one?.sse).toBeCloseTo(192, 8);
  expect(one?.f).toBeCloseTo(94.5, 8);
  expect(one?.df).toEqual([2, 21]);
  const two = cosinor(HOURS, HOURS.map(wave), 2);
  const half = two?.harmonics[1];
  expect(half?.beta).toBeCloseTo(0, 10);
  expect(half?.gamma).toBeCloseTo(-4, 10);
  expect(half?.peakHour).toBeCloseTo(9, 10);
  expect(two?.r2).toBeCloseTo(1, 10);
  // Highest and lowest of the curve on its minutes, against the formula itself.
  const minutes = Array.from({ length: 1440 }, (_, m) => wave(m / 60));
  expect(two?.highest.value).toBeCloseTo(Math.max(...minutes), 8);
  expect(two?.lowest.value).toBeCloseTo(Math.min(...minutes), 8);
});

test('C2: six points by hand', () => {
  const found = cosinor([0, 4, 8, 12, 16, 20], [112, 108, 122, 130, 134, 120], 1);
  expect(found?.mesor).toBeCloseTo(121, 10);
  expect(found?.harmonics[0]?.beta).toBeCloseTo(-10.6667, 4);
  expect(found?.harmonics[0]?.gamma).toBeCloseTo(-6.9282, 4);
  expect(found?.harmonics[0]?.amplitude).toBeCloseTo(12.7192, 4);
  expect(found?.harmonics[0]?.peakHour).toBeCloseTo(14.2003, 4);
  expect(found?.r2).toBeCloseTo(0.9668, 4);
  expect(found?.sse).toBeCloseTo(16.6667, 4);
  expect(found?.f).toBeCloseTo(43.68, 2);
  // The upper tail of F, by a general-purpose package (jstat, MIT).
  expect(found?.p).toBeCloseTo(
    1 -
      (jstat as { centralF: { cdf: (x: number, a: number, b: number) => number } }).centralF.cdf(
        found?.f ?? 0,
        2,
        3,
      ),
    10,
  );
});

test('standard errors: equally spaced, amplitude and peak have those of the textbook', () => {
  // Cornelissen 2014, Theor Biol Med Model 11:16: with n equally spaced values SE(A) = s root(2/n), SE of the angle that over A.
  const bent = HOURS.map((t) => wave(t) + (t % 2 === 0 ? 1 : -1));
  const one = cosinor(HOURS, bent, 1);
  const s = Math.sqrt((one?.sse ?? 0) / 21);
  expect(one?.mesorSe).toBeCloseTo(s / Math.sqrt(24), 8);
  expect(one?.harmonics[0]?.amplitudeSe).toBeCloseTo(s * Math.sqrt(2 / 24), 8);
  const angle = (s * Math.sqrt(2 / 24)) / (one?.harmonics[0]?.amplitude ?? 1);
  expect(one?.harmonics[0]?.peakHourSe).toBeCloseTo((angle * 24) / (2 * Math.PI), 8);
});

test('what cannot be told is null: few values, one time, no variation', () => {
  expect(cosinor([1, 2], [120, 130], 1)).toBeNull();
  expect(cosinor([3, 3, 3, 3], [120, 130, 125, 128], 1)).toBeNull();
  expect(
    cosinor(
      HOURS,
      HOURS.map(() => 120),
      1,
    ),
  ).toBeNull();
  // As many values as coefficients: a fit, and no test of it.
  expect(cosinor([0, 8, 16], [120, 130, 110], 1)).toMatchObject({ f: null, p: null, mesorSe: null });
});

test('a day later is the same hour, and the fit is no worse with two harmonics', () => {
  const points = fc.array(
    fc.tuple(fc.double({ min: 0, max: 24, noNaN: true }), fc.integer({ min: 90, max: 180 })),
    {
      minLength: 12,
      maxLength: 60,
    },
  );
  fc.assert(
    fc.property(points, (list) => {
      const hours = list.map(([hour]) => hour);
      const values = list.map(([, value]) => value);
      const one = cosinor(hours, values, 1);
      const later = cosinor(
        hours.map((hour) => hour + 24),
        values,
        1,
      );
      const two = cosinor(hours, values, 2);
      if (one === null || later === null) return;
      expect(later.sse).toBeCloseTo(one.sse, 4);
      if (two !== null) expect(two.sse).toBeLessThanOrEqual(one.sse + 1e-6 * (1 + one.sse));
    }),
  );
});
