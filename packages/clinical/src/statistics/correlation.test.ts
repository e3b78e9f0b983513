import fc from 'fast-check';
import * as simple from 'simple-statistics';
import { expect, test } from 'vitest';
import { correlation } from './correlation.js';

const pair = fc.tuple(fc.integer({ min: -50, max: 200 }), fc.integer({ min: -50, max: 200 }));

test('is what a general-purpose library gives', () => {
  fc.assert(
    fc.property(fc.array(pair, { minLength: 3, maxLength: 40 }), (pairs) => {
      const [xs, ys] = [pairs.map(([x]) => x), pairs.map(([, y]) => y)];
      const found = correlation(xs, ys);
      if (new Set(xs).size === 1 || new Set(ys).size === 1) expect(found).toBeNull();
      else expect(found).toBeCloseTo(simple.sampleCorrelation(xs, ys), 9);
    }),
  );
});

test('nothing, or what does not vary, has none', () => {
  expect(correlation([], [])).toBeNull();
  expect(correlation([1], [2])).toBeNull();
});
