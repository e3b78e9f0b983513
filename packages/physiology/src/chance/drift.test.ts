import { expect, test } from 'vitest';
import { Drift } from './drift.js';
import { keyOf } from './uniform.js';

const drifts = (n: number, seconds: number) =>
  Array.from({ length: n }, (_, seed) => {
    const drift = new Drift();
    drift.restart(keyOf(seed, 'bpv'), 0, seconds);
    return {
      at: (instant: number) => {
        drift.moveTo(instant);
        return drift.value;
      },
    };
  });
const mean = (all: readonly number[]) => all.reduce((sum, x) => sum + x, 0) / all.length;

// 4,000 drifts: the SD is known to within 5 / sqrt(8000) = 0.056, and the mean to 5 / sqrt(4000) = 0.08.
test.each([0, 0.25, 0.5, 0.9])('mean 0 and SD 1 at %f of a spacing between knots', (part) => {
  const at = drifts(4000, 60).map((drift) => drift.at((7 + part) * (60 / 1.19)));
  expect(Math.abs(mean(at))).toBeLessThan(0.08);
  expect(Math.abs(Math.sqrt(mean(at.map((x) => x * x))) - 1)).toBeLessThan(0.056);
});

test('its correlation with itself falls to 1/e over its time constant', () => {
  const pairs = drifts(4000, 15).map((drift, i) => {
    const from = 100 + (i % 40) / 2;
    return [drift.at(from), drift.at(from + 15), drift.at(from + 60)] as const;
  });
  expect(Math.abs(mean(pairs.map(([a, b]) => a * b)) - Math.exp(-1))).toBeLessThan(0.08);
  expect(Math.abs(mean(pairs.map(([a, , c]) => a * c)))).toBeLessThan(0.08);
});

test('it can be asked in any order, and goes on without a jump over a knot', () => {
  const [one, other] = drifts(1, 15).concat(drifts(1, 15));
  if (one === undefined || other === undefined) throw new Error('two were asked for');
  const times = Array.from({ length: 500 }, (_, i) => i * 0.5);
  const forwards = times.map((t) => one.at(t));
  const backwards = [...times]
    .reverse()
    .map((t) => other.at(t))
    .reverse();
  expect(backwards).toEqual(forwards);
  for (const [i, x] of forwards.entries())
    if (i > 0) expect(Math.abs(x - (forwards[i - 1] ?? 0))).toBeLessThan(0.3);
});
