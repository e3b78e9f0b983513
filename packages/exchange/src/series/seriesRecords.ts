import Papa from 'papaparse';

/** One record of a table of readings: its cells without spaces around them, and the physical line where it begins, from 1. */
export type SeriesRecord = { readonly line: number; readonly cells: readonly string[] };

/** What separates cells; `space` is a paste of words, such as `2025-03-01 07:30 142/88 74`. */
export type Delimiter = ',' | ';' | '\t' | 'space';

export type SeriesRecords = { readonly delimiter: Delimiter; readonly records: readonly SeriesRecord[] };

/** Lines that are looked at to tell the delimiter, and how many of them must have it. Source: decision. */
const LOOKED_AT = 50;
const MOST = 0.6;

/** Arabic-Indic and Persian digits, marks of direction and spaces that are none. */
const FOREIGN = /[\u0660-\u0669\u06f0-\u06f9\u200e\u200f\u202a-\u202e\u2066-\u2069\u00a0\u202f\u2009\ufeff]/;

/**
 * The records of a text that came from a spreadsheet, a recorder, a paste or a hand. Lines end in CRLF, LF or CR; blank
 * ones are no records and count as lines. A quote that is never closed, or whose closing lies beyond lines that are
 * rows themselves, is a sign like any other, so that it swallows nothing.
 *
 * Errors: none; every line that is not blank is in exactly one record.
 */
export function seriesRecords(text: string): SeriesRecords {
  const lines = plain(text).split('\n');
  const said = /^sep=(.)\s*$/.exec(lines[0] ?? '')?.[1];
  if (said !== undefined) lines[0] = '';
  const delimiter = said === ',' || said === ';' || said === '\t' ? said : delimiterOf(lines);
  const records: SeriesRecord[] = [];
  for (let at = 0; at < lines.length; at++) {
    const line = lines[at] as string;
    if (line.trim() === '') continue;
    if (!line.includes('"')) {
      const cells = cellsOf(line, delimiter);
      if (cells.some((cell) => cell !== '')) records.push({ line: at + 1, cells });
      // A line of delimiters alone is what a spreadsheet leaves of an empty row.
      continue;
    }
    const last = lastLineOf(lines, at, delimiter);
    const cells =
      last === null
        ? unquotedCells(line, delimiter)
        : quotedCells(lines.slice(at, last + 1).join('\n'), delimiter);
    if (cells.some((cell) => cell !== '')) records.push({ line: at + 1, cells });
    at = last ?? at;
  }
  return { delimiter, records };
}

function plain(text: string): string {
  const ended = text.includes('\r') ? text.replace(/\r\n?/g, '\n') : text;
  if (!FOREIGN.test(ended)) return ended;
  return ended
    .replace(/[\u200e\u200f\u202a-\u202e\u2066-\u2069\ufeff]/g, '')
    .replace(/[\u00a0\u202f\u2009]/g, ' ')
    .replace(/[\u0660-\u0669]/g, (digit) => String(digit.charCodeAt(0) - 0x660))
    .replace(/[\u06f0-\u06f9]/g, (digit) => String(digit.charCodeAt(0) - 0x6f0));
}

/** A tab or a semicolon says more than a comma, which may point numbers. */
function delimiterOf(lines: readonly string[]): Delimiter {
  // A line that a quoted line break cuts says little.
  const looked = lines.filter((line) => line.trim() !== '' && quotesIn(line) % 2 === 0).slice(0, LOOKED_AT);
  for (const delimiter of ['\t', ';', ','] as const) {
    const having = looked.filter((line) => line.includes(delimiter)).length;
    if (having > 0 && having >= MOST * looked.length) return delimiter;
  }
  return 'space';
}

function cellsOf(line: string, delimiter: Delimiter): string[] {
  // What a paste of words means is told word by word, of the whole line.
  if (delimiter === 'space') return [line.trim()];
  const cells = line.split(delimiter);
  for (let at = 0; at < cells.length; at++) cells[at] = (cells[at] as string).trim();
  return cells;
}

/** The line on which the quotes that open on a line are closed; null if they are not, or beyond something like a row. */
function lastLineOf(lines: readonly string[], from: number, delimiter: Delimiter): number | null {
  let quotes = quotesIn(lines[from] as string);
  let at = from;
  while (quotes % 2 === 1) {
    at++;
    const next = lines[at];
    if (next === undefined) return null;
    const place = next.indexOf('"');
    if (isLikeRow(place < 0 ? next : next.slice(0, place), delimiter)) return null;
    quotes += quotesIn(next);
    if (quotes % 2 === 0 && !isClosing(next, delimiter)) return null;
  }
  return at;
}

function quotesIn(line: string): number {
  return line.split('"').length - 1;
}

/** Whether a line closes what was quoted: after its first quote that is not doubled comes a delimiter, or nothing. */
function isClosing(line: string, delimiter: Delimiter): boolean {
  const after = line.replaceAll('""', '').split('"')[1]?.trimStart() ?? '';
  return after === '' || after.startsWith(delimiter);
}

/** Digits and more than one delimiter: more than the rest of a note. */
function isLikeRow(line: string, delimiter: Delimiter): boolean {
  return delimiter === 'space' || (/\d/.test(line) && line.split(delimiter).length > 2);
}

function quotedCells(segment: string, delimiter: Delimiter): string[] {
  if (delimiter === 'space') return unquotedCells(segment, delimiter);
  const { data } = Papa.parse<string[]>(segment, { delimiter, newline: '\n', skipEmptyLines: false });
  const [only = [], ...more] = data;
  // Quotes in odd places may cut it into several: then they are signs like any other.
  return more.length > 0 ? unquotedCells(segment, delimiter) : only.map((cell) => cell.trim());
}

function unquotedCells(segment: string, delimiter: Delimiter): string[] {
  return cellsOf(segment.replaceAll('\n', ' '), delimiter).map(withoutQuotes);
}

function withoutQuotes(cell: string): string {
  let [from, to] = [0, cell.length];
  while (from < to && cell[from] === '"') from++;
  while (to > from && cell[to - 1] === '"') to--;
  return cell.slice(from, to).trim();
}
