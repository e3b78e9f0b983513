import type { HomeRules } from '@evenfall/clinical';
import { GRID_CELLS, type GridCell, isHalfTyped, type Typed } from './typedCell.js';

export const GRID_PARTS = ['morning', 'evening'] as const;
export type GridPart = (typeof GRID_PARTS)[number];

/** A reading's place in the grid: day and reading from 1. */
export type GridRow = { readonly day: number; readonly part: GridPart; readonly reading: number };

/** A cell of the grid. */
export type CellPlace = { readonly row: GridRow; readonly cell: GridCell };

/** The rows of a grid in the order of the page: a day, its morning, its evening. */
export function gridRows(
  { readingsInSitting }: Pick<HomeRules, 'readingsInSitting'>,
  days: number,
): GridRow[] {
  const rows: GridRow[] = [];
  for (let day = 1; day <= days; day++) {
    for (const part of GRID_PARTS) {
      for (let reading = 1; reading <= readingsInSitting; reading++) rows.push({ day, part, reading });
    }
  }
  return rows;
}

/** The field of the form that a cell is kept in. */
export function cellField({ day, part, reading }: GridRow, cell: GridCell): string {
  return `${day} ${part} ${reading} ${cell}`;
}

/** The id of a cell on the page. */
export function cellId(row: GridRow, cell: GridCell): string {
  return cellField(row, cell).replaceAll(' ', '-');
}

/** A number of which more digits are to come, and the cell that it stands in. */
export type HalfTyped = CellPlace & { readonly text: string };

/** What stands half typed in the cell that is being typed in; null for none. */
export function halfTypedIn(typing: CellPlace | null, text: TextOf): HalfTyped | null {
  if (typing === null) return null;
  const half = text(cellField(typing.row, typing.cell));
  return isHalfTyped(typing.cell, half) ? { ...typing, text: half } : null;
}

/** The field that the time of a sitting is kept in; blank is the usual time of that part of the day. */
export function timeField({ day, part }: Pick<GridRow, 'day' | 'part'>): string {
  return `${day} ${part} at`;
}

/** The field that holds what was written beside the readings of a day. */
export function noteField(day: number): string {
  return `${day} note`;
}

/** The text of a field of the form. */
export type TextOf = (field: string) => string;

export function typedIn(row: GridRow, text: TextOf): Typed {
  const of = (cell: GridCell) => text(cellField(row, cell)).trim();
  return { systolic: of('systolic'), diastolic: of('diastolic'), pulse: of('pulse') };
}

/** The local time of a sitting, `HH:MM`; about that time where nobody said it of this one. */
export function sittingTime(
  row: Pick<GridRow, 'day' | 'part'>,
  text: TextOf,
): { at: string; isAbout: boolean } {
  const own = text(timeField(row));
  return own === '' ? { at: text(row.part), isAbout: true } : { at: own, isAbout: false };
}

/** A calendar date so many days later; dates as `YYYY-MM-DD`. Null where the first is none. */
export function dayLater(first: string, days: number): string | null {
  const at = Date.parse(`${first}T00:00:00Z`);
  return Number.isNaN(at) ? null : new Date(at + days * DAY_MS).toISOString().slice(0, 10);
}

const DAY_MS = 86_400_000;
const DAY_MINUTES = 1440;

/** The grid as a table that is read as any other, and which row of the grid each of its lines is. */
export type GridTable = {
  readonly text: string;
  readonly rowOfLine: ReadonlyMap<number, GridRow>;
  /** What was written beside days that have no number, each with its date (`YYYY-MM-DD`). */
  readonly notesAlone: readonly { readonly date: string; readonly note: string }[];
};

const HEADING = ['time', ...GRID_CELLS, 'part'];

/** The columns of the table that cells of the grid are in, from 1. */
export const COLUMN_OF: Readonly<Record<GridCell, number>> = { systolic: 2, diastolic: 3, pulse: 4 };

/** A minute lies between readings of a sitting. Source: out-of-office handbook 2 (readings one to two minutes apart). */
const MINUTES_APART = 1;

/**
 * What was typed as a table. Rows without any number are no rows: a blank is never a zero. What was written beside a day is the
 * note of its first reading; beside a day without any it stands alone.
 */
export function gridTable(rows: readonly GridRow[], text: TextOf): GridTable {
  const hasNotes = rows.some(({ day }) => text(noteField(day)).trim() !== '');
  const lines = [[...HEADING, ...(hasNotes ? ['note'] : [])].join('\t')];
  const noted = new Set<number>();
  const rowOfLine = new Map<number, GridRow>();
  for (const row of rows) {
    const typed = typedIn(row, text);
    if (GRID_CELLS.every((cell) => typed[cell] === '')) continue;
    const { at } = sittingTime(row, text);
    const { clock, days } = later(at, (row.reading - 1) * MINUTES_APART);
    const time = `${dayLater(text('firstDay'), row.day - 1 + days) ?? ''} ${clock}`;
    const cells = [time, ...GRID_CELLS.map((cell) => typed[cell]), row.part];
    if (hasNotes) cells.push(noted.has(row.day) ? '' : text(noteField(row.day)).trim());
    noted.add(row.day);
    lines.push(cells.map((cell) => cell.replaceAll(/[\t"]/g, ' ')).join('\t'));
    rowOfLine.set(lines.length, row);
  }
  const alone = new Set(rows.map(({ day }) => day).filter((day) => !noted.has(day)));
  const notesAlone = [...alone].flatMap((day) => {
    const note = text(noteField(day)).trim();
    return note === '' ? [] : [{ date: dayLater(text('firstDay'), day - 1) ?? '', note }];
  });
  return { text: lines.join('\n'), rowOfLine, notesAlone };
}

/** A time of day so many minutes later, and how many days that is on: a sitting that begins late passes midnight. */
function later(time: string, minutes: number): { readonly clock: string; readonly days: number } {
  const [hour = Number.NaN, minute = Number.NaN] = time.split(':').map(Number);
  const at = hour * 60 + minute + minutes;
  if (Number.isNaN(at)) return { clock: '', days: 0 };
  const clock = [Math.floor(at / 60) % 24, at % 60].map((one) => String(one).padStart(2, '0')).join(':');
  return { clock, days: Math.floor(at / DAY_MINUTES) };
}
