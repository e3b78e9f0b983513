import { expect, test } from 'vitest';
import { typedKey } from './typedPressure.js';

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
  expect(typed('1x4 8')).toBe('148');
  expect(typed('0')).toBe('0');
});
