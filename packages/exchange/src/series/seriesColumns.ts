import { INTAKE_LIMITS } from '@evenfall/clinical';
import { numberOf, pressureOf } from './pressureText.js';
import type { SeriesRecord } from './seriesRecords.js';
import { plainWord, roleOfHeading, type SeriesColumn } from './seriesWords.js';
import { readClock, readDate, readTime } from './timeText.js';

/** What each column is, with the headings by which it can be known again. Null is a column that is not read. */
export type SeriesMapping = {
  /** Null where the text has no heading. */
  readonly headings: readonly string[] | null;
  readonly columns: readonly (SeriesColumn | null)[];
};

/** Where the heading is among the records; null without one. */
export type FoundColumns = {
  readonly mapping: SeriesMapping;
  readonly headingAt: number | null;
  /** Told by the numbers themselves, so that nobody need ask whether they are swapped. */
  readonly isByContent: boolean;
  readonly missing: readonly ('time' | 'systolic' | 'diastolic')[];
};

type Kind = 'time' | 'date' | 'clock' | 'pressure' | 'number' | 'text';

/** Rows that are looked at to tell columns, and the share of them that must agree. Source: decision. */
const SAMPLE = 200;
const NEARLY_ALL = 0.9;
const MOSTLY = 0.6;
/** A title or two may stand above the headings. Source: decision. */
const HEADING_WITHIN = 15;

/** Finds the heading and what each column is: by the mapping given, by the words of the heading, by content. */
export function findColumns(records: readonly SeriesRecord[], given: SeriesMapping | null): FoundColumns {
  const headingAt = headingPlace(records);
  const headings = headingAt === null ? null : (records[headingAt] as SeriesRecord).cells;
  const rows = sampleOf(records, headingAt === null ? 0 : headingAt + 1);
  const width = headings?.length ?? usualWidth(rows);
  if (given !== null) {
    return { ...foundOf(given.columns, headings, headingAt, width), isByContent: false };
  }
  const content = Array.from({ length: width }, (_, at) => contentOf(rows, at));
  const columns = Array.from({ length: width }, (_, at) =>
    roleBeside(roleOfHeading(headings?.[at] ?? ''), content[at] as Content),
  );
  withoutRepeats(columns);
  settleTimes(columns, content);
  const isByContent = !columns.includes('systolic') && !columns.includes('pressure');
  settlePressures(columns, content, rows);
  return { ...foundOf(columns, headings, headingAt, width), isByContent };
}

function foundOf(
  columns: readonly (SeriesColumn | null)[],
  headings: readonly string[] | null,
  headingAt: number | null,
  width: number,
): Omit<FoundColumns, 'isByContent'> {
  const whole = Array.from({ length: Math.max(width, columns.length) }, (_, at) => columns[at] ?? null);
  const has = (role: SeriesColumn) => whole.includes(role);
  const missing: ('time' | 'systolic' | 'diastolic')[] = [];
  if (!has('time') && !(has('date') && has('clock'))) missing.push('time');
  if (!has('pressure') && !has('systolic')) missing.push('systolic');
  if (!has('pressure') && !has('diastolic')) missing.push('diastolic');
  return { mapping: { headings, columns: whole }, headingAt, missing };
}

/** The first record whose words say what columns are; else the first of all, if nothing in it is a time or a number. */
function headingPlace(records: readonly SeriesRecord[]): number | null {
  for (let at = 0; at < Math.min(HEADING_WITHIN, records.length); at++) {
    const { cells } = records[at] as SeriesRecord;
    if (isData(cells)) break;
    if (cells.filter((cell) => roleOfHeading(cell) !== null).length > 1) return at;
  }
  const first = records[0];
  return first === undefined || isData(first.cells) ? null : 0;
}

function isData(cells: readonly string[]): boolean {
  return cells.some((cell) => {
    const kind = kindOf(cell);
    return kind === 'time' || kind === 'date' || kind === 'clock' || kind === 'pressure' || kind === 'number';
  });
}

function sampleOf(records: readonly SeriesRecord[], from: number): SeriesRecord[] {
  const step = Math.max(1, Math.floor((records.length - from) / SAMPLE));
  const rows: SeriesRecord[] = [];
  for (let at = from; at < records.length && rows.length < SAMPLE; at += step)
    rows.push(records[at] as SeriesRecord);
  return rows;
}

function usualWidth(rows: readonly SeriesRecord[]): number {
  const counts = new Map<number, number>();
  for (const { cells } of rows) counts.set(cells.length, (counts.get(cells.length) ?? 0) + 1);
  return [...counts].sort((a, b) => b[1] - a[1] || b[0] - a[0])[0]?.[0] ?? 0;
}

type Content = { readonly kind: Kind | null; readonly isCounter: boolean };

/** What most cells of a column are, blank ones left out. */
function contentOf(rows: readonly SeriesRecord[], at: number): Content {
  const counts = new Map<Kind, number>();
  let known = 0;
  let isCounter = rows.length > 1;
  let before: number | null = null;
  for (const { cells } of rows) {
    const cell = cells[at] ?? '';
    if (cell === '') continue;
    known++;
    const kind = kindOf(cell);
    counts.set(kind, (counts.get(kind) ?? 0) + 1);
    const value = kind === 'number' ? numberOf(cell) : Number.NaN;
    if (!(before === null ? value <= 1 : value > before)) isCounter = false;
    before = value;
  }
  const most = [...counts].sort((a, b) => b[1] - a[1])[0];
  const kind = most !== undefined && most[1] >= MOSTLY * known ? most[0] : null;
  return { kind, isCounter };
}

