import { type Parsed, type Refusal, refusal } from '@evenfall/clinical';

/** One record of a table: its cells, and the physical line of the file where it begins, from 1. */
export type TableRecord = { readonly line: number; readonly cells: readonly string[] };

/** A table as it was read: its records, the heading first, and what separates and points its numbers. */
export type Table = {
  readonly records: readonly TableRecord[];
  readonly delimiter: string;
  /** Spreadsheets of countries with a decimal comma write semicolons and `36,8`. */
  readonly hasDecimalComma: boolean;
};

const DELIMITERS = [',', ';', '\t'] as const;

/**
 * The records of a CSV text: RFC 4180 and what spreadsheets make of it. A byte-order mark and a first line `sep=;` are
 * taken off; lines end in CRLF, LF or CR, and within quotes a line break is data.
 *
 * Errors: a quote that is not closed (`contradicts`), with the line where it begins.
 */
export function readTable(text: string): Parsed<Table> {
  const whole = text.replace(/^\ufeff/, '');
  const said = /^sep=(.)(\r\n|\n|\r)/.exec(whole);
  const body = said === null ? whole : whole.slice(said[0].length);
  const heading = body.split(/[\r\n]/, 1)[0] ?? '';
  const fields = (one: string) => heading.split(one).length;
  const delimiter = said?.[1] ?? DELIMITERS.toSorted((a, b) => fields(b) - fields(a))[0] ?? ',';
  const read = recordsOf(body, delimiter, said === null ? 1 : 2);
  if (!read.ok) return read;
  return {
    ok: true,
    value: { records: read.value, delimiter, hasDecimalComma: delimiter !== ',' },
  };
}

function recordsOf(text: string, delimiter: string, firstLine: number): Parsed<TableRecord[]> {
  const records: TableRecord[] = [];
  let cells: string[] = [];
  let cell = '';
  let line = firstLine;
  let begun = firstLine;
  let quotedAt: number | null = null;
  const end = () => {
    cells.push(cell);
    cell = '';
    // A line with nothing on it is no record.
    if (cells.length > 1 || cells[0] !== '') records.push({ line: begun, cells });
    cells = [];
  };
  for (let at = 0; at < text.length; at += 1) {
    const sign = text[at] as string;
    const isBreak = sign === '\n' || sign === '\r';
    const isPair = sign === '\r' && text[at + 1] === '\n';
    if (quotedAt !== null) {
      if (sign === '"' && text[at + 1] === '"') {
        cell += '"';
        at += 1;
      } else if (sign === '"') quotedAt = null;
      else cell += sign;
      if (isBreak && !isPair) line += 1;
    } else if (sign === '"' && cell === '') quotedAt = line;
    else if (sign === delimiter) {
      cells.push(cell);
      cell = '';
    } else if (isBreak) {
      if (isPair) at += 1;
      end();
      line += 1;
      begun = line;
    } else cell += sign;
  }
  if (quotedAt !== null) {
    const refusals: Refusal[] = [refusal('', 'contradicts', 'closed-quote', null, { line: quotedAt })];
    return { ok: false, refusals };
  }
  if (cell !== '' || cells.length > 0) end();
  return { ok: true, value: records };
}
