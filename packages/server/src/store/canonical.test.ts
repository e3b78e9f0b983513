import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { contentHash } from './canonical.js';

test('is the SHA-256 of the canonical JSON (RFC 8785)', () => {
  // RFC 8785, section 3.2.2 and 3.2.3: keys sorted, numbers and texts as ECMAScript writes them.
  const text = '{"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27]}';
  const value = JSON.parse(
    '{ "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001] }',
  );
  expect(contentHash(value)).toBe(createHash('sha256').update(text).digest('hex'));
});

test('does not depend on the order of keys, and depends on everything else', () => {
  const object = fc.dictionary(fc.string(), fc.jsonValue(), { minKeys: 2 });
  fc.assert(
    fc.property(object, (given) => {
      const turned = Object.fromEntries(Object.entries(given).reverse());
      expect(contentHash(turned)).toBe(contentHash(given));
      const [key = ''] = Object.keys(given);
      expect(contentHash({ ...given, [key]: [given[key]] })).not.toBe(contentHash(given));
    }),
  );
});
