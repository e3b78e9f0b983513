import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { rangeTexts } from './rangeTexts.js';

const words = wordsFor('en');
const value = {
  systolicRange: [118, 122],
  diastolicRange: [76, 80],
  diastolic: 78,
  diastolicUsed: 78,
} as unknown as Parameters<typeof rangeTexts>[0];

test('the range of each number that stands', () => {
  expect(rangeTexts(value, words)).toEqual(['systolic 118 to 122', 'diastolic 76 to 80']);
});

// Bedside handbook 2: sounds that go on to zero are written 118/62/0, and the muffling is the one used.
test('a range of the last sound is none of the muffling that is used in its place', () => {
  const toZero = { ...value, diastolicRange: [0, 1], diastolic: 0, diastolicUsed: 62 } as typeof value;
  expect(rangeTexts(toZero, words)).toEqual(['systolic 118 to 122']);
});
