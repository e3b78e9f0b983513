import { parseShorthand } from '@evenfall/clinical';
import { expect, test } from 'vitest';
import { typedKey, typedPressure } from './typedPressure.js';

const typed = (keys: string) => [...keys].reduce(typedKey, '');

test('digits flow into a pressure, the stroke put in after a whole systolic', () => {
  expect(typed('14892')).toBe('148/92');
  expect(typed('9860')).toBe('98/60');
  expect(typed('210104')).toBe('210/104');
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
