import { expect, test } from 'vitest';
import { loneOf, loneReadings } from './loneReadings.js';
import { A1, readingAt } from './testing.js';

const NONE = new Set<number>();
const day = (...typed: readonly string[]) =>
  typed.map((one, at) =>
    readingAt(at + 1, 0, `${10 + Math.floor(at / 2)}:${at % 2 === 0 ? '00' : '30'}`, one),
  );

// No source: common practice. The numbers are those of an invented recording.
test('232/148 between 142/91 and 149/88 stands alone', () => {
  const found = loneReadings(day('140/90 74', '142/91 73', '232/148 73', '149/88 74', '144/90 75'), NONE);
  expect(found.map(({ reading, before, after }) => [before.index, reading.index, after.index])).toEqual([
    [2, 3, 4],
  ]);
});

test('far below both stands alone too; a rise that goes on does not, nor does the first or the last', () => {
  expect(loneReadings(day('142/91 73', '88/60 73', '149/88 74'), NONE)).toHaveLength(1);
  expect(loneReadings(day('142/91 73', '196/120 90', '188/112 88', '150/90 74'), NONE)).toEqual([]);
  expect(loneReadings(day('232/148 73', '142/91 73', '149/88 74'), NONE)).toEqual([]);
});

test('what no mean uses is no neighbour and does not stand alone', () => {
  const readings = day('142/91 73', '232/148 73', '149/88 74', '150/88 74');
  expect(loneReadings(readings, new Set([2]))).toEqual([]);
  expect(loneReadings(readings, new Set([3]))[0]?.after.index).toBe(4);
});

// The invented recording A1 of the out-of-office handbook 19: its fall by night and its rise are no lone readings.
test('nothing of a usual day and night stands alone', () => {
  expect(loneReadings(A1, NONE)).toEqual([]);
});

// Decision of this project: what was measured hours before or after is no neighbour.
test('a neighbour is at most 90 minutes away', () => {
  const at = (before: string, after: string) => [
    readingAt(1, 0, before, '142/91 73'),
    readingAt(2, 0, '12:00', '232/148 73'),
    readingAt(3, 0, after, '149/88 74'),
  ];
  expect(loneReadings(at('10:30', '13:30'), NONE)).toHaveLength(1);
  expect(loneReadings(at('10:29', '13:30'), NONE)).toEqual([]);
  expect(loneReadings(at('10:30', '13:31'), NONE)).toEqual([]);
});

test('of more than three nothing is said of a mean without them', () => {
  const mean = (without: ReadonlySet<number>) => ({ systolic: without.size, diastolic: null });
  const turns = (count: number) =>
    day(...Array.from({ length: count }, (_, at) => (at % 2 === 0 ? '120/80 70' : '165/80 70')));
  // 120 and 165 by turns: each but the first and the last stands alone.
  expect(loneOf(turns(5), NONE, mean)).toMatchObject({ without: { systolic: 3 } });
  expect(loneOf(turns(7), NONE, mean)?.readings).toHaveLength(5);
  expect(loneOf(turns(7), NONE, mean)?.without).toBeNull();
  expect(loneOf(turns(2), NONE, mean)).toBeNull();
  expect(
    loneOf(turns(5), new Set([1]), (without) => ({ systolic: [...without].length, diastolic: null })),
  ).toMatchObject({
    without: { systolic: 2 },
  });
});
