import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inverse } from './inverse.js';

test('two rows by hand; rows that need another order', () => {
  expect([...(inverse(Float64Array.of(4, 7, 2, 6), 2) ?? [])].map((one) => Math.round(one * 1e9) / 1e9)).toEqual([0.6, -0.7, -0.2, 0.4]); // biome-ignore format: one thought
  expect([...(inverse(Float64Array.of(0, 1, 1, 0), 2) ?? [])]).toEqual([0, 1, 1, 0]);
});

test('the first rows alone of a wider matrix: what was not taken is 0', () => {
  expect([...(inverse(Float64Array.of(2, 0, 9, 0, 4, 9, 9, 9, 9), 2, 3) ?? [])]).toEqual([0.5, 0, 0, 0, 0.25, 0, 0, 0, 0]); // biome-ignore format: one thought
});

test('however large what is not taken is, it says nothing of what is', () => {
  expect([...(inverse(Float64Array.of(2, 0, 1e15, 0, 4, 1e15, 1e15, 1e15, 1e15), 2, 3) ?? [])].slice(0, 5)).toEqual([0.5, 0, 0, 0, 0.25]); // biome-ignore format: one thought
});

test('rows that do not tell each other apart have none', () => {
  expect(inverse(Float64Array.of(1, 2, 2, 4), 2)).toBeNull();
  expect(inverse(new Float64Array(9), 3)).toBeNull();
});

test('a matrix times its inverse is the identity', () => {
  const rows = fc.array(fc.integer({ min: -9, max: 9 }), { minLength: 9, maxLength: 9 });
  fc.assert(
    fc.property(rows, (list) => {
      const found = inverse(Float64Array.from(list), 3);
      const [a, b, c, d, e, f, g, h, i] = list as [number, number, number, number, number, number, number, number, number]; // biome-ignore format: one thought
      const determinant = a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
      // Of whole numbers the determinant is whole: it is 0, or nowhere near it.
      expect(found === null).toBe(determinant === 0);
      if (found === null) return;
      for (let row = 0; row < 3; row++) {
        for (let column = 0; column < 3; column++) {
          const cell = [0, 1, 2].reduce((sum, k) => sum + (list[row * 3 + k] as number) * (found[k * 3 + column] as number), 0); // biome-ignore format: one thought
          expect(cell).toBeCloseTo(row === column ? 1 : 0, 8);
        }
      }
    }),
  );
});
