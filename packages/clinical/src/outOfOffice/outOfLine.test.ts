import { expect, test } from 'vitest';
import { outOfLine } from './outOfLine.js';
import { H1 } from './testing.js';

// No source: common practice. A number of three digits that lost one, or of two that got one, is meant to be seen.
test.each([
  ['a pulse of 74 without its own second digit, and the next row’s first', 41, [74, 76, 73], 74],
  ['a systolic of 138 without its 1', 38, [142, 148, 140], 142],
  ['a diastolic of 88 with a digit too many', 188, [88, 84], 86],
  ['a systolic where the diastolic was meant', 84, [142, 148, 146], 146],
  ['a slow pulse among slow ones', 46, [48, 52, 50], null],
  ['a fall of a third', 98, [142, 148, 140], null],
  ['a severe one among high ones', 206, [152, 158, 160], null],
  ['nothing to stand beside', 41, [74], null],
])('%s', (_name, value, others, usual) => {
  expect(outOfLine(value, others)).toBe(usual);
});

// The invented week H1 of the out-of-office handbook 19: a usual week asks nothing.
test('no number of a usual week is asked about', () => {
  for (const measure of ['systolic', 'diastolic', 'pulse'] as const) {
    const numbers = H1.flatMap((one) => one[measure] ?? []);
    numbers.forEach((value, at) => {
      expect(outOfLine(value, numbers.toSpliced(at, 1))).toBeNull();
    });
  }
});
