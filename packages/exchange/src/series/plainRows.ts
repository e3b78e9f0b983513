import { INTAKE_LIMITS, type SeriesReading } from '@evenfall/clinical';
import { PLAIN_COLUMNS, type PlainColumn } from './plainHeading.js';
import { daysOf } from './timeText.js';

export type PlainRows = { readonly readings: readonly SeriesReading[]; readonly lines: readonly number[] };

const { systolic: SYSTOLIC, diastolic: DIASTOLIC, pulse: PULSE } = INTAKE_LIMITS;
const [TIME, AT_SYSTOLIC, AT_DIASTOLIC] = [0, 1, 2];

const DAY_MS = 86_400_000;
const MINUTE_MS = 60_000;
const LINE_FEED = 10;
const SPACE = 32;
const PLUS = 43;
const COMMA = 44;
const MINUS = 45;
const ZERO = 48;
const COLON = 58;
const LETTER_T = 84;

/** Bytes of `2025-03-09T01:30+01:00`, and of the seconds and the offset of a time. */
const SHORTEST_TIME = 22;
const SECONDS_AND_OFFSET = 9;

/**
 * The rows of a plain table by their bytes, from the second line on; null where one is not plain, or there is none.
 *
 * One loop without calls for each byte, and lists that are long enough at once: half of the time of a large file is else spent on
 * memory. The day and the offset of a row are those of the row before in most, which six and ten bytes that are the same say.
 */
export function plainRows(
  bytes: Uint8Array,
  columns: readonly PlainColumn[],
  isHome: boolean,
): PlainRows | null {
  const roles = Uint8Array.from(columns, (role) => PLAIN_COLUMNS.indexOf(role));
  const [width, length] = [roles.length, bytes.length];
  const view = new DataView(bytes.buffer, bytes.byteOffset, length);
  const start = bytes.indexOf(LINE_FEED) + 1;
  const most = likelyRows(bytes, start);
  const readings = new Array<SeriesReading>(most);
  const lines = new Array<number>(most);
  let [count, both, swapped] = [0, 0, 0];
  let [day, offset] = [Number.NaN, Number.NaN];
  // No bytes are these: there is no row before the first.
  let [year, monthDay, ofMonth, hourOff, minuteOff] = [-1, -1, -1, -1, -1];
  for (let at = start, line = 2; at < length; line++) {
    if (bytes[at] === LINE_FEED) {
      at++;
      continue;
    }
    let [systolic, diastolic, pulse, minuteOfDay, seconds] = [-1, -1, -1, 0, 0];
    for (let k = 0; k < width; k++) {
      if (k > 0) {
        if (at >= length || bytes[at] !== COMMA) return null;
        at++;
      }
      const role = roles[k];
      if (role === TIME) {
        if (at + SHORTEST_TIME > length) return null;
        const [a, b, c] = [view.getUint32(at), view.getUint32(at + 4), view.getUint16(at + 8)];
        if (a !== year || b !== monthDay || c !== ofMonth) {
          day = dayAt(bytes, at);
          if (Number.isNaN(day)) return null;
          year = a;
          monthDay = b;
          ofMonth = c;
        }
        const between = bytes[at + 10];
        const hour = two(bytes, at + 11);
        const minute = two(bytes, at + 14);
        if ((between !== LETTER_T && between !== SPACE) || bytes[at + 13] !== COLON) return null;
        if (hour < 0 || hour > 23 || minute < 0 || minute > 59) return null;
        minuteOfDay = hour * 60 + minute;
        at += 16;
        if (bytes[at] === COLON) {
          if (at + SECONDS_AND_OFFSET > length) return null;
          seconds = two(bytes, at + 1);
          if (seconds < 0 || seconds > 59) return null;
          at += 3;
        }
        const [d, e] = [view.getUint32(at), view.getUint16(at + 4)];
        if (d !== hourOff || e !== minuteOff) {
          offset = offsetAt(bytes, at);
          if (Number.isNaN(offset)) return null;
          hourOff = d;
          minuteOff = e;
        }
        at += 6;
        continue;
      }
      let value = -1;
      for (const end = Math.min(at + 3, length); at < end; at++) {
        const digit = (bytes[at] as number) - ZERO;
        if (digit < 0 || digit > 9) break;
        value = value < 0 ? digit : value * 10 + digit;
      }
      if (value < 0) continue;
      const { minimum, maximum } =
        role === AT_SYSTOLIC ? SYSTOLIC : role === AT_DIASTOLIC ? DIASTOLIC : PULSE;
      if (value < minimum || value > maximum) return null;
      if (role === AT_SYSTOLIC) systolic = value;
      else if (role === AT_DIASTOLIC) diastolic = value;
      else pulse = value;
    }
    if (at < length && bytes[at++] !== LINE_FEED) return null;
    const isBoth = systolic >= 0 && diastolic >= 0;
    const isSwapped = isBoth && diastolic >= systolic;
    if (isBoth) both++;
    if (isSwapped) swapped++;
    // A row that the long way refuses, it must refuse.
    if (isHome && (isSwapped || (systolic < 0 && diastolic < 0))) return null;
    lines[count] = line;
    readings[count] = {
      index: ++count,
      atMs: day * DAY_MS + (minuteOfDay - offset) * MINUTE_MS + seconds * 1000,
      localDay: day,
      minuteOfDay,
      systolic: systolic < 0 ? null : systolic,
      diastolic: diastolic < 0 ? null : diastolic,
      pulse: pulse < 0 ? null : pulse,
      asleep: null,
      part: null,
      site: 'upper-arm',
    };
  }
  readings.length = count;
  lines.length = count;
  // What the columns are without any row, and columns that look swapped, are for the long way.
  return count === 0 || swapped > both / 2 ? null : { readings, lines };
}

