import { describe, expect, test } from 'vitest';
import { bytesFrom, chanceFrom } from './chance.js';

const drawn = (seed: number, many: number) => {
  const chance = chanceFrom(seed);
  return Array.from({ length: many }, chance);
};

describe('chance from a seed', () => {
  test('is the same from the same seed, and another from another', () => {
    expect(drawn(7, 50)).toEqual(drawn(7, 50));
    expect(drawn(7, 50)).not.toEqual(drawn(8, 50));
  });

  test('lies evenly from 0 up to but not 1', () => {
    const many = drawn(20261125, 20_000);
    expect(many.every((one) => one >= 0 && one < 1)).toBe(true);
    // Pearson's chi-square over ten equal parts: 9 degrees of freedom, 0.1 % point 27.88 (printed tables, from memory).
    const parts = Array.from(
      { length: 10 },
      (_, part) => many.filter((one) => Math.floor(one * 10) === part).length,
    );
    const chiSquare = parts.reduce((sum, n) => sum + (n - 2000) ** 2 / 2000, 0);
    expect(chiSquare).toBeLessThan(27.88);
  });

  test('does not come round: no draw is met twice in a row of a thousand', () => {
    expect(new Set(drawn(1, 1000)).size).toBe(1000);
  });
});

test('sixteen bytes of every size', () => {
  const chance = chanceFrom(3);
  const bytes = Array.from({ length: 400 }, () => bytesFrom(chance));
  expect(bytes.every((one) => one.length === 16)).toBe(true);
  expect(new Set(bytes.flatMap((one) => [...one])).size).toBe(256);
});
