import { INTAKE_LIMITS, type SeriesReading } from '@evenfall/clinical';
import { findColumns } from './seriesColumns.js';
import type { SeriesChoices } from './seriesRead.js';
import { seriesRecords } from './seriesRecords.js';
import type { SeriesColumn } from './seriesWords.js';
import { daysOf } from './timeText.js';

/** A table that is exactly as it should be; null of one that is not in any way, which is then read the long way. */
export type PlainSeries = {
  readonly readings: readonly SeriesReading[];
  readonly lines: readonly number[];
  readonly headings: readonly string[];
  readonly columns: readonly (SeriesColumn | null)[];
};

/** The words of the heading say what the columns are; that many characters show that the first rows do not say otherwise. Source: decision. */
const LOOKED_AT = 1_000;

const { systolic: SYSTOLIC, diastolic: DIASTOLIC, pulse: PULSE } = INTAKE_LIMITS;

const DAY_MS = 86_400_000;
const MINUTE_MS = 60_000;
const COMMA = 44;
const LINE_FEED = 10;

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
  const { headings, columns, from, firstLine } = places;
  const roles = columns.map((role) => (role === null ? -1 : (ROLES[role] as number)));
  const readings: SeriesReading[] = [];
  const lines: number[] = [];
  const reader = new RowReader(text, roles);
  const isHome = choices.kind === 'home';
  let line = firstLine;
  let [both, swapped] = [0, 0];
  for (let at = from; at < text.length; line++) {
    if (text.charCodeAt(at) === LINE_FEED) {
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

/** The heading and the columns, if they are plain; where the rows begin. */
function placesOf(text: string) {
  const end = text.indexOf('\n');
  if (end < 0) return null;
  const start = text.slice(0, text.length <= LOOKED_AT ? text.length : text.lastIndexOf('\n', LOOKED_AT));
  const { delimiter, records } = seriesRecords(start);
  if (delimiter !== ',' || records[0]?.line !== 1) return null;
  const { mapping, headingAt, missing, isByContent } = findColumns(records, null);
  if (isByContent) return null;
  const { headings, columns } = mapping;
  if (headingAt !== 0 || headings === null || missing.length > 0 || text.slice(0, end) !== headings.join(','))
    return null;
  if (columns.some((role) => role !== null && ROLES[role] === undefined)) return null;
  if (columns.includes(null) || headings.some((heading) => /pa\b/i.test(heading))) return null;
  return { headings, columns, from: end + 1, firstLine: 2 };
}

/** Goes through one row by its signs; what it found last stands in its fields, -1 for a blank. */
class RowReader {
  systolic = -1;
  diastolic = -1;
  private pulse = -1;
  private atMs = 0;
  private localDay = 0;
  private minuteOfDay = 0;
  private dayText = '';
  private readonly text: string;
  private readonly roles: readonly number[];

  constructor(text: string, roles: readonly number[]) {
    this.text = text;
    this.roles = roles;
  }

  /** Reads the row that begins at a place; where the next begins, or -1 for one that is not plain. */
  row(from: number): number {
    const { text, roles } = this;
    const last = roles.length - 1;
    let at = from;
    this.systolic = this.diastolic = this.pulse = -1;
    for (let k = 0; k <= last; k++) {
      const role = roles[k] as number;
      at = role === 0 ? this.time(at) : this.number(at, role);
      if (at < 0) return -1;
      if (k < last) {
        if (text.charCodeAt(at) !== COMMA) return -1;
        at++;
      }
    }
    if (at === text.length) return at;
    return text.charCodeAt(at) === LINE_FEED ? at + 1 : -1;
  }

  private number(from: number, role: number): number {
    const { text } = this;
    let value = 0;
    let at = from;
    for (; at < from + 3; at++) {
      const digit = text.charCodeAt(at) - 48;
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

  /** `2025-03-09T01:30[:00]+01:00`; the date is the same as before in most rows. */
  private time(from: number): number {
    const { text } = this;
    const day = text.slice(from, from + 10);
    if (day !== this.dayText) {
      const [year, month, date] = [this.digits(from, 4), this.digits(from + 5, 2), this.digits(from + 8, 2)];
      if (year < 1950 || year > 2199 || month < 1 || month > 12 || date < 1) return -1;
      if (text.charCodeAt(from + 4) !== 45 || text.charCodeAt(from + 7) !== 45) return -1;
      const days = daysOf({ year, month, day: date });
      // The last days of months are left to the long way if they are none.
      if (date > 28 && daysOf({ year: month === 12 ? year + 1 : year, month: (month % 12) + 1, day: 1 }) <= days) return -1; // biome-ignore format: one thought
      this.localDay = days;
      this.dayText = day;
    }
    const hour = this.digits(from + 11, 2);
    const minute = this.digits(from + 14, 2);
    const between = text.charCodeAt(from + 10);
    if ((between !== 84 && between !== 32) || text.charCodeAt(from + 13) !== 58) return -1;
    if (hour < 0 || hour > 23 || minute < 0 || minute > 59) return -1;
    let at = from + 16;
    let seconds = 0;
    if (text.charCodeAt(at) === 58) {
      seconds = this.digits(at + 1, 2);
      if (seconds < 0 || seconds > 59) return -1;
      at += 3;
    }
    const sign = text.charCodeAt(at);
    const [hours, minutes] = [this.digits(at + 1, 2), this.digits(at + 4, 2)];
    if ((sign !== 43 && sign !== 45) || text.charCodeAt(at + 3) !== 58) return -1;
    if (hours < 0 || hours > 14 || minutes < 0 || minutes > 59) return -1;
    const offset = (sign === 45 ? -1 : 1) * (hours * 60 + minutes);
    this.minuteOfDay = hour * 60 + minute;
    this.atMs = this.localDay * DAY_MS + (this.minuteOfDay - offset) * MINUTE_MS + seconds * 1000;
    return at + 6;
  }

  private digits(from: number, count: number): number {
    let value = 0;
    for (let at = from; at < from + count; at++) {
      const digit = this.text.charCodeAt(at) - 48;
      if (!(digit >= 0 && digit <= 9)) return -1;
      value = value * 10 + digit;
    }
    return value;
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
