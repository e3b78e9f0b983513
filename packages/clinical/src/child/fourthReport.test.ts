import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { centilesOf, expectedPressure, standingOf } from './fourthReport.js';
import { heightCurve, heightZ, isHeightPossible } from './heightZ.js';

describe('heights by CDC 2000', () => {
  test('C104 (derived, appendix A): boy of 96.5 months', () => {
    expect(heightZ('m', 96, 128.1237)).toBeCloseTo(0, 3);
    expect(heightZ('m', 96, 135)).toBeCloseTo(1.172, 3);
  });

  test('C105 (derived, appendix A): girl of 60.5 months, 105 cm', () => {
    expect(heightZ('f', 60, 105)).toBeCloseTo(-0.628, 3);
    expect(heightZ('f', 60.9, 105)).toBe(heightZ('f', 60, 105));
    expect(heightZ('f', 61, 105)).not.toBe(heightZ('f', 60, 105));
  });

  // Bedside handbook, appendix A (found): printed 5th, 50th and 95th centiles; z 1.645 of the normal distribution.
  test.each([
    ['m', 96, 118.81, 128.12, 137.83],
    ['f', 60, 100.39, 107.96, 116.13],
  ] as const)('%s at %d months: 5th, 50th and 95th centile', (sex, months, p5, p50, p95) => {
    expect(heightZ(sex, months, p5)).toBeCloseTo(-1.645, 2);
    expect(heightZ(sex, months, p50)).toBeCloseTo(0, 2);
    expect(heightZ(sex, months, p95)).toBeCloseTo(1.645, 2);
  });

  test('each month of the range has a curve, rising with age', () => {
    for (const sex of ['f', 'm'] as const) {
      let before = 0;
      for (let months = 24; months < 216; months++) {
        const { m } = heightCurve(sex, months);
        expect(m).toBeGreaterThan(before);
        before = m;
      }
    }
    expect(() => heightCurve('f', 23.9)).toThrow();
    expect(() => heightCurve('f', 240)).toThrow();
  });

  test('where the power is next to nothing it is a logarithm, without a step', () => {
    // Girl, 102.5 months: L = 0.0027; the formula and its limit differ by less than they are printed to.
    const { l, m, s } = heightCurve('f', 102);
    expect(l).toBe(0.0027);
    expect(heightZ('f', 102, 140)).toBeCloseTo(Math.log(140 / m) / s, 2);
  });
});

