import type { DataTable } from '../figure/figure.js';
import { MARGIN, type Sheets } from './sheets.js';

const SIZE = 7.5;
const SIDE = 5;
const CAPTION = 8;

/**
 * How wide columns are: as wide as their longest text asks, the last taking what is left. Where that is too much, headings give way
 * at their spaces; where it still is, all but the first column, which names the rows, are narrowed.
 */
function widthsOf({ doc }: Sheets, table: DataTable, width: number): number[] {
  const widest = (texts: readonly string[]) => Math.max(0, ...texts.map((text) => doc.widthOfString(text)));
  const asking = (headingParts: (heading: string) => readonly string[]) =>
    table.columns.map((heading, k) => {
      doc.font('bold').fontSize(SIZE);
      const head = widest(headingParts(heading));
      doc.font('regular');
      return Math.max(head, widest(table.rows.map((row) => row[k] ?? ''))) + 2 * SIDE + 1;
    });
  const sum = (widths: readonly number[]) => widths.reduce((all, one) => all + one, 0);
  const asked = asking((heading) => [heading]);
  const total = sum(asked);
  const last = asked.length - 1;
  const before = total - (asked[last] ?? 0);
  // A long last column (why something was left out) wraps; the others keep their width.
  if (total > width && before < width * 0.7)
    return asked.map((one, k) => (k === last ? width - before : one));
  if (total > width) {
    const least = asking((heading) => heading.split(' '));
    const spare = width - sum(least);
    if (spare >= 0) return least.map((one) => one + spare / least.length);
    const [first = 0] = least;
    if (first > width / 2) return least.map((one) => (one * width) / sum(least));
    return least.map((one, k) => (k === 0 ? one : (one * (width - first)) / (sum(least) - first)));
  }
  // Numbers stay together; what is left over goes to words at the end.
  const each = isNumberColumn(table, last) ? (width - total) / asked.length : Math.min((width - total) / asked.length, MOST_BETWEEN); // biome-ignore format: one thought
  const rest = width - total - each * asked.length;
  return asked.map((one, k) => one + each + (k === last ? rest : 0));
}

/** The most room that is put between columns of a list. */
const MOST_BETWEEN = 22;

/** Whether a column holds numbers alone, which stand at its right edge. */
function isNumberColumn(table: DataTable, k: number): boolean {
  return k > 0 && table.rows.every((row) => /^[-+−≥>\d.,/ ()%]*$/.test(row[k] ?? ''));
}

function rowHeight(
  { doc, pad }: Sheets,
  row: readonly string[],
  widths: readonly number[],
  isHead: boolean,
): number {
  doc.font(isHead ? 'bold' : 'regular').fontSize(SIZE);
  const heights = row.map((text, k) =>
    doc.heightOfString(text === '' ? ' ' : text, { width: (widths[k] as number) - 2 * SIDE }),
  );
  return Math.max(...heights) + 2 * pad - 0.6;
}

/** How high a table is, on one sheet. */
export function tableHeight(sheets: Sheets, table: DataTable, width: number): number {
  const widths = widthsOf(sheets, table, width);
  const rows = [table.columns, ...table.rows].map((row) =>
    rowHeight(sheets, row, widths, row === table.columns),
  );
  sheets.doc.font('bold').fontSize(CAPTION);
  return sheets.doc.heightOfString(table.caption, { width }) + 3 + rows.reduce((sum, one) => sum + one, 0);
}

/**
 * Where lists end if they are drawn from the current place down: after how many further sheets, and how far down the last of them
 * as a share of a whole one.
 */
export function endOfLists(sheets: Sheets, lists: readonly DataTable[]): { turns: number; share: number } {
  const { doc, end } = sheets;
  let [turns, y] = [0, sheets.y];
  const turn = () => {
    turns += 1;
    y = MARGIN.top;
  };
  for (const table of lists) {
    const widths = widthsOf(sheets, table, sheets.width);
    doc.font('bold').fontSize(CAPTION);
    const caption = doc.heightOfString(table.caption, { width: sheets.width });
    if (y + caption + LEAST_UNDER > end) turn();
    const head = rowHeight(sheets, table.columns, widths, true);
    y += caption + 3 + head;
    for (const row of table.rows) {
      const height = rowHeight(sheets, row, widths, false);
      if (y + height > end) {
        turn();
        y += head;
      }
      y += height;
    }
    y += 3 * AFTER_TABLE;
  }
  return { turns, share: (y - MARGIN.top) / (end - MARGIN.top) };
}

/** Room that a table asks for under its caption, in points. */
const LEAST_UNDER = 40;

/** Draws a table with its tags from the current place down; over sheets where it is long, its heading again on each. */
export function drawTable(
  sheets: Sheets,
  table: DataTable,
  x: number,
  width: number,
  mayTurn: boolean,
): void {
  const { doc, root } = sheets;
  const widths = widthsOf(sheets, table, width);
  doc.font('bold').fontSize(CAPTION);
  const caption = doc.heightOfString(table.caption, { width });
  if (mayTurn && sheets.y + caption + LEAST_UNDER > sheets.end) sheets.turn();
  sheets.tagged('P', () => {
    doc.font('bold').fontSize(CAPTION).fillColor('#1a1a1a').text(table.caption, x, sheets.y, { width });
  });
  sheets.y += caption + 3;
  const whole = doc.struct('Table');
  root.add(whole);
  const isNumber = table.columns.map((_, k) => isNumberColumn(table, k));

  const draw = (row: readonly string[], isHead: boolean) => {
    const height = rowHeight(sheets, row, widths, isHead);
    if (mayTurn && !isHead && sheets.y + height > sheets.end) {
      sheets.turn();
      draw(table.columns, true);
    }
    const tr = doc.struct('TR');
    whole.add(tr);
    let at = x;
    row.forEach((text, k) => {
      const wide = widths[k] as number;
      const [left, top] = [at, sheets.y];
      tr.add(
        doc.struct(isHead || (k === 0 && text !== '') ? 'TH' : 'TD', {}, () => {
          doc
            .font(isHead ? 'bold' : 'regular')
            .fontSize(SIZE)
            .fillColor('#1a1a1a')
            .text(text === '' ? ' ' : text, left + SIDE, top + sheets.pad, {
              width: wide - 2 * SIDE,
              align: isNumber[k] ? 'right' : 'left',
            });
        }),
      );
      at += wide;
    });
    tr.end();
    sheets.y += height;
    const y = sheets.y;
    sheets.untagged(() => {
      doc
        .lineWidth(isHead ? 0.8 : 0.3)
        .strokeColor(isHead ? '#1a1a1a' : '#bbbbbb')
        .moveTo(x, y)
        .lineTo(x + width, y)
        .stroke();
    });
  };
  draw(table.columns, true);
  for (const row of table.rows) draw(row, false);
  whole.end();
}

/** Room under the last line of a table before what follows. */
export const AFTER_TABLE = MARGIN.top / 4;
