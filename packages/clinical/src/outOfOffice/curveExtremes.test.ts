import fc from 'fast-check';
import { expect, test } from 'vitest';
import { curveExtremes } from './curveExtremes.js';
import { MINUTE_WAVES, WAVES_OF_HOUR } from './dayWaves.js';

/** Every minute of a day by the formula itself; the first of equal ones. */
function byEveryMinute(b1: number, g1: number, b2: number, g2: number) {
  const wave = (minute: number) => {
    const angle = (2 * Math.PI * minute) / 1440;
    return b1 * Math.cos(angle) + g1 * Math.sin(angle) + b2 * Math.cos(2 * angle) + g2 * Math.sin(2 * angle);
  };
  const all = Array.from({ length: 1440 }, (_, minute) => wave(minute));
  return { wave, most: Math.max(...all), least: Math.min(...all) };
}

test('the extremes are those of every minute, whatever the waves', () => {
  const size = fc.oneof(fc.double({ min: -40, max: 40, noNaN: true }), fc.constant(0), fc.integer({ min: -9, max: 9 })); // biome-ignore format: one thought
  fc.assert(
    fc.property(size, size, size, size, (b1, g1, b2, g2) => {
      const found = curveExtremes(100, { b1, g1, b2, g2 });
      const { wave, most, least } = byEveryMinute(b1, g1, b2, g2);
      expect(found.highest.value).toBeCloseTo(100 + most, 9);
      expect(found.lowest.value).toBeCloseTo(100 + least, 9);
      expect(wave(found.highest.hour * 60)).toBeCloseTo(most, 9);
      expect(wave(found.lowest.hour * 60)).toBeCloseTo(least, 9);
    }),
    { numRuns: 1000 },
  );
});

test('a wave of 24 hours is highest at its peak and lowest half a day from it', () => {
  expect(curveExtremes(120, { b1: 10, g1: 0, b2: 0, g2: 0 })).toEqual({
    highest: { hour: 0, value: 130 },
    lowest: { hour: 12, value: 110 },
  });
  expect(curveExtremes(120, { b1: 0, g1: 10, b2: 0, g2: 0 })).toMatchObject({
    highest: { hour: 6 },
    lowest: { hour: 18 },
  });
});

test('of a wave of 24 hours alone it is the very minute that a look at all of them finds, the first of equal ones', () => {
  const size = fc.oneof(
    fc.double({ min: -40, max: 40, noNaN: true }).filter((mmHg) => Math.abs(mmHg) > 1e-9),
    fc.integer({ min: -9, max: 9 }),
  );
  const minute = fc.integer({ min: 0, max: 2879 }).map((half) => (2 * Math.PI * half) / 2880);
  // Peaks anywhere, and peaks on a minute or half way between two.
  const wave = fc.oneof(
    fc.record({ b1: size, g1: size }),
    minute.map((angle) => ({ b1: 10 * Math.cos(angle), g1: 10 * Math.sin(angle) })),
  );
  fc.assert(
    fc.property(wave, ({ b1, g1 }) => {
      const all = Array.from({ length: 1440 }, (_, k) => b1 * (MINUTE_WAVES[k * WAVES_OF_HOUR] as number) + g1 * (MINUTE_WAVES[k * WAVES_OF_HOUR + 1] as number)); // biome-ignore format: one formula
      const [most, least] = [Math.max(...all), Math.min(...all)];
      expect(curveExtremes(0, { b1, g1, b2: 0, g2: 0 })).toEqual({
        highest: { hour: all.indexOf(most) / 60, value: 0 + most },
        lowest: { hour: all.indexOf(least) / 60, value: 0 + least },
      });
    }),
    { numRuns: 2000 },
  );
});

test('of equal minutes the first: two peaks of a wave of 12 hours, a curve without waves', () => {
  expect(curveExtremes(0, { b1: 0, g1: 0, b2: 1, g2: 0 }).highest).toEqual({ hour: 0, value: 1 });
  expect(curveExtremes(80, { b1: 0, g1: 0, b2: 0, g2: 0 })).toEqual({
    highest: { hour: 0, value: 80 },
    lowest: { hour: 0, value: 80 },
  });
});