describe('the regression of the Fourth Report', () => {
  const boy12 = { sex: 'm', ageMonths: 144, heightZ: 1.28 } as const;
  const girl5 = { sex: 'f', ageMonths: 60, heightZ: heightZ('f', 60, 105) } as const;
  const boy8 = { sex: 'm', ageMonths: 96, heightZ: heightZ('m', 96, 135) } as const;

  test('C101 (derived, 6.4): boy of 12, height z 1.28, systolic 120', () => {
    expect(expectedPressure(boy12, 'systolic')).toBeCloseTo(109.458, 3);
    expect(standingOf(boy12, 'systolic', 120).z).toBeCloseTo(0.984, 3);
    expect(standingOf(boy12, 'systolic', 120).centile).toBeCloseTo(83.7, 1);
  });

  test('girl of 5, 105 cm, 104/70 (6.4, derived)', () => {
    // Printed -0.6277, from a median with one more decimal than the table here.
    expect(girl5.heightZ).toBeCloseTo(-0.6277, 3);
    expect(expectedPressure(girl5, 'systolic')).toBeCloseTo(91.795, 3);
    expect(expectedPressure(girl5, 'diastolic')).toBeCloseTo(53.671, 3);
    expect(standingOf(girl5, 'systolic', 104).z).toBeCloseTo(1.164, 3);
    expect(standingOf(girl5, 'systolic', 104).centile).toBeCloseTo(87.8, 1);
    expect(standingOf(girl5, 'diastolic', 70).z).toBeCloseTo(1.49, 3);
    expect(standingOf(girl5, 'diastolic', 70).centile).toBeCloseTo(93.2, 1);
    const shown = (centiles: object) => Object.values(centiles).map((mmHg) => Math.round(mmHg * 10) / 10);
    expect(shown(centilesOf(girl5, 'systolic'))).toEqual([105.2, 109, 116.2]);
    expect(shown(centilesOf(girl5, 'diastolic'))).toEqual([67.7, 71.7, 79.2]);
  });

  test('boy of 8, 135 cm, 118/76 (6.4, derived)', () => {
    expect(boy8.heightZ).toBeCloseTo(1.1724, 3);
    expect(expectedPressure(boy8, 'systolic')).toBeCloseTo(101.894, 3);
    expect(expectedPressure(boy8, 'diastolic')).toBeCloseTo(60.706, 3);
    expect(standingOf(boy8, 'systolic', 118)).toMatchObject({ z: expect.closeTo(1.503, 3) });
    expect(standingOf(boy8, 'systolic', 118).centile).toBeCloseTo(93.4, 1);
    expect(standingOf(boy8, 'diastolic', 76)).toMatchObject({ z: expect.closeTo(1.318, 3) });
    expect(standingOf(boy8, 'diastolic', 76).centile).toBeCloseTo(90.6, 1);
    expect(centilesOf(boy8, 'systolic').p95).toBeCloseTo(119.5, 1);
    expect(centilesOf(boy8, 'diastolic').p95).toBeCloseTo(79.8, 1);
  });

  test.each([
    // Bedside handbook 8 (derived; printed cells found in Ma 2016, Hypertension 68:614, table 1).
    ['C102', 'm', 10, 'systolic', 119.82, 119],
    ['C103', 'f', 17, 'diastolic', 84.35, 84],
  ] as const)(
    '%s: the printed 95th centile leaves the decimals off',
    (_c, sex, years, component, p95, printed) => {
      const found = centilesOf({ sex, ageMonths: years * 12, heightZ: 0 }, component).p95;
      expect(found).toBeCloseTo(p95, 2);
      expect(Math.floor(found)).toBe(printed);
    },
  );

  test('boy of 1 at the median height: the printed row (found, bedside handbook 6.4)', () => {
    const boy1 = { sex: 'm', ageMonths: 12, heightZ: 0 } as const;
    const row = (component: 'systolic' | 'diastolic') => {
      const { p90, p95, p99 } = centilesOf(boy1, component);
      return [expectedPressure(boy1, component), p90, p95, p99];
    };
    expect(row('systolic').map(Math.floor)).toEqual([85, 99, 103, 110]);
    expect(row('diastolic').map(Math.floor)).toEqual([37, 52, 56, 64]);
    const formula = [85.46, 99.19, 103.08, 110.37, 37.38, 52.25, 56.46, 64.37];
    for (const [at, mmHg] of [...row('systolic'), ...row('diastolic')].entries()) {
      expect(mmHg).toBeCloseTo(formula[at] ?? Number.NaN, 2);
    }
  });

  test('a pressure at a limit has the centile of that limit, and a higher one a higher centile', () => {
    const child = fc.record({
      sex: fc.constantFrom('f', 'm'),
      ageMonths: fc.integer({ min: 24, max: 215 }),
      heightZ: fc.double({ min: -3, max: 3, noNaN: true }),
    });
    fc.assert(
      fc.property(child, fc.constantFrom('systolic', 'diastolic'), (one, component) => {
        const { p90, p95, p99 } = centilesOf(one, component);
        expect(standingOf(one, component, p90).centile).toBeCloseTo(90, 1);
        expect(standingOf(one, component, p95).centile).toBeCloseTo(95, 1);
        expect(standingOf(one, component, p99).centile).toBeCloseTo(99, 1);
        expect(standingOf(one, component, p90 + 1).centile).toBeGreaterThan(90);
      }),
    );
  });
});

// Our decision: further than 5 SD from the median (CDC 2000) a height is a slip. Boy of 8: L, M, S by appendix A.
test('a height is possible up to 5 SD from the median, on both sides', () => {
  const { l, m, s } = heightCurve('m', 96);
  const at = (z: number) => isHeightPossible('m', 96, m * (1 + l * s * z) ** (1 / l));
  expect([-5.01, -4.99, 4.99, 5.01].map(at)).toEqual([false, true, true, false]);
});

// Bedside handbook 6.4: the regression climbs with the height; the limits of a short child (5th centile) are lowest.
test('no child from the 5th centile of height up to the tallest has lower 95th centiles than a short one', () => {
  for (const sex of ['f', 'm'] as const)
    for (let z = -1.6; z <= 5; z += 0.1)
      for (const component of ['systolic', 'diastolic'] as const) {
        const of = (heightZ: number) => centilesOf({ sex, ageMonths: 96, heightZ }, component).p95;
        expect(of(z)).toBeGreaterThan(of(-1.645));
      }
});
