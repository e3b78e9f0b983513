import { stringify } from 'csv-stringify/sync';

/** A cell: text, a number, a yes or no, or nothing. Nothing is an empty cell, never a zero. */
export type Cell = string | number | boolean | null;

/** A text that a spreadsheet would run as a formula gets an apostrophe before it. Source: docs/conventions.md 9. */
const RUNS_AS_FORMULA = /^[=+\-@\t\r]/;

/** RFC 4180 section 2.6 quotes a cell with a line break; a lone CR or LF is one to many readers. */
const LINE_BREAK = /[\r\n]/;

/**
 * Rows as CSV: RFC 4180, UTF-8, CRLF, the headings first.
 *
 * Errors: throws when a row has another number of cells than there are headings.
 */
export function csv(headings: readonly string[], rows: readonly (readonly Cell[])[]): string {
  for (const row of rows) {
    if (row.length !== headings.length)
      throw new Error(`a row has ${row.length} cells for ${headings.length} headings`);
  }
  return stringify([headings, ...rows.map((row) => row.map(written))], {
    record_delimiter: '\r\n',
    quoted_match: LINE_BREAK,
  });
}

function written(cell: Cell): string {
  if (cell === null) return '';
  if (typeof cell !== 'string') return String(cell);
  return RUNS_AS_FORMULA.test(cell) ? `'${cell}` : cell;
}
