import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { firstDifference } from './nearly.js';

describe('where two values first differ', () => {
  test.each([
    ['the same number', 76, 76, null],
    ['the same text', 'regular', 'regular', null],
    ['another text', 'regular', 'undecided', ''],
    ['nothing and zero, which are never the same', null, 0, ''],
    ['a number and its text', 76, '76', ''],
    [
      'a number in a list',
      { flags: [{ figures: { a: 1 } }] },
      { flags: [{ figures: { a: 2 } }] },
      '/flags/0/figures/a',
    ],
    ['a list that grew', { flags: [] }, { flags: [1] }, '/flags'],
    ['a key that came', { a: 1 }, { a: 1, b: 2 }, '/b'],
    ['a key that went', { a: 1, b: 2 }, { a: 1 }, '/b'],
    ['a list and an object', [], {}, ''],
    ['an object and nothing', { a: 1 }, null, ''],
    // RFC 6901 section 3.
    ['a key with the signs of a pointer', { 'a/b~c': 1 }, { 'a/b~c': 2 }, '/a~1b~0c'],
    ['a key that every object inherits', { constructor: 1 }, {}, '/constructor'],
  ])('%s', (_, kept, computed, at) => {
    expect(firstDifference(kept, computed)).toBe(at);
    expect(firstDifference(computed, kept)).toBe(at);
  });

  test('is the first one', () => {
    expect(firstDifference({ a: [1, 2], b: 3 }, { a: [1, 9], b: 9 })).toBe('/a/1');
  });
});

// The tolerance is a decision of this project: 1e-9 of the larger, and 1e-9 below 1.
describe('how near is the same', () => {
  test.each([76, 1, 0.5, 0, -3, 1e12])('on both sides of the tolerance at %d', (value) => {
    const tolerance = 1e-9 * Math.max(Math.abs(value), 1);
    for (const side of [-1, 1]) {
      expect(firstDifference(value, value + side * 0.9 * tolerance)).toBeNull();
      expect(firstDifference(value, value + side * 1.1 * tolerance)).toBe('');
    }
  });

  test('a last bit is not a difference, a step that a person could see is', () => {
    const rate = fc.double({ min: 0, max: 400, noNaN: true });
    fc.assert(
      fc.property(rate, (perMinute) => {
        expect(firstDifference({ perMinute }, { perMinute: perMinute * (1 + 2 ** -52) })).toBeNull();
        expect(firstDifference({ perMinute }, { perMinute: perMinute + 0.001 })).toBe('/perMinute');
      }),
    );
  });
});

test('anything that JSON can hold is the same as its copy', () => {
  fc.assert(
    fc.property(fc.jsonValue(), (value) => {
      expect(firstDifference(value, JSON.parse(JSON.stringify(value)))).toBeNull();
    }),
  );
});
