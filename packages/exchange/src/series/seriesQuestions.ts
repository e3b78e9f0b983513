import { INTAKE_LIMITS, refusal } from '@evenfall/clinical';
import { looksLikeKiloPascal, type SeriesMapping } from './seriesColumns.js';
import type { SeriesQuestion } from './seriesRead.js';
import type { SeriesRecord } from './seriesRecords.js';
import type { RowTime, SeriesTable } from './seriesTable.js';
import { SERIES_COLUMNS, unitNamed } from './seriesWords.js';
import { DATE_ORDERS, type DateOrder, dateIn, daysOf, ordersOf, type WrittenTime } from './timeText.js';
import type { ZoneClock } from './zoneClock.js';

/** The order of dates that a row settles; null where there is none to settle. */
export function settledOrder(times: readonly RowTime[]): DateOrder | null {
  for (const { time } of times) {
    if (time?.date.kind !== 'open') continue;
    const [only, ...more] = ordersOf(time.date);
    if (only !== undefined && more.length === 0) return only;
  }
  // No date is open to two readings that differ, or there would have been a question.
  const open = times.find(({ time }) => time?.date.kind === 'open');
  return open?.time?.date.kind === 'open' ? (ordersOf(open.time.date)[0] ?? null) : null;
}

/** The orders that single rows leave no choice about; where they disagree, or none does and two would do, it is asked. */
export function dateQuestions(
  times: readonly RowTime[],
  rows: readonly SeriesRecord[],
  table: SeriesTable,
  given: DateOrder | null,
): SeriesQuestion[] {
  if (given !== null) return [];
  const settled = new Set<DateOrder>();
  const open = new Set<DateOrder>();
  let first = -1;
  times.forEach(({ time }, k) => {
    if (time === null || time.date.kind !== 'open') return;
    const { date } = time;
    const orders = ordersOf(date);
    const days = new Set(orders.map((order) => dayIn(date, order)));
    if (orders.length === 1) settled.add(orders[0] as DateOrder);
    else if (days.size > 1) for (const order of orders) open.add(order);
    if (first < 0 && (days.size > 1 || orders.length === 1)) first = k;
  });
  const isSettled = settled.size === 1 || (settled.size === 0 && open.size === 0);
  if (isSettled) return [];
  const possible = settled.size > 1 ? settled : open;
  const choices = DATE_ORDERS.filter((order) => possible.has(order));
  const problem = table.problem(rows[first], times[first]?.at ?? -1, 'ambiguous', 'date-order', times[first]?.got ?? null, { choices }); // biome-ignore format: one thought
  return [{ of: 'dates', choices, problem }];
}

function dayIn(date: WrittenTime['date'], order: DateOrder): number | null {
  const found = dateIn(date, order);
  return found === null ? null : daysOf(found);
}

/** Times without an offset ask for their zone. */
export function zoneQuestions(
  times: readonly RowTime[],
  rows: readonly SeriesRecord[],
  table: SeriesTable,
  clock: ZoneClock | null,
): SeriesQuestion[] {
  if (clock !== null) return [];
  const k = times.findIndex(({ time }) => time !== null && time.offsetMinutes === null);
  if (k < 0) return [];
  const { at, got } = times[k] as RowTime;
  return [
    { of: 'zone', choices: [], problem: table.problem(rows[k], at, 'ambiguous', 'zone-of-times', got) },
  ];
}

/** Columns that are needed and were not found. */
export function columnQuestions(
  missing: readonly ('time' | 'systolic' | 'diastolic')[],
  records: readonly SeriesRecord[],
  headingAt: number | null,
): SeriesQuestion[] {
  if (missing.length === 0) return [];
  const line = records[headingAt ?? 0]?.line ?? 1;
  return missing.map((role) => ({
    of: 'columns',
    choices: SERIES_COLUMNS,
    problem: { ...refusal(role, 'missing', 'column-of-series', null, { line }), column: null },
  }));
}

/** Pressures that look like kPa, and columns that look swapped. */
export function numberQuestions(
  rows: readonly SeriesRecord[],
  table: SeriesTable,
  unit: 'mmHg' | 'kPa' | null,
  isSure: boolean,
): SeriesQuestion[] {
  const questions: SeriesQuestion[] = [];
  const systolics: number[] = [];
  let [both, swapped] = [0, 0];
  let first: SeriesRecord | undefined;
  for (const row of rows) {
    const { systolic, diastolic } = table.written(row.cells);
    if (systolic === null || Number.isNaN(systolic)) continue;
    systolics.push(systolic);
    if (diastolic === null || Number.isNaN(diastolic)) continue;
    both++;
    if (systolic <= diastolic) {
      swapped++;
      first ??= row;
    }
  }
  if (unit === null && looksLikeKiloPascal(systolics)) {
    const row = rows.find(({ cells }) => {
      const { systolic } = table.written(cells);
      return systolic !== null && systolic < INTAKE_LIMITS.systolic.minimum && !Number.isInteger(systolic);
    });
    const at = table.placeOf('systolic');
    const choices = ['kPa', 'mmHg'];
    const problem = table.problem(row, at, 'ambiguous', 'unit-of-pressures', row?.cells[at] ?? null, {
      choices,
    });
    questions.push({ of: 'unit', choices, problem });
  }
  if (!isSure && swapped > both / 2) {
    const at = table.placeOf('diastolic');
    const problem = table.problem(
      first,
      at,
      'ambiguous',
      'systolic-over-diastolic',
      first?.cells[at] ?? null,
      {
        figures: { rows: both, swapped },
      },
    );
    questions.push({ of: 'swapped', choices: [], problem });
  }
  return questions;
}

/** The unit that the headings of pressures name, or the first cells. */
export function namedUnit(
  { headings, columns }: SeriesMapping,
  rows: readonly SeriesRecord[],
): 'mmHg' | 'kPa' | null {
  const [first] = rows;
  for (const [at, role] of columns.entries()) {
    if (role !== 'systolic' && role !== 'diastolic' && role !== 'pressure') continue;
    const named = unitNamed(headings?.[at] ?? '') ?? unitNamed(first?.cells[at] ?? '');
    if (named !== null) return named;
  }
  return null;
}
