import { expect, test } from 'vitest';
import { askedOfRow, holdsDangerBack, isUnderWay, sureField, unfinishedIn } from './askedOfRow.js';
import { cellField, gridRows } from './weekGrid.js';

const ROWS = gridRows({ readingsInSitting: 2 }, 2);

function page(typed: readonly string[], more: Readonly<Record<string, string>> = {}) {
  const fields: Record<string, string> = { ...more };
  typed.forEach((line, at) => {
    const [systolic = '', diastolic = '', pulse = ''] = line.split(/[/ ]/);
    const row = ROWS[at];
    if (row === undefined) return;
    Object.assign(fields, {
      [cellField(row, 'systolic')]: systolic,
      [cellField(row, 'diastolic')]: diastolic,
      [cellField(row, 'pulse')]: pulse,
    });
  });
  const text = (field: string) => fields[field] ?? '';
  return (at: number) => askedOfRow(ROWS[at] as (typeof ROWS)[number], ROWS, text);
}

// No source: common practice. What is asked is a decision of this project; the numbers are invented.
test('two numbers that stand the other way round are asked about, also where nothing stands beside them', () => {
  const turned = [{ asks: 'other-way-round', systolic: 138, diastolic: 84 }];
  expect(page(['84/138 74'])(0)).toEqual(turned);
  expect(page(['142/88 74', '140/86 73', '84/138 74'])(2)).toEqual(turned);
});

test('a digit that was left out is asked about at its own cell', () => {
  const week = ['142/88 74', '140/86 76', '148/87 41', '139/85 73'];
  expect(page(week)(2)).toEqual([{ asks: 'digit', cell: 'pulse', value: 41, usual: 74 }]);
  expect(page(week)(3)).toEqual([]);
  // 82 over 38 would be as far from the others as 38 over 82: nothing is said of the other way round.
  expect(page(['142/88 74', '140/86 76', '38/82 70'])(2)).toEqual([
    { asks: 'digit', cell: 'systolic', value: 38, usual: 141 },
  ]);
  expect(page(['142/88 74', '140/86 76', '38/8270'])(2)).toEqual([
    { asks: 'digit', cell: 'systolic', value: 38, usual: 141 },
  ]);
});

test('once somebody says that it stands so it is not asked again, until it is another number', () => {
  const week = ['142/88 74', '140/86 76', '148/87 41'];
  const sure = sureField(ROWS[2] as (typeof ROWS)[number], 'pulse');
  expect(page(week, { [sure]: '41' })(2)).toEqual([]);
  expect(page(week, { [sure]: '40' })(2)).toHaveLength(1);
});

test('a blank and a number that is not yet typed are nothing to ask about', () => {
  expect(page(['142/88 74', '140/86 76', '14/ 7'])(2)).toEqual([]);
  expect(page(['142/88 74', '140/86 76'])(2)).toEqual([]);
});

test.each([
  ['84//', true],
  ['/88/', true],
  ['84/138/', false],
  ['142/88/7', false],
  // What is wrong is said at once.
  ['092//', false],
  ['400//', false],
  ['14x//', false],
])('%s is on its way: %s', (typed, isOn) => {
  const [systolic = '', diastolic = '', pulse = ''] = typed.split('/');
  expect(isUnderWay({ systolic, diastolic, pulse })).toBe(isOn);
});

test.each([
  ['212//', 'diastolic', { of: 'row', cell: 'diastolic', text: '212/–' }],
  ['212//', 'systolic', { of: 'row', cell: 'diastolic', text: '212/–' }],
  ['/88/74', 'pulse', { of: 'row', cell: 'systolic', text: '–/88 74' }],
  ['14//', 'systolic', { of: 'number', cell: 'systolic', text: '14' }],
  ['212/128/', 'diastolic', null],
  // A blank row holds nobody up, and what is wrong stands among the refused rows already.
  ['//', 'systolic', null],
  ['400//', 'systolic', null],
] as const)('%s with the keys in its %s keeps the page from being signed', (typed, cell, unfinished) => {
  const [systolic = '', diastolic = '', pulse = ''] = typed.split('/');
  const row = { day: 2, part: 'evening', reading: 1 } as const;
  const fields: Record<string, string> = {
    [cellField(row, 'systolic')]: systolic,
    [cellField(row, 'diastolic')]: diastolic,
    [cellField(row, 'pulse')]: pulse,
  };
  const text = (field: string) => fields[field] ?? '';
  expect(unfinishedIn({ row, cell }, text)).toEqual(unfinished === null ? null : { ...unfinished, row });
  // Left, it is a row that was refused, and seen.
  expect(unfinishedIn(null, text)).toBeNull();
});

test('the most extreme numbers are asked about and their danger is said all the same', () => {
  const asked = page(['118/76 74', '122/78 72', '120/77 73', '232/128 80'])(3);
  expect(asked).toEqual([{ asks: 'digit', cell: 'systolic', value: 232, usual: 120 }]);
  expect(holdsDangerBack(asked)).toBe(false);
  // Turned round they are other numbers, and dangerous or not by those.
  expect(holdsDangerBack(page(['84/138 74'])(0))).toBe(true);
});
