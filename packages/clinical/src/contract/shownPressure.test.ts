import fc from 'fast-check';
import { expect, test } from 'vitest';
import { shownPressure } from './shownPressure.js';
import { type Comparison, passes } from './threshold.js';

const from140 = [{ comparison: '>=', limit: 140 }] as const;
const over180 = [{ comparison: '>', limit: 180 }] as const;

test.each([
  // Bedside handbook 0.2 and 8, C059 (practice).
  [139.6, from140, '139.6'],
  [139.5, from140, '139.5'],
  [139.4, from140, '139'],
  [140, from140, '140'],
  [140.3, from140, '140'],
  [147.5, from140, '148'],
  [90 + 2 / 3, from140, '91'],
  // One decimal is not enough where it would still be 140.0.
  [139.96, from140, '139.96'],
  [180, over180, '180'],
  [180.4, over180, '180.4'],
  [180.5, over180, '181'],
  [139.6, [], '140'],
])('%d beside %j is shown as %s', (mmHg, limits, text) => {
  expect(shownPressure(mmHg, limits)).toBe(text);
});

test('what is shown lies on the side of every limit on which the number lies', () => {
  const limit = fc.record({
    comparison: fc.constantFrom<Comparison>('>=', '>', '<', '<='),
    limit: fc.integer({ min: 40, max: 200 }),
  });
  const tenths = fc.integer({ min: 300, max: 2500 }).map((tenth) => tenth / 10);
  const thirds = fc.integer({ min: 90, max: 750 }).map((third) => third / 3);
  fc.assert(
    fc.property(fc.oneof(tenths, thirds), fc.array(limit, { maxLength: 8 }), (mmHg, limits) => {
      const shown = Number(shownPressure(mmHg, limits));
      for (const { comparison, limit } of limits) {
        expect(passes(shown, comparison, limit)).toBe(passes(mmHg, comparison, limit));
      }
    }),
  );
});
