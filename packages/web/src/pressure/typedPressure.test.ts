import { parseShorthand } from '@evenfall/clinical';
import { expect, test } from 'vitest';
import { isWhole, otherWayRound, typedKey, typedPressure } from './typedPressure.js';

const typed = (keys: string) => [...keys].reduce(typedKey, '');

test('digits flow into a pressure, the stroke put in after a whole systolic', () => {
  expect(typed('14892')).toBe('148/92');
  expect(typed('9860')).toBe('98/60');
  expect(typed('210104')).toBe('210/104');
});

// A number that no pressure has is refused in words; it must never be read as two that somebody could have.
test.each([
  ['40', '40'],
  ['400', '400'],
  ['4000', '400'],
  ['300', '300'],
  ['30092', '300'],
  ['1480', '148'],
  ['455', '455'],
  ['989', '989'],
  ['9899', '989'],
])('%s is never parted into a pressure: it stays %s', (keys, text) => {
  expect(typed(keys)).toBe(text);
  expect(typedPressure(keys)).toBe(text);
  expect(parseShorthand(text).ok).toBe(false);
});

test('with a stroke by hand any numbers can be typed', () => {
  for (const text of ['40/0', '300/92', '98/6', '148/0', '98/60/0']) expect(typed(text)).toBe(text);
});

test('a stroke can be typed by hand, once after each number', () => {
  expect(typed('148/92')).toBe('148/92');
  expect(typed('118/62/0')).toBe('118/62/0');
  expect(typed('/148//9')).toBe('148/9');
});

test('nothing longer than a pressure is typed, and nothing but digits and strokes', () => {
  expect(typed('148/925')).toBe('148/92');
  expect(typed('0')).toBe('0');
});

// docs/conventions.md section 1: anything that is no number is refused, never guessed.
test.each(['147.5', '147,5', '147,5/92', '-148/92', '148x92', '148-92', '1e2'])(
  '“%s” never becomes a pressure: it is refused in words',
  (text) => {
    let keyed = '';
    for (const sign of text) keyed = typedPressure(keyed + sign);
    for (const one of [keyed, typedPressure(text)]) expect(parseShorthand(one).ok, one).toBe(false);
  },
);

test('what is pasted whole is read as it is written', () => {
  expect(typedPressure(' 148/92')).toBe('148/92');
  expect(typedPressure('14892')).toBe('148/92');
  expect(typedPressure('148/92 76')).toBe('148/92 76');
  // A half is kept as a half, and then flagged as what no gauge shows.
  expect(typedPressure('147.5/92')).toBe('147.5/92');
});

test('a pressure is whole once it cannot go on: the key that keeps it comes into sight', () => {
  expect(['150', '92', '300'].map(isWhole)).toEqual([true, true, true]);
  expect(['', '1', '15', '30', '9'].map(isWhole)).toEqual([false, false, false, false, false]);
});

test.each([
  ['88/142', '142/88'],
  ['88/142 76', '142/88 76'],
  ['142/88', null],
  ['88/88', null],
  ['88', null],
  ['62/118/0', null],
  ['8/142', null],
  ['88/142x', null],
])('%s the other way round is %s', (typed, turned) => {
  expect(otherWayRound(typed)).toBe(turned);
});
