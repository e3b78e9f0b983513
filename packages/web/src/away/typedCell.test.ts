import { describe, expect, test } from 'vitest';
import { afterKey, isHalfTyped, isImpossible, readingIn, readingsIn } from './typedCell.js';

// How digits flow is a decision of this project.
describe('digits flow to the next cell', () => {
  test.each([
    ['systolic', '14', '14', false],
    ['systolic', '142', '142', true],
    ['systolic', '29', '29', false],
    ['systolic', '30', '30', true],
    ['systolic', '98', '98', true],
    ['systolic', '298', '298', true],
    ['systolic', '98/', '98', true],
    ['systolic', '98 ', '98', true],
    // What is typed after a number that went on by itself is no part of the next one.
    ['diastolic', '/', '', false],
    ['pulse', ' ', '', false],
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
    // No number begins with a 0: nothing goes on from there.
    ['systolic', '092', '092', false],
    ['diastolic', '062', '062', false],
    ['pulse', '015 ', '015 ', false],
    ['diastolic', '0', '0', false],
    // What is no number stays, so that it is seen.
    ['systolic', '14x', '14x', false],
    ['diastolic', 'l39', 'l39', false],
  ] as const)('%s %j: %j, full %s', (cell, typed, text, isFull) => {
    expect(afterKey(cell, typed)).toEqual({ text, isFull });
  });
});

test('a whole page typed by the digits alone lands in its cells, also under 100', () => {
  const cells = ['systolic', 'diastolic', 'pulse'] as const;
  const rows: string[][] = [[]];
  let text = '';
  for (const digit of '986270142887410264131998810') {
    const row = rows.at(-1) ?? [];
    const after = afterKey(cells[row.length] ?? 'systolic', text + digit);
    text = after.text;
    if (!after.isFull) continue;
    row.push(text);
    text = '';
    if (row.length === cells.length) rows.push([]);
  }
  expect(rows.map((row) => row.join(' '))).toEqual(['98 62 70', '142 88 74', '102 64 131', '99 88']);
});

test.each([
  ['systolic', '14', true],
  ['systolic', '142', false],
  ['pulse', '10', true],
  ['pulse', '', false],
  ['pulse', '7x', false],
  ['diastolic', '06', false],
] as const)('%s %j: more digits are to come %j', (cell, text, isHalf) => {
  expect(isHalfTyped(cell, text)).toBe(isHalf);
});

// The limits are those of the intake: out-of-office handbook 20.
test.each([
  ['systolic', ['142', '', ''], false],
  ['systolic', ['29', '', ''], true],
  ['diastolic', ['142', '88', ''], false],
  ['diastolic', ['88', '142', ''], true],
  ['diastolic', ['88', '88', ''], true],
  ['diastolic', ['', '88', ''], false],
  ['pulse', ['142', '88', '19'], true],
  ['pulse', ['142', '88', '20'], false],
] as const)('%s of %j cannot be: %j', (cell, [systolic, diastolic, pulse], cannot) => {
  expect(isImpossible(cell, { systolic, diastolic, pulse })).toBe(cannot);
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
