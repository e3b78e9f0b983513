import fc from 'fast-check';
import { expect, test } from 'vitest';
import { roundedText, roundTo } from './rounding.js';

test.each([
  // Bedside handbook 0.2 and 8 (C050, C059, C080), and docs/conventions.md section 4.
  [38.05, 1, '38.1'],
  [147.5, 0, '148'],
  [90.67, 0, '91'],
  [147.33, 0, '147'],
  [139.6, 1, '139.6'],
  [36.04, 1, '36.0'],
  // Decimal text, where binary rounding is known to fail.
  [1.005, 2, '1.01'],
  [0.615, 2, '0.62'],
  [10.235, 2, '10.24'],
  [8.345, 2, '8.35'],
  // Half away from zero on both sides.
  [-0.5, 0, '-1'],
  [-147.5, 0, '-148'],
  [-2.25, 1, '-2.3'],
  [0.5, 0, '1'],
  // No minus before nothing; zeros kept; carries.
  [-0.4, 0, '0'],
  [-0, 1, '0.0'],
  [36, 1, '36.0'],
  [9.995, 2, '10.00'],
  [999.5, 0, '1000'],
  [0.05, 1, '0.1'],
  [0.04, 1, '0.0'],
  [0.005, 1, '0.0'],
  // Exponents in the text of the double.
  [1e21, 0, '1000000000000000000000'],
  [1.5e-7, 7, '0.0000002'],
  [1.5e-7, 8, '0.00000015'],
  [5e-324, 2, '0.00'],
  [1.7976931348623157e308, 0, `17976931348623157${'0'.repeat(292)}`],
])('%d to %d decimals is %s', (value, decimals, text) => {
  expect(roundedText(value, decimals)).toBe(text);
  expect(roundTo(value, decimals)).toBe(Number(text));
});

test('agrees with whole-number arithmetic on the decimal text', () => {
  // The oracle scales the decimal numeral to a whole number and divides with BigInt.
  fc.assert(
    fc.property(
      fc.bigInt({ min: -(10n ** 12n), max: 10n ** 12n }),
      fc.integer({ min: 0, max: 9 }),
      fc.integer({ min: 0, max: 9 }),
      (scaled, places, decimals) => {
        const value = Number(`${scaled}e-${places}`);
        const finer = Math.max(places, decimals);
        const whole = scaled * 10n ** BigInt(finer - places);
        const unit = 10n ** BigInt(finer - decimals);
        const away = (2n * (whole < 0n ? -whole : whole) + unit) / (2n * unit);
        const digits = String(away).padStart(decimals + 1, '0');
        const cut = digits.length - decimals;
        const text = decimals === 0 ? digits : `${digits.slice(0, cut)}.${digits.slice(cut)}`;
        expect(roundedText(value, decimals)).toBe(scaled < 0n && away !== 0n ? `-${text}` : text);
      },
    ),
    { numRuns: 2000 },
  );
});

test('any double is moved by at most half a unit and stays put when rounded again', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -1e6, max: 1e6, noNaN: true }),
      fc.integer({ min: 0, max: 6 }),
      (value, decimals) => {
        const rounded = roundTo(value, decimals);
        expect(Math.abs(rounded - value)).toBeLessThanOrEqual(0.5 * 10 ** -decimals + 1e-9);
        expect(roundTo(rounded, decimals)).toBe(rounded);
      },
    ),
  );
});

test.each([
  [Number.NaN, 0],
  [Number.POSITIVE_INFINITY, 0],
  [1, -1],
  [1, 0.5],
])('throws for %d to %d decimals', (value, decimals) => {
  expect(() => roundedText(value, decimals)).toThrow(/Cannot round/);
});