/** About how many rows there are, by the length of the first: a list that is too short grows, one too long is cut. */
function likelyRows(bytes: Uint8Array, start: number): number {
  const end = bytes.indexOf(LINE_FEED, start);
  return end < 0 ? 1 : Math.ceil((bytes.length - start) / Math.max(SHORTEST_TIME, end + 1 - start));
}

/** The day that ten bytes are, in days since 1970-01-01; NaN for none, and for the last days of months that have fewer. */
function dayAt(bytes: Uint8Array, at: number): number {
  if (bytes[at + 4] !== MINUS || bytes[at + 7] !== MINUS) return Number.NaN;
  const [century, ofCentury] = [two(bytes, at), two(bytes, at + 2)];
  const [month, day] = [two(bytes, at + 5), two(bytes, at + 8)];
  const year = century * 100 + ofCentury;
  if (century < 0 || ofCentury < 0 || year < 1950 || year > 2199) return Number.NaN;
  if (month < 1 || month > 12 || day < 1) return Number.NaN;
  const days = daysOf({ year, month, day });
  const next = { year: month === 12 ? year + 1 : year, month: (month % 12) + 1, day: 1 };
  return day > 28 && daysOf(next) <= days ? Number.NaN : days;
}

/** The minutes from UTC that `+01:00` is; NaN for none. */
function offsetAt(bytes: Uint8Array, at: number): number {
  const sign = bytes[at];
  const [hours, minutes] = [two(bytes, at + 1), two(bytes, at + 4)];
  if ((sign !== PLUS && sign !== MINUS) || bytes[at + 3] !== COLON) return Number.NaN;
  if (hours < 0 || hours > 14 || minutes < 0 || minutes > 59) return Number.NaN;
  return (sign === MINUS ? -1 : 1) * (hours * 60 + minutes);
}

/** The number that two digits are; -1 where one is none. */
function two(bytes: Uint8Array, at: number): number {
  const tens = (bytes[at] as number) - ZERO;
  const ones = (bytes[at + 1] as number) - ZERO;
  return tens >= 0 && tens <= 9 && ones >= 0 && ones <= 9 ? tens * 10 + ones : -1;
}
