import { expect, test } from 'vitest';
import { isBlank, numberFrom, pointer } from './numberText.js';

// docs/conventions.md section 1: `-?\d+(\.\d+)?`, decimal point only; anything else is refused, never guessed.
test.each([
  ['19', 19],
  ['-3', -3],
  ['7.50', 7.5],
  ['007', 7],
  [12.25, 12.25],
  [0, 0],
])('reads %j as %d', (got, value) => {
  expect(numberFrom(got)).toBe(value);
});

test.each([
  '',
  ' 19',
  '19 ',
  '1,5',
  '.5',
  '5.',
  '+5',
  '1e3',
  '0x10',
  'NaN',
  'Infinity',
  '१९',
  '1\n',
  '9'.repeat(400),
])('refuses %j', (got) => {
  expect(numberFrom(got)).toBeNull();
});

test.each([[Number.NaN], [Number.POSITIVE_INFINITY], [null], [undefined], [true], [[1]], [{}], [10n]])(
  'refuses a value that is not a finite number',
  (got) => {
    expect(numberFrom(got)).toBeNull();
  },
);

test('a blank is not a zero', () => {
  expect([undefined, null, ''].every(isBlank)).toBe(true);
  expect([0, '0', false, ' '].some(isBlank)).toBe(false);
});

test('a pointer escapes as RFC 6901 section 5 prints it', () => {
  expect(pointer('', 'a/b')).toBe('/a~1b');
  expect(pointer('', 'm~n')).toBe('/m~0n');
  expect(pointer('/moments', 0)).toBe('/moments/0');
});
