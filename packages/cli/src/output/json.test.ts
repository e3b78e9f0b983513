import { expect, test } from 'vitest';
import { jsonLine } from './json.js';

// docs/conventions.md section 3.
test('one object on one line, keys in the order put in, null kept', () => {
  expect(jsonLine({ b: 1, a: null, text: 'two\nlines' })).toBe('{"b":1,"a":null,"text":"two\\nlines"}\n');
});

test('carries the full double', () => {
  expect(jsonLine({ cv: 0.1 + 0.2 })).toBe('{"cv":0.30000000000000004}\n');
});

test.each([Number.NaN, Number.POSITIVE_INFINITY])(
  'a number that is none (%d) is a fault, not a null',
  (value) => {
    expect(() => jsonLine({ flags: [{ figures: { cv: value } }] })).toThrow(/cv/);
  },
);
