import { describe, expect, test } from 'vitest';
import { afterKey, readingIn, readingsIn } from './typedCell.js';

// How digits flow is a decision of this project.
describe('digits flow to the next cell', () => {
  test.each([
    ['systolic', '14', '14', false],
    ['systolic', '142', '142', true],
    ['systolic', '98', '98', false],
    ['systolic', '98/', '98', true],
    ['systolic', '98 ', '98', true],
    ['systolic', '9/', '9', false],
    ['diastolic', '88', '88', true],
    ['diastolic', '8', '8', false],
    ['diastolic', '10', '10', false],
    ['diastolic', '102', '102', true],
    ['diastolic', '10,', '10', true],
    ['pulse', '29', '29', false],
    ['pulse', '30', '30', true],
    ['pulse', '104', '104', true],
    ['pulse', '', '', false],
    // What is no number stays, so that it is seen.
    ['systolic', '14x', '14x', false],
    ['diastolic', 'l39', 'l39', false],
  ] as const)('%s %j: %j, full %s', (cell, typed, text, isFull) => {
    expect(afterKey(cell, typed)).toEqual({ text, isFull });
  });
});

test.each([
  ['142/88 74', ['142', '88', '74']],
  [' 142/88 ', ['142', '88', '']],
  ['142\t88\t74', ['142', '88', '74']],
  ['98 61', ['98', '61', '']],
  ['142', null],
  ['142/', null],
  ['early morning', null],
])('%j is a whole reading: %j', (text, numbers) => {
  const found = readingIn(text);
  expect(found === null ? null : [found.systolic, found.diastolic, found.pulse]).toEqual(numbers);
});

test('several lines are several readings, and none where one of them is not understood', () => {
  expect(readingsIn('142/88 74\r\n\r\n140/86 73\n')?.map(({ systolic }) => systolic)).toEqual(['142', '140']);
  expect(readingsIn('142/88 74\nafter coffee')).toBeNull();
  expect(readingsIn('')).toBeNull();
});
