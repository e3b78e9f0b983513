import { loadWords } from '@evenfall/words';
import { expect, test } from 'vitest';
import { withPoint, withPoints } from './withPoint.js';

const spanish = (await loadWords('es')).say;
const english = (await loadWords('en')).say;

test.each([
  ['68,5 kg', '68.5 kg'],
  ['5 ft 6,5 in', '5 ft 6.5 in'],
  ['1,5 y 2,25', '1.5 y 2.25'],
  ['1,234,5', '1,234,5'],
  ['1.234,5', '1.234,5'],
  ['12', '12'],
])('%s, typed where a comma is the decimal mark', (typed, read) => {
  expect(withPoints(typed, spanish)).toBe(read);
  expect(withPoints(typed, english)).toBe(typed);
});

test('a number alone, with its sign', () => {
  expect(withPoint('-1,5', spanish)).toBe('-1.5');
  expect(withPoint('1,5 kg', spanish)).toBe('1,5 kg');
});
