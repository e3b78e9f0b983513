import fc from 'fast-check';
import { expect, test } from 'vitest';
import { turningPointRatio } from './turningPointRatio.js';

test('of every order of three different values, two in three turn', () => {
  // The classical expectation of a random series, by listing (Kendall; bedside handbook 1.12 gives 2/3).
  const orders = [
    [1, 2, 3],
    [1, 3, 2],
    [2, 1, 3],
    [2, 3, 1],
    [3, 1, 2],
    [3, 2, 1],
  ];
  const turns = orders.map((order) => turningPointRatio(order) as number);
  expect(turns.reduce((sum, one) => sum + one, 0) / orders.length).toBeCloseTo(2 / 3, 12);
});

test('a tie is no turning point', () => {
  expect(turningPointRatio([1, 2, 2, 1])).toBe(0);
});

test('nothing turns across a gap', () => {
  expect(turningPointRatio([1, 2, null, 1, 2, 1])).toBe(1);
  expect(turningPointRatio([1, null, 1, 2])).toBeNull();
  expect(turningPointRatio([1, 2])).toBeNull();
});

test('is the same forwards, backwards and upside down', () => {
  const series = fc.array(fc.integer({ min: 300, max: 2000 }), { minLength: 3, maxLength: 60 });
  fc.assert(
    fc.property(series, (list) => {
      const ratio = turningPointRatio(list);
      expect(turningPointRatio([...list].reverse())).toBe(ratio);
      expect(turningPointRatio(list.map((value) => -value))).toBe(ratio);
    }),
  );
});