function kindOf(cell: string): Kind {
  if (!Number.isNaN(numberOf(cell))) return 'number';
  if (pressureOf(cell) !== null) return 'pressure';
  if (readTime(cell) !== null) return 'time';
  if (readDate(cell) !== null) return 'date';
  return readClock(cell) !== null ? 'clock' : 'text';
}

/** A word of a heading says what a column is for; whether it holds a date, a time of day or both its content tells. */
function roleBeside(role: SeriesColumn | null, { kind }: Content): SeriesColumn | null {
  if (role === 'time' || role === 'date' || role === 'clock') {
    if (kind === 'time' || kind === 'date' || kind === 'clock') return kind;
    // `Day` over 1, 2, 3 is no date.
    return kind === 'number' ? null : role;
  }
  if ((role === 'systolic' || role === 'diastolic') && kind === 'pressure') return 'pressure';
  // `Dia` is half of a pressure to some and the day to others.
  if (role === 'diastolic' && (kind === 'date' || kind === 'time')) return kind;
  if (role === 'pressure' && kind === 'number') return null;
  // `Started` and `Inicio` are who started a reading to some, and when it was to others.
  if (role === 'started' && (kind === 'date' || kind === 'time' || kind === 'clock')) return kind;
  return role;
}

function withoutRepeats(columns: (SeriesColumn | null)[]): void {
  const seen = new Set<SeriesColumn>();
  columns.forEach((role, at) => {
    if (role !== null && seen.has(role)) columns[at] = null;
    else if (role !== null) seen.add(role);
  });
}

function settleTimes(columns: (SeriesColumn | null)[], content: readonly Content[]): void {
  for (const kind of ['time', 'date', 'clock'] as const) {
    if (columns.includes(kind) || (kind !== 'time' && columns.includes('time'))) continue;
    const at = columns.findIndex((role, k) => role === null && content[k]?.kind === kind);
    if (at >= 0) columns[at] = kind;
  }
}

/** The numbers that no heading named: of pressures the larger one in nearly all rows is systolic. */
function settlePressures(
  columns: (SeriesColumn | null)[],
  content: readonly Content[],
  rows: readonly SeriesRecord[],
): void {
  if (columns.includes('pressure')) return;
  const slashed = columns.findIndex((role, at) => role === null && content[at]?.kind === 'pressure');
  if (slashed >= 0 && !columns.includes('systolic')) {
    columns[slashed] = 'pressure';
    return;
  }
  const free = columns.flatMap((role, at) => {
    const { kind, isCounter } = content[at] as Content;
    return role === null && kind === 'number' && !isCounter ? [at] : [];
  });
  const isOver = (a: number, b: number) => shareOver(rows, a, b) >= NEARLY_ALL;
  const systolic = columns.indexOf('systolic');
  const diastolic = columns.indexOf('diastolic');
  if (systolic >= 0 && diastolic >= 0) return;
  if (systolic >= 0 || diastolic >= 0) {
    const [only, ...more] = free;
    if (only === undefined || more.length > 0) return;
    if (systolic >= 0 && isOver(systolic, only)) columns[only] = 'diastolic';
    if (diastolic >= 0 && isOver(only, diastolic)) columns[only] = 'systolic';
    return;
  }
  const isPulseKnown = columns.includes('pulse');
  if (free.length < 2 || free.length > (isPulseKnown ? 2 : 3)) return;
  const largest = free.find((one) => free.every((other) => other === one || isOver(one, other)));
  if (largest === undefined) return;
  const others = free.filter((one) => one !== largest);
  // Of three, diastolic and pulse are told by their order alone: systolic, diastolic, pulse as everybody writes it.
  if (others.length === 2 && largest !== free[0]) return;
  columns[largest] = 'systolic';
  columns[others[0] as number] = 'diastolic';
  if (others.length === 2) columns[others[1] as number] = 'pulse';
}

/** Share of the rows with both numbers in which one is over another; 0 of none. */
function shareOver(rows: readonly SeriesRecord[], a: number, b: number): number {
  let [over, all] = [0, 0];
  for (const { cells } of rows) {
    const [x, y] = [numberOf(cells[a] ?? ''), numberOf(cells[b] ?? '')];
    if (Number.isNaN(x) || Number.isNaN(y)) continue;
    all++;
    if (x > y) over++;
  }
  return all === 0 ? 0 : over / all;
}

/** Whether two headings name the same columns, so that a mapping that was remembered fits. */
export function areSameHeadings(a: readonly string[] | null, b: readonly string[] | null): boolean {
  if (a === null || b === null) return a === b;
  return a.length === b.length && a.every((one, at) => plainWord(one) === plainWord(b[at] as string));
}

/** Whether systolic values look like kilopascals: most under what can be a systolic in mmHg, some with decimals. */
export function looksLikeKiloPascal(systolics: readonly number[]): boolean {
  const low = systolics.filter((value) => value < INTAKE_LIMITS.systolic.minimum);
  return low.length > systolics.length / 2 && low.some((value) => !Number.isInteger(value));
}
