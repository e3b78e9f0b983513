import { expect, test } from 'vitest';
import { uniform } from '../chance/uniform.js';
import { exp, log, power } from './exponential.js';

const relative = (got: number, wanted: number) => Math.abs(got - wanted) / Math.abs(wanted);
const MANY = 20_000;

/** The largest of many errors. */
function worst(stream: number, errorOf: (u: number, v: number) => number): number {
  let most = 0;
  for (let i = 0; i < MANY; i++) {
    const error = errorOf(uniform(stream, 'noise', i), uniform(stream, 'noise', i, 1));
    // A NaN is worse than everything.
    if (!(error <= most)) most = error;
  }
  return most;
}

// Held against the engine's own Math, which is right to about one unit in the last place (2.2e-16).
test('exp over its whole range', () => {
  expect(worst(1, (u) => relative(exp(-700 + 1400 * u), Math.exp(-700 + 1400 * u)))).toBeLessThan(4e-16);
  expect(worst(1, (u) => relative(exp(2 * u - 1), Math.exp(2 * u - 1)))).toBeLessThan(4e-16);
  expect([exp(0), exp(-746), exp(710)]).toEqual([1, 0, Number.POSITIVE_INFINITY]);
  expect(relative(exp(1), Math.E)).toBeLessThan(2e-16);
  expect(relative(exp(709), Math.exp(709))).toBeLessThan(4e-16);
  expect(relative(exp(-740), Math.exp(-740))).toBeLessThan(0.05);
});

test('log over its whole range, and as the inverse of exp', () => {
  const wide = (u: number) => Math.exp(-700 + 1400 * u);
  expect(
    worst(2, (u) => Math.abs(log(wide(u)) - Math.log(wide(u))) / Math.max(1, Math.abs(Math.log(wide(u))))),
  ).toBeLessThan(4e-16);
  expect(worst(3, (u) => Math.abs(log(0.5 + u) - Math.log(0.5 + u)))).toBeLessThan(2e-16);
  expect(worst(3, (u) => Math.abs(log(exp(0.5 + u)) - 0.5 - u))).toBeLessThan(4e-16);
  expect([log(1), log(0), log(Number.POSITIVE_INFINITY)]).toEqual([
    0,
    Number.NEGATIVE_INFINITY,
    Number.POSITIVE_INFINITY,
  ]);
  expect(log(-1)).toBeNaN();
  expect(relative(log(5e-324), Math.log(5e-324))).toBeLessThan(4e-16);
});

test('powers', () => {
  expect(worst(4, (u, v) => relative(power(10 * u, 4 * v), (10 * u) ** (4 * v)))).toBeLessThan(1e-14);
  expect([power(0, 0.75), power(0, 0), power(3, 0)]).toEqual([0, 1, 1]);
});
