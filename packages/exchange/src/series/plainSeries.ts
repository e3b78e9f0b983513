import { INTAKE_LIMITS, type SeriesReading } from '@evenfall/clinical';
import { findColumns } from './seriesColumns.js';
import type { SeriesChoices } from './seriesRead.js';
import { seriesRecords } from './seriesRecords.js';
import { roleOfHeading, type SeriesColumn } from './seriesWords.js';
import { daysOf } from './timeText.js';

/** A table that is exactly as it should be; null of one that is not in any way, which is then read the long way. */
export type PlainSeries = {
  readonly readings: readonly SeriesReading[];
  readonly lines: readonly number[];
  readonly headings: readonly string[];
  readonly columns: readonly (SeriesColumn | null)[];
};

const { systolic: SYSTOLIC, diastolic: DIASTOLIC, pulse: PULSE } = INTAKE_LIMITS;

const DAY_MS = 86_400_000;
const MINUTE_MS = 60_000;
const LINE_FEED = 10;
const PLUS = 43;
const COMMA = 44;
const MINUS = 45;
const ZERO = 48;
const COLON = 58;

/** The places of `time`, `systolic`, `diastolic` and `pulse` among the columns, as a row is gone through. */
const ROLES: Readonly<Partial<Record<SeriesColumn, number>>> = {
  time: 0,
  systolic: 1,
  diastolic: 2,
  pulse: 3,
};

/**
 * The fast way for bulk files: commas, a heading, `2025-03-09T01:30+01:00`, whole numbers or blanks, and nothing else. It answers
 * what the long way would, or null.
 */
export function plainSeries(text: string, choices: SeriesChoices): PlainSeries | null {
  if (choices.mapping !== null || choices.zone !== null || choices.unit === 'kPa') return null;
  const places = placesOf(text);
  if (places === null) return null;
  const { headings, columns } = places;
  const roles = columns.map((role) => (role === null ? -1 : (ROLES[role] as number)));
  const readings: SeriesReading[] = [];
  const lines: number[] = [];
  // By its bytes: to look at a sign of a text costs several times as much, and no sign of a plain row has two.
  const bytes = new TextEncoder().encode(text);
  const reader = new RowReader(bytes, roles);
  const isHome = choices.kind === 'home';
  let line = 2;
  let both = 0;
  let swapped = 0;
  for (let at = bytes.indexOf(LINE_FEED) + 1; at < bytes.length; line++) {
    if (bytes[at] === LINE_FEED) {
      at++;
      continue;
    }
    const next = reader.row(at);
    if (next < 0) return null;
    const { systolic, diastolic } = reader;
    const isBoth = systolic >= 0 && diastolic >= 0;
    const isSwapped = isBoth && diastolic >= systolic;
    if (isBoth) both++;
    if (isSwapped) swapped++;
    // A row that the long way refuses, it must refuse.
    if (isHome && (isSwapped || (systolic < 0 && diastolic < 0))) return null;
    lines.push(line);
    readings.push(reader.reading(lines.length));
    at = next;
  }
  // Columns that look swapped are asked about, the long way.
  return swapped > both / 2 ? null : { readings, lines, headings, columns };
}

/**
 * The heading and the columns, if they are plain; the rows begin on the second line. The words of the heading and the first
 * row say what the columns are: every other row is held against that as it is read, and one that says otherwise is not plain.
 */
function placesOf(text: string) {
  const end = text.indexOf('\n');
  if (end < 0) return null;
  const second = text.indexOf('\n', end + 1);
  const start = second < 0 ? text : text.slice(0, second);
  const { delimiter, records } = seriesRecords(start);
  if (delimiter !== ',' || records[0]?.line !== 1) return null;
  const { mapping, headingAt, missing, isByContent } = findColumns(records, null);
  if (isByContent) return null;
  const { headings, columns } = mapping;
  if (headingAt !== 0 || headings === null || missing.length > 0 || text.slice(0, end) !== headings.join(','))
    return null;
  if (columns.some((role) => role !== null && ROLES[role] === undefined)) return null;
  // What many rows together say of a number that no heading names, one row cannot.
  if (columns.some((role, at) => role !== 'time' && roleOfHeading(headings[at] as string) !== role))
    return null;
  if (columns.includes(null) || headings.some((heading) => /pa\b/i.test(heading))) return null;
  return { headings, columns };
}

/** Goes through one row by its bytes; what it found last stands in its fields, -1 for a blank. */
class RowReader {
  systolic = -1;
  diastolic = -1;
  private pulse = -1;
  private atMs = 0;
  private localDay = 0;
  private minuteOfDay = 0;
  /** No day yet: nothing equals it, whatever bytes come first. */
  private readonly before = { year: Number.NaN, month: Number.NaN, day: Number.NaN };
  private readonly bytes: Uint8Array;
  private readonly roles: readonly number[];

