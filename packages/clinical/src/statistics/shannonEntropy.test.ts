import fc from 'fast-check';
import { expect, test } from 'vitest';
import { shannonEntropy } from './shannonEntropy.js';

test('two values in turn fill two of sixteen bins alike: a quarter of the most there can be', () => {
  // Bedside handbook 8, C017 (derived): log 2 / log 16.
  expect(shannonEntropy([500, 1000, 500, 1000])).toBeCloseTo(0.25, 12);
});

test('one value in each of sixteen bins is 1, all alike is 0, nothing is null', () => {
  expect(shannonEntropy(Array.from({ length: 16 }, (_, i) => i))).toBeCloseTo(1, 12);
  expect(shannonEntropy([812, 812, 812])).toBe(0);
  expect(shannonEntropy([])).toBeNull();
});

test('does not ask for the order of the values, nor for their scale', () => {
  const list = fc.array(fc.integer({ min: 300, max: 2000 }), { minLength: 1, maxLength: 60 });
  fc.assert(
    fc.property(list, (values) => {
      const entropy = shannonEntropy(values) as number;
      expect(entropy).toBeGreaterThanOrEqual(0);
      expect(entropy).toBeLessThanOrEqual(1);
      expect(shannonEntropy([...values].sort((a, b) => a - b))).toBe(entropy);
      expect(shannonEntropy(values.map((value) => value * 4))).toBe(entropy);
    }),
  );
});
