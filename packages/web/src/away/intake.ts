import type { HomeRules } from '@evenfall/clinical';
import {
  type DateOrder,
  type ReadSeries,
  readSeries,
  SERIES_COLUMNS,
  type SeriesColumn,
  type SeriesMapping,
} from '@evenfall/exchange';
import type { SeriesEvidence, SeriesKind } from '@evenfall/record';
import { INTAKE_WAYS, type IntakeWay } from './intakeWays.js';
import { GRID_PARTS, type GridRow, type GridTable, gridRows, gridTable, type TextOf } from './weekGrid.js';

/** Most days of the grid. Source: decision of this project. */
export const MOST_GRID_DAYS = 14;

/** What was brought and said so far, read as far as it can be. */
export type Intake = {
  readonly of: SeriesKind;
  readonly way: IntakeWay;
  readonly rows: readonly GridRow[];
  /** The grid as a table; null for any other way. */
  readonly table: GridTable | null;
  /** Null while nothing has come. */
  readonly read: ReadSeries | null;
  /** The text as it came, a line each, so that a row can be shown as it stood. */
  readonly lines: readonly string[];
  /** Lines that somebody wrote anew. */
  readonly mended: ReadonlySet<number>;
};

const LINE_BREAK = /\r\n|\n|\r/;

/** The field that holds a line which was written anew. */
export function lineField(line: number): string {
  return `line ${line}`;
}

/**
 * What the fields of the form come to.
 *
 * @param zone the zone of this device, in which a grid is typed unless another one was said
 * @param mapping what each column is, as somebody set it for these headings; null for as it is found
 */
export function intakeOf(
  text: TextOf,
  zone: string,
  rules: HomeRules,
  mapping: SeriesMapping | null,
): Intake {
  const of: SeriesKind = text('of') === 'ambulatory' ? 'ambulatory' : 'home';
  const chosen = INTAKE_WAYS.find((one) => one === text('way')) ?? 'typed';
  const way = of === 'ambulatory' && chosen === 'typed' ? 'pasted' : chosen;
  const rows = gridRows(rules, gridDays(text));
  const table = way === 'typed' ? gridTable(rows, text) : null;
  const came = table?.text ?? text(way);
  const lines = came.split(LINE_BREAK);
  const mended = new Set<number>();
  const whole = lines.map((line, at) => {
    const anew = way === 'typed' ? '' : text(lineField(at + 1));
    if (anew === '' || anew === line) return line;
    mended.add(at + 1);
    return anew;
  });
  const isNothing = table === null ? came.trim() === '' : table.rowOfLine.size === 0;
  const said = text('zone');
  const dates = (['dmy', 'mdy', 'ymd'] as const).find((one) => one === text('dates')) ?? null;
  const unit = (['mmHg', 'kPa'] as const).find((one) => one === text('unit')) ?? null;
  const read = isNothing
    ? null
    : readSeries(mended.size === 0 ? came : whole.join('\n'), {
        kind: of,
        zone: said === '' ? (way === 'typed' ? zone : null) : said,
        dates: dates as DateOrder | null,
        unit: way === 'typed' ? 'mmHg' : unit,
        mapping: way === 'typed' ? null : mapping,
        areColumnsSure: way === 'typed' || text('sure') === 'yes',
        isTyped: way === 'typed',
      });
  return { of, way, rows, table, read, lines, mended };
}

function gridDays(text: TextOf): number {
  const days = Number(text('days'));
  return Number.isInteger(days) ? Math.min(MOST_GRID_DAYS, Math.max(1, days)) : 1;
}

/** What each column is, as kept in a field: roles with commas, blank for a column that is not read. */
export function columnsText(columns: SeriesMapping['columns']): string {
  return columns.map((role) => role ?? '').join(',');
}

/** Reads what each column is; null where the field is blank. */
export function columnsIn(text: string): (SeriesColumn | null)[] | null {
  if (text === '') return null;
  return text.split(',').map((role) => SERIES_COLUMNS.find((one) => one === role) ?? null);
}

/** Whether a grid has a time for each part of the day and a first day. */
export function isGridDated(text: TextOf): boolean {
  return text('firstDay') !== '' && GRID_PARTS.every((part) => text(part) !== '');
}

/**
 * Whether it is still to be said when the person slept through a recording: nothing tells its night, neither times nor marks
 * in the table, and nobody said that it is not known.
 */
export function isNightAsked(
  {
    of,
    asleep,
    readings,
  }: Pick<SeriesEvidence, 'of' | 'asleep'> & {
    readonly readings: readonly Pick<SeriesEvidence['readings'][number], 'asleep'>[];
  },
  text: TextOf,
): boolean {
  const isMarked = readings.some((one) => one.asleep !== null);
  return of === 'ambulatory' && asleep === null && !isMarked && text('asleepUnknown') === '';
}
