import { readSeries } from '@evenfall/exchange';
import { expect, test } from 'vitest';
import {
  cellField,
  dayLater,
  type GridRow,
  gridRows,
  gridTable,
  halfTypedIn,
  noteField,
  sittingTime,
  timeField,
} from './weekGrid.js';

const TWO = { readingsInSitting: 2 };

function typed(fields: Readonly<Record<string, string>>) {
  const all: Record<string, string> = {
    firstDay: '2025-02-27',
    morning: '07:00',
    evening: '19:30',
    ...fields,
  };
  return (field: string) => all[field] ?? '';
}

test('a week of two readings morning and evening has 28 rows, in the order of the days', () => {
  const rows = gridRows(TWO, 7);
  expect(rows).toHaveLength(28);
  expect(rows.slice(0, 5).map(({ day, part, reading }) => `${day} ${part} ${reading}`)).toEqual([
    '1 morning 1',
    '1 morning 2',
    '1 evening 1',
    '1 evening 2',
    '2 morning 1',
  ]);
});

test('what was typed is read as a table; blanks are no rows, a time that nobody said is about right', () => {
  const rows = gridRows(TWO, 3);
  const [first, second] = rows as [GridRow, GridRow];
  const evening = { day: 3, part: 'evening', reading: 1 } as const;
  const text = typed({
    [cellField(first, 'systolic')]: '142',
    [cellField(first, 'diastolic')]: '88',
    [cellField(first, 'pulse')]: '74',
    [cellField(second, 'systolic')]: '14x',
    [cellField(evening, 'systolic')]: '136',
    [cellField(evening, 'diastolic')]: '84',
    [timeField(evening)]: '21:05',
  });
  const table = gridTable(rows, text);
  const read = readSeries(table.text, {
    kind: 'home',
    zone: 'Europe/Lisbon',
    dates: null,
    unit: 'mmHg',
    mapping: null,
    areColumnsSure: true,
  });
  expect(read.questions).toEqual([]);
  expect(
    read.readings.map(({ systolic, diastolic, pulse, part }) => [systolic, diastolic, pulse, part]),
  ).toEqual([
    [142, 88, 74, 'morning'],
    [136, 84, null, 'evening'],
  ]);
  // 28 February is followed by 1 March; 21:05 in Lisbon is UTC then.
  expect(read.readings.map(({ atMs }) => new Date(atMs).toISOString())).toEqual([
    '2025-02-27T07:00:00.000Z',
    '2025-03-01T21:05:00.000Z',
  ]);
  expect(sittingTime(first, text)).toEqual({ at: '07:00', isAbout: true });
  expect(sittingTime(evening, text)).toEqual({ at: '21:05', isAbout: false });
  expect(read.refused.map(({ line, problems }) => [line, problems[0]?.column, problems[0]?.got])).toEqual([
    [3, 2, '14x'],
  ]);
  expect(table.rowOfLine.get(3)).toEqual(second);
});

test('a day that is none gives no date', () => {
  expect(dayLater('', 1)).toBeNull();
  expect(dayLater('2024-02-28', 1)).toBe('2024-02-29');
});

test('a number of which digits are to come is half typed, where somebody is typing it and nowhere else', () => {
  const row = { day: 7, part: 'evening', reading: 2 } as const;
  const half = (text: string, typing: { row: GridRow; cell: 'systolic' | 'pulse' } | null) =>
    halfTypedIn(typing, (field) => (field === cellField(row, 'systolic') ? text : ''));
  const here = { row, cell: 'systolic' } as const;
  expect(half('13', here)).toEqual({ ...here, text: '13' });
  for (const whole of ['136', '92', '', '1x', '013']) expect(half(whole, here)).toBeNull();
  expect(half('13', { row, cell: 'pulse' })).toBeNull();
  expect(half('13', null)).toBeNull();
});

test('a sitting at the end of the day goes on past midnight, so that no two of its readings have one time', () => {
  const fields: Record<string, string> = { firstDay: '2025-03-31', morning: '07:00', evening: '23:59' };
  const rows = gridRows({ readingsInSitting: 2 }, 1).filter(({ part }) => part === 'evening');
  for (const row of rows)
    Object.assign(fields, { [cellField(row, 'systolic')]: '142', [cellField(row, 'diastolic')]: '88' });
  const { text } = gridTable(rows, (field) => fields[field] ?? '');
  expect(
    text
      .split('\n')
      .slice(1)
      .map((line) => line.split('\t')[0]),
  ).toEqual(['2025-03-31 23:59', '2025-04-01 00:00']);
});

test('what was written beside a day is the note of its first reading, and of no other', () => {
  const rows = gridRows(TWO, 2);
  const evening = { day: 1, part: 'evening', reading: 1 } as const;
  const second = { day: 1, part: 'evening', reading: 2 } as const;
  const later = { day: 2, part: 'morning', reading: 1 } as const;
  const numbers = [evening, second, later].flatMap((row) => [
    [cellField(row, 'systolic'), '142'],
    [cellField(row, 'diastolic'), '88'],
  ]);
  const notesOf = (fields: Readonly<Record<string, string>>) => {
    const table = gridTable(rows, typed({ ...Object.fromEntries(numbers), ...fields }));
    const read = readSeries(table.text, {
      kind: 'home',
      zone: 'Europe/Lisbon',
      dates: null,
      unit: 'mmHg',
      mapping: null,
      areColumnsSure: true,
    });
    expect([read.questions, read.refused, read.readings.length]).toEqual([[], [], 3]);
    return read.readings.map(({ index }) => read.beside.find((one) => one.index === index)?.note ?? null);
  };
  expect(notesOf({ [noteField(1)]: ' dizzy, "new" tablet\tat six ' })).toEqual([
    'dizzy,  new  tablet at six',
    null,
    null,
  ]);
  expect(notesOf({ [noteField(2)]: 'slept badly' })).toEqual([null, null, 'slept badly']);
  expect(notesOf({})).toEqual([null, null, null]);
});
