import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cosinePowers } from './cosinePowers.js';

const values = fc.array(fc.double({ min: -10, max: 10, noNaN: true }), { minLength: 2, maxLength: 90 });

test('all powers together are the sum of squares about the mean (Parseval)', () => {
  fc.assert(
    fc.property(values, (list) => {
      const centre = list.reduce((sum, value) => sum + value, 0) / list.length;
      const squares = list.reduce((sum, value) => sum + (value - centre) ** 2, 0);
      const powers = cosinePowers(list, list.length - 1);
      expect(powers.reduce((sum, power) => sum + power, 0)).toBeCloseTo(squares, 7);
    }),
  );
});

test('a cosine has its power at its own place, in series of even and of odd length', () => {
  for (const n of [20, 21]) {
    const list = Array.from({ length: n }, (_, t) => 5 + 3 * Math.cos((Math.PI * 4 * (t + 0.5)) / n));
    const powers = cosinePowers(list, n - 1);
    expect(powers[3]).toBeCloseTo((9 * n) / 2, 9);
    expect(powers.reduce((sum, power) => sum + power, 0)).toBeCloseTo((9 * n) / 2, 9);
  }
});
