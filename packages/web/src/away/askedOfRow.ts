import { INTAKE_LIMITS, outOfLine } from '@evenfall/clinical';
import { afterKey, GRID_CELLS, type GridCell, isHalfTyped, type Typed } from './typedCell.js';
import {
  type CellPlace,
  cellField,
  type GridRow,
  type HalfTyped,
  halfTypedIn,
  type TextOf,
  typedIn,
} from './weekGrid.js';

/** What is asked about a row that was typed. Nothing is changed before somebody answers. */
export type AskedOfRow =
  /** The two numbers may stand the other way round. */
  | { readonly asks: 'other-way-round'; readonly systolic: number; readonly diastolic: number }
  /** A number stands far from the others of its kind: a digit may be missing. */
  | { readonly asks: 'digit'; readonly cell: GridCell; readonly value: number; readonly usual: number };

/** The field that says that a number which was asked about stands as it is; it holds the number. */
export function sureField(row: GridRow, cell: GridCell): string {
  return `${cellField(row, cell)} sure`;
}

/** What there is to ask about a row, beside the other rows of the page; nothing about a number that is still being typed. */
export function askedOfRow(row: GridRow, rows: readonly GridRow[], text: TextOf): AskedOfRow[] {
  const typed = numbersOf(typedIn(row, text));
  const others = rows.filter((one) => one !== row).map((one) => numbersOf(typedIn(one, text)));
  const usualBeside = (cell: GridCell, value: number | null) =>
    value === null
      ? null
      : outOfLine(
          value,
          others.flatMap((one) => one[cell] ?? []),
        );
  const { systolic, diastolic } = typed;
  const isSwapped =
    systolic !== null &&
    diastolic !== null &&
    diastolic > systolic &&
    usualBeside('systolic', diastolic) === null &&
    usualBeside('diastolic', systolic) === null;
  const digits = GRID_CELLS.flatMap((cell): AskedOfRow[] => {
    const value = typed[cell];
    const usual = usualBeside(cell, value);
    if (value === null || usual === null || text(sureField(row, cell)) === String(value)) return [];
    return isSwapped && cell !== 'pulse' ? [] : [{ asks: 'digit', cell, value, usual }];
  });
  return isSwapped
    ? [{ asks: 'other-way-round', systolic: diastolic, diastolic: systolic }, ...digits]
    : digits;
}

/**
 * Whether a row is still on its way while somebody types in it: one of its two pressures is not there yet, and nothing in it
 * is wrong so far. No reading is made of it before it is whole or left.
 */
export function isUnderWay(typed: Typed): boolean {
  if (typed.systolic !== '' && typed.diastolic !== '') return false;
  return GRID_CELLS.every((cell) => typed[cell] === '' || numberIn(cell, typed[cell]) !== null);
}

/** What was typed so far of a number or of a row, and the cell to go on in. */
export type Unfinished = HalfTyped & { readonly of: 'number' | 'row' };

/**
 * What keeps a page that is being typed in from being signed: a number that is half typed, or a row of which one pressure
 * is still to come, with the cell to go on in. Nothing of it is read yet, so that a signature would lose it. Null for none.
 */
export function unfinishedIn(typing: CellPlace | null, text: TextOf): Unfinished | null {
  if (typing === null) return null;
  const half = halfTypedIn(typing, text);
  if (half !== null) return { ...half, of: 'number' };
  const { row } = typing;
  const typed = typedIn(row, text);
  if (GRID_CELLS.every((cell) => typed[cell] === '') || !isUnderWay(typed)) return null;
  const { systolic, diastolic, pulse } = typed;
  const pressure = `${systolic || '–'}/${diastolic || '–'}`;
  return {
    of: 'row',
    row,
    cell: systolic === '' ? 'systolic' : 'diastolic',
    text: pulse === '' ? pressure : `${pressure} ${pulse}`,
  };
}

/** Whether the danger of a row is not said yet: where its numbers may stand the other way round, it is another one. */
export function holdsDangerBack(asked: readonly AskedOfRow[]): boolean {
  return asked.some((one) => one.asks === 'other-way-round');
}

function numbersOf(typed: Typed): Record<GridCell, number | null> {
  const of = (cell: GridCell) => (isHalfTyped(cell, typed[cell]) ? null : numberIn(cell, typed[cell]));
  return { systolic: of('systolic'), diastolic: of('diastolic'), pulse: of('pulse') };
}

/** A number as it was typed, within what a page may hold; null for anything else. */
function numberIn(cell: GridCell, text: string): number | null {
  const { minimum, maximum } = INTAKE_LIMITS[cell];
  const isNumber = /^[1-9]\d*$/.test(text) && afterKey(cell, text).text === text;
  const value = Number(text);
  return isNumber && value >= minimum && value <= maximum ? value : null;
}
