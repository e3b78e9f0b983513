import { expect, test } from 'vitest';
import { uniform } from '../chance/uniform.js';
import { exp, log, power } from './exponential.js';

const relative = (got: number, wanted: number) => Math.abs(got - wanted) / Math.abs(wanted);
const MANY = 20_000;

// Held against the engine's own Math, which is right to about one unit in the last place (2.2e-16).
test('exp over its whole range', () => {
  for (let i = 0; i < MANY; i++) {
    const x = -700 + 1400 * uniform(1, 'noise', i);
    expect(relative(exp(x), Math.exp(x))).toBeLessThan(4e-16);
    const small = x / 700;
    expect(relative(exp(small), Math.exp(small))).toBeLessThan(4e-16);
  }
  expect([exp(0), exp(-746), exp(710)]).toEqual([1, 0, Number.POSITIVE_INFINITY]);
  expect(relative(exp(1), Math.E)).toBeLessThan(2e-16);
  expect(relative(exp(709), Math.exp(709))).toBeLessThan(4e-16);
  expect(relative(exp(-740), Math.exp(-740))).toBeLessThan(0.05);
});

test('log over its whole range, and as the inverse of exp', () => {
  for (let i = 0; i < MANY; i++) {
    const x = Math.exp(-700 + 1400 * uniform(2, 'noise', i));
    expect(Math.abs(log(x) - Math.log(x))).toBeLessThan(4e-16 * Math.max(1, Math.abs(Math.log(x))));
    const near = 0.5 + uniform(3, 'noise', i);
    expect(Math.abs(log(near) - Math.log(near))).toBeLessThan(2e-16);
    expect(Math.abs(log(exp(near)) - near)).toBeLessThan(4e-16);
  }
  expect([log(1), log(0), log(Number.POSITIVE_INFINITY)]).toEqual([
    0,
    Number.NEGATIVE_INFINITY,
    Number.POSITIVE_INFINITY,
  ]);
  expect(log(-1)).toBeNaN();
  expect(relative(log(5e-324), Math.log(5e-324))).toBeLessThan(4e-16);
});

test('powers', () => {
  for (let i = 0; i < MANY; i++) {
    const x = 10 * uniform(4, 'noise', i);
    const y = 4 * uniform(4, 'noise', i, 1);
    expect(relative(power(x, y), x ** y)).toBeLessThan(1e-14);
  }
  expect([power(0, 0.75), power(0, 0), power(3, 0)]).toEqual([0, 1, 1]);
});