  constructor(bytes: Uint8Array, roles: readonly number[]) {
    this.bytes = bytes;
    this.roles = roles;
  }

  /** Reads the row that begins at a place; where the next begins, or -1 for one that is not plain. */
  row(from: number): number {
    const { bytes, roles } = this;
    const last = roles.length - 1;
    let at = from;
    this.systolic = -1;
    this.diastolic = -1;
    this.pulse = -1;
    for (let k = 0; k <= last; k++) {
      const role = roles[k] as number;
      at = role === 0 ? this.time(at) : this.number(at, role);
      if (at < 0) return -1;
      if (k < last) {
        if (bytes[at] !== COMMA) return -1;
        at++;
      }
    }
    if (at === bytes.length) return at;
    return bytes[at] === LINE_FEED ? at + 1 : -1;
  }

  private number(from: number, role: number): number {
    const { bytes } = this;
    let value = 0;
    let at = from;
    for (; at < from + 3; at++) {
      const digit = (bytes[at] as number) - ZERO;
      if (!(digit >= 0 && digit <= 9)) break;
      value = value * 10 + digit;
    }
    if (at === from) return at;
    if (role === 1) {
      if (value < SYSTOLIC.minimum || value > SYSTOLIC.maximum) return -1;
      this.systolic = value;
    } else if (role === 2) {
      if (value < DIASTOLIC.minimum || value > DIASTOLIC.maximum) return -1;
      this.diastolic = value;
    } else {
      if (value < PULSE.minimum || value > PULSE.maximum) return -1;
      this.pulse = value;
    }
    return at;
  }

  /** `2025-03-09T01:30[:00]+01:00`. */
  private time(from: number): number {
    const { bytes } = this;
    if (!this.date(from)) return -1;
    const hour = this.two(from + 11);
    const minute = this.two(from + 14);
    const between = bytes[from + 10];
    if ((between !== 84 && between !== 32) || bytes[from + 13] !== COLON) return -1;
    if (hour < 0 || hour > 23 || minute < 0 || minute > 59) return -1;
    let at = from + 16;
    let seconds = 0;
    if (bytes[at] === COLON) {
      seconds = this.two(at + 1);
      if (seconds < 0 || seconds > 59) return -1;
      at += 3;
    }
    const sign = bytes[at];
    const hours = this.two(at + 1);
    const minutes = this.two(at + 4);
    if ((sign !== PLUS && sign !== MINUS) || bytes[at + 3] !== COLON) return -1;
    if (hours < 0 || hours > 14 || minutes < 0 || minutes > 59) return -1;
    const offset = (sign === MINUS ? -1 : 1) * (hours * 60 + minutes);
    this.minuteOfDay = hour * 60 + minute;
    this.atMs = this.localDay * DAY_MS + (this.minuteOfDay - offset) * MINUTE_MS + seconds * 1000;
    return at + 6;
  }

  /** Whether ten bytes are a day; it is the one before in most rows, and then known. */
  private date(from: number): boolean {
    const { bytes, before } = this;
    if (bytes[from + 4] !== MINUS || bytes[from + 7] !== MINUS) return false;
    const century = this.two(from);
    const ofCentury = this.two(from + 2);
    const month = this.two(from + 5);
    const day = this.two(from + 8);
    const year = century * 100 + ofCentury;
    if (day === before.day && month === before.month && year === before.year) return ofCentury >= 0;
    if (century < 0 || ofCentury < 0 || year < 1950 || year > 2199) return false;
    if (month < 1 || month > 12 || day < 1) return false;
    const days = daysOf({ year, month, day });
    // The last days of months are left to the long way if they are none.
    const next = { year: month === 12 ? year + 1 : year, month: (month % 12) + 1, day: 1 };
    if (day > 28 && daysOf(next) <= days) return false;
    this.localDay = days;
    before.year = year;
    before.month = month;
    before.day = day;
    return true;
  }

  /** The number that two digits are; -1 where one is none. */
  private two(from: number): number {
    const tens = (this.bytes[from] as number) - ZERO;
    const ones = (this.bytes[from + 1] as number) - ZERO;
    return tens >= 0 && tens <= 9 && ones >= 0 && ones <= 9 ? tens * 10 + ones : -1;
  }

  reading(index: number): SeriesReading {
    return {
      index,
      atMs: this.atMs,
      localDay: this.localDay,
      minuteOfDay: this.minuteOfDay,
      systolic: this.systolic < 0 ? null : this.systolic,
      diastolic: this.diastolic < 0 ? null : this.diastolic,
      pulse: this.pulse < 0 ? null : this.pulse,
      asleep: null,
      part: null,
      site: 'upper-arm',
    };
  }
}
