import { expect, test } from 'vitest';
import { askedOfRow, isUnderWay, sureField } from './askedOfRow.js';
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
