import { createRequire } from 'node:module';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inUnit, keptFrom, UNITS, type Unit } from './unit.js';

type Ucum = {
  readonly validateUnitString: (unit: string) => { readonly status: string };
  readonly convertUnitTo: (
    from: string,
    value: number,
    to: string,
  ) => { readonly status: string; readonly toVal: number | null };
};
// The library brings no types.
const { UcumLhcUtils } = createRequire(import.meta.url)('@lhncbc/ucum-lhc') as {
  readonly UcumLhcUtils: { readonly getInstance: () => Ucum };
};
const ucum = UcumLhcUtils.getInstance();

function byUcum(from: string, value: number, to: string): number {
  const answer = ucum.convertUnitTo(from, value, to);
  expect(answer.status).toBe('succeeded');
  return answer.toVal as number;
}

const OTHERS = Object.values(UNITS).flatMap(([kept, ...others]) =>
  others.map((unit) => [unit, kept] as const),
);

describe.each(OTHERS)('%s beside the kept %s', (unit, kept) => {
  test('is what the UCUM library says, both ways', () => {
    for (const value of [-40, 0, 0.1, 1, 32, 62.5, 98.6, 100.4, 150, 212, 400]) {
      expect(keptFrom(value, unit)).toBeCloseTo(byUcum(unit, value, kept), 8);
      expect(inUnit(value, unit)).toBeCloseTo(byUcum(kept, value, unit), 7);
    }
  });

  test('what was typed with up to six decimals comes back digit for digit', () => {
    const typed = fc.tuple(
      fc.integer({ min: -1000, max: 1000 }),
      fc.nat(999_999),
      fc.integer({ min: 0, max: 6 }),
    );
    fc.assert(
      fc.property(typed, ([whole, part, decimals]) => {
        const text =
          decimals === 0 ? `${whole}` : `${whole}.${String(part).padStart(6, '0').slice(0, decimals)}`;
        const value = Number(text);
        expect(inUnit(keptFrom(value, unit), unit)).toBe(value === 0 ? 0 : value);
      }),
      { numRuns: 2000 },
    );
  });
});

test('units are UCUM codes', () => {
  for (const unit of Object.values(UNITS).flat()) {
    expect(ucum.validateUnitString(unit).status, unit).toBe('valid');
  }
});

test.each<[Unit, number, number]>([
  // The limits of bedside handbook 4.1 that are whole in both: at them, and on both sides in the last digit of a thermometer.
  ['[degF]', 100.4, 38],
  ['[degF]', 105.8, 41],
  ['[degF]', 95, 35],
  ['[degF]', 113, 45],
  ['[degF]', 77, 25],
])('%s %d is exactly %d', (unit, value, kept) => {
  expect(keptFrom(value, unit)).toBe(kept);
  expect(keptFrom(value - 0.1, unit)).toBeLessThan(kept);
  expect(keptFrom(value + 0.1, unit)).toBeGreaterThan(kept);
});

test('a kept value stays the very same in the unit it is kept in', () => {
  expect(keptFrom(37.123_456_789_012, 'Cel')).toBe(37.123_456_789_012);
  expect(inUnit(170.000_000_000_1, 'cm')).toBe(170.000_000_000_1);
});
