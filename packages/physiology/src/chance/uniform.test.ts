import { expect, test } from 'vitest';
import { STREAMS, uniform } from './uniform.js';

const N = 20_000;
const drawn = (seed: number, lane = 0) =>
  Array.from({ length: N }, (_, index) => uniform(seed, 'beat', index, lane));

test('the same names give the same number, and each name another', () => {
  expect(uniform(7, 'beat', 3)).toBe(uniform(7, 'beat', 3));
  const all = new Set<number>();
  for (const stream of STREAMS) {
    for (const seed of [0, 1, 2])
      for (let index = 0; index < 200; index++) all.add(uniform(seed, stream, index));
  }
  expect(all.size).toBe(STREAMS.length * 3 * 200);
});

// Mean 1/2, variance 1/12, no correlation between neighbours: each within 5 standard errors.
test.each([1, 2, 99, 4_000_000_000])('seed %i: flat, and neighbours know nothing of each other', (seed) => {
  const all = drawn(seed);
  const mean = all.reduce((sum, x) => sum + x, 0) / N;
  expect(Math.abs(mean - 0.5)).toBeLessThan(5 * Math.sqrt(1 / 12 / N));
  const variance = all.reduce((sum, x) => sum + (x - 0.5) ** 2, 0) / N;
  expect(Math.abs(variance - 1 / 12)).toBeLessThan(5 * Math.sqrt(1 / 180 / N));
  const besides = [all.slice(1), drawn(seed, 1), drawn(seed + 1)];
  for (const other of besides) {
    const together = other.reduce((sum, x, i) => sum + (x - 0.5) * ((all[i] ?? 0.5) - 0.5), 0) / N;
    expect(Math.abs(together)).toBeLessThan(5 / 12 / Math.sqrt(N));
  }
  const cells = new Array<number>(20).fill(0);
  for (const x of all) cells[Math.floor(x * 20)] = (cells[Math.floor(x * 20)] ?? 0) + 1;
  const chi = cells.reduce((sum, n) => sum + (n - N / 20) ** 2 / (N / 20), 0);
  // The 99.99 % point of chi-square with 19 degrees of freedom is 51.
  expect(chi).toBeLessThan(51);
});

test('never 0 and never 1, which a logarithm could not take', () => {
  const all = drawn(5).sort((a, b) => a - b);
  expect(all[0]).toBeGreaterThan(0);
  expect(all.at(-1)).toBeLessThan(1);
});
