import { MONTHS, plainWord } from './seriesWords.js';

/** In which order a date has its day, month and year. */
export const DATE_ORDERS = ['dmy', 'mdy', 'ymd'] as const;
export type DateOrder = (typeof DATE_ORDERS)[number];

/** A calendar date; it exists. */
export type CalendarDate = { readonly year: number; readonly month: number; readonly day: number };

/** A date as written: one that can be read in one way, or three numbers whose order must be known. */
export type WrittenDate =
  | { readonly kind: 'date'; readonly date: CalendarDate }
  | {
      readonly kind: 'open';
      readonly numbers: readonly [number, number, number];
      readonly isYearLast: boolean;
    };

/** A time of day: milliseconds from local midnight, below a day. */
export type WrittenClock = { readonly ms: number };

/** A date and a time of one cell, with the offset from UTC in minutes where it was written. */
export type WrittenTime = {
  readonly date: WrittenDate;
  readonly clock: WrittenClock;
  readonly offsetMinutes: number | null;
  /** Written with `Z`: an instant, and nobody's wall clock. */
  readonly isUtc: boolean;
};

/** No time is longer, and to look through a longer text takes long. Characters; source: decision. */
const LONGEST = 60;

const SECOND_MS = 1000;
const MINUTE_MS = 60 * SECOND_MS;

/** Days of a civil date since 1970-01-01 (proleptic Gregorian calendar; algorithm of H. Hinnant, public domain). */
export function daysOf({ year, month, day }: CalendarDate): number {
  const y = month <= 2 ? year - 1 : year;
  const era = Math.floor(y / 400);
  const ofEra = y - era * 400;
  const ofYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
  return era * 146_097 + ofEra * 365 + Math.floor(ofEra / 4) - Math.floor(ofEra / 100) + ofYear - 719_468;
}

const LENGTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

function exists({ year, month, day }: CalendarDate): boolean {
  if (year < FIRST_YEAR || year > LAST_YEAR || month < 1 || month > 12 || day < 1) return false;
  const isLeap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  return day <= (month === 2 && isLeap ? 29 : (LENGTHS[month - 1] as number));
}

/** Years in which a reading can have been taken; outside is a slip of the pen. Source: decision. */
const FIRST_YEAR = 1950;
const LAST_YEAR = 2199;

/** The date that three numbers are in an order; null where there is no such day. */
export function dateIn(written: WrittenDate, order: DateOrder): CalendarDate | null {
  if (written.kind === 'date') return written.date;
  const [a, b, c] = written.numbers;
  if (order === 'ymd' && written.isYearLast) return null;
  const date =
    order === 'dmy'
      ? { year: c, month: b, day: a }
      : order === 'mdy'
        ? { year: c, month: a, day: b }
        : { year: a, month: b, day: c };
  const whole = date.year < 100 ? { ...date, year: date.year + 2000 } : date;
  return exists(whole) ? whole : null;
}

/** The orders in which a written date is a day. */
export function ordersOf(written: WrittenDate): DateOrder[] {
  return DATE_ORDERS.filter((order) => dateIn(written, order) !== null);
}

const NUMERIC = /^(\d{1,4})\s?([/.-])\s?(\d{1,2})\s?\2\s?(\d{1,4})\.?$/;
const DAY_FIRST =
  /^(\d{1,2})(?:\.|st|nd|rd|th|er|º)?[\s./-]*(?:de\s+)?(\p{L}{3,})\.?,?[\s./-]*(?:del?\s+)?(\d{4}|\d{2})$/iu;
const MONTH_FIRST = /^(\p{L}{3,})\.?\s*(\d{1,2})(?:st|nd|rd|th)?,?\s+(\d{4})$/iu;
const YEAR_FIRST_NAMED = /^(\d{4})[\s./-]+(\p{L}{3,})\.?[\s./-]+(\d{1,2})$/iu;

/** A date alone. Null where it is none. */
export function readDate(text: string): WrittenDate | null {
  if (text.length > LONGEST) return null;
  const numeric = NUMERIC.exec(text);
  if (numeric !== null) return numericDate(numeric);
  if (!/\p{L}/u.test(text)) return null;
  // A day of the week before it says nothing new.
  for (const candidate of [text, text.replace(/^\p{L}+\.?,?\s+/u, '')]) {
    const again = NUMERIC.exec(candidate);
    if (again !== null) return numericDate(again);
    const named = namedDate(candidate);
    if (named !== null) return named;
  }
  return null;
}

function numericDate([, first = '', , second = '', third = '']: RegExpExecArray): WrittenDate | null {
  const numbers = [Number(first), Number(second), Number(third)] as const;
  const [a, b, c] = numbers;
  if (first.length === 4 && third.length <= 2) {
    const date = { year: a, month: b, day: c };
    return exists(date) ? { kind: 'date', date } : null;
  }
  if (first.length > 2 || third.length === 1 || third.length === 3) {
    // 2025-03-1 was caught above; 1-3-5 is no date.
    return null;
  }
  const written = { kind: 'open', numbers, isYearLast: third.length === 4 } as const;
  return ordersOf(written).length === 0 ? null : written;
}

function namedDate(text: string): WrittenDate | null {
  const found = partsOf(text);
  if (found === null) return null;
  const month = monthOf(found.month);
  if (month === null) return null;
  const year = found.year < 100 ? found.year + 2000 : found.year;
  const date = { year, month, day: found.day };
  return exists(date) ? { kind: 'date', date } : null;
}

function partsOf(text: string): { day: number; month: string; year: number } | null {
  const dayFirst = DAY_FIRST.exec(text);
  if (dayFirst !== null) {
    return { day: Number(dayFirst[1]), month: dayFirst[2] as string, year: Number(dayFirst[3]) };
  }
  const monthFirst = MONTH_FIRST.exec(text);
  if (monthFirst !== null) {
    return { day: Number(monthFirst[2]), month: monthFirst[1] as string, year: Number(monthFirst[3]) };
  }
  const yearFirst = YEAR_FIRST_NAMED.exec(text);
  return yearFirst === null
    ? null
    : { day: Number(yearFirst[3]), month: yearFirst[2] as string, year: Number(yearFirst[1]) };
}

/** The month of a name in one of the languages that are known, by its beginning. */
function monthOf(name: string): number | null {
  const plain = plainWord(name);
  const at = MONTHS.findIndex((starts) => starts.some((start) => plain.startsWith(start)));
  return at < 0 ? null : at + 1;
}

const CLOCK =
  /^(\d{1,2})(?:\s?[:h.]\s?(\d{2}))?(?:[:.m](\d{2})(?:[.,]\d+)?)?\s*(?:s|h|hs|hrs|uhr|u)?\s*(?:([ap])\.?\s?m\.?)?$/i;

/** A time of day alone, on the clock of 24 hours or with its half of the day. Null where it is none. */
export function readClock(text: string): WrittenClock | null {
  const found = CLOCK.exec(text);
  if (found === null) return null;
  const [, hour = '', minute, second = '0', half] = found;
  // A lone number is no time, unless it says which half of the day.
  if (minute === undefined && half === undefined && !/\d\s*(h|hs|hrs|uhr)$/i.test(text)) return null;
  const [h, m, s] = [Number(hour), Number(minute ?? 0), Number(second)];
  if (m > 59 || s > 59) return null;
  if (half === undefined) return h > 23 ? null : { ms: ((h * 60 + m) * 60 + s) * SECOND_MS };
  if (h > 23 || h < 1) return null;
  // 14:30 pm says the same twice; 14:30 am says two things.
  if (h > 12) return half.toLowerCase() === 'p' ? { ms: ((h * 60 + m) * 60 + s) * SECOND_MS } : null;
  const hour24 = (h % 12) + (half.toLowerCase() === 'p' ? 12 : 0);
  return { ms: ((hour24 * 60 + m) * 60 + s) * SECOND_MS };
}

const OFFSET = /\s*(Z|(?:UTC|GMT)?([+-])(\d{2}):?(\d{2})?|UTC|GMT)$/i;

/** A date and a time of day in one cell. Null where it is none. */
export function readTime(text: string): WrittenTime | null {
  const iso = isoTime(text);
  if (iso !== null) return iso;
  if (text.length > LONGEST) return null;
  const zoned = /:\d{2}/.test(text) ? OFFSET.exec(text) : null;
  const offsetMinutes = zoned === null ? null : offsetOf(zoned);
  if (zoned !== null && offsetMinutes === null) return null;
  const rest = (zoned === null ? text : text.slice(0, zoned.index)).trim();
  const isUtc = zoned !== null && zoned[2] === undefined;
  const parts = dateAndClock(rest);
  return parts === null ? null : { ...parts, offsetMinutes, isUtc };
}

/** The cut between date and clock: each place with a gap or a T is tried, the clock mostly last. */
function dateAndClock(text: string): { date: WrittenDate; clock: WrittenClock } | null {
  for (const cut of text.matchAll(/(?<=\d)T(?=\d)|[,\s]\s*/gi)) {
    const [before, after] = [
      text.slice(0, cut.index).replace(/,$/, ''),
      text.slice(cut.index + cut[0].length),
    ];
    const clockAfter = readClock(after);
    if (clockAfter !== null) {
      const date = readDate(before);
      if (date !== null) return { date, clock: clockAfter };
    }
    const clockBefore = readClock(before);
    if (clockBefore !== null) {
      const date = readDate(after);
      if (date !== null) return { date, clock: clockBefore };
    }
  }
  return null;
}

function offsetOf([, , sign, hours = '0', minutes = '0']: RegExpExecArray): number | null {
  if (sign === undefined) return 0;
  const [h, m] = [Number(hours), Number(minutes)];
  if (h > 14 || m > 59) return null;
  return (sign === '-' ? -1 : 1) * (h * 60 + m);
}

/**
 * The fast way for what most files have: `2025-03-09T01:30[:00[.000]][Z|+01:00]`, by its places alone. Null for anything
 * else, which the long way reads.
 */
function isoTime(text: string): WrittenTime | null {
  const n = text.length;
  if (n < 16 || text.charCodeAt(4) !== 45 || text.charCodeAt(7) !== 45 || text.charCodeAt(13) !== 58)
    return null;
  const between = text.charCodeAt(10);
  if (between !== 84 && between !== 32 && between !== 116) return null;
  const year = digits(text, 0, 4);
  const month = digits(text, 5, 7);
  const day = digits(text, 8, 10);
  const hour = digits(text, 11, 13);
  const minute = digits(text, 14, 16);
  if (!(year >= 0 && month >= 0 && day >= 0 && hour >= 0 && minute >= 0)) return null;
  if (hour > 23 || minute > 59) return null;
  const date = { year, month, day };
  if (!exists(date)) return null;
  let at = 16;
  let ms = (hour * 60 + minute) * MINUTE_MS;
  if (text.charCodeAt(at) === 58) {
    const second = digits(text, 17, 19);
    if (!(second >= 0) || second > 59) return null;
    ms += second * SECOND_MS;
    at = 19;
    if (text.charCodeAt(at) === 46) {
      at++;
      while (at < n && text.charCodeAt(at) >= 48 && text.charCodeAt(at) <= 57) at++;
    }
  }
  const written = { kind: 'date', date } as const;
  const clock = { ms };
  if (at === n) return { date: written, clock, offsetMinutes: null, isUtc: false };
  const sign = text.charCodeAt(at);
  if (at === n - 1 && (sign === 90 || sign === 122))
    return { date: written, clock, offsetMinutes: 0, isUtc: true };
  if (at !== n - 6 || (sign !== 43 && sign !== 45) || text.charCodeAt(at + 3) !== 58) return null;
  const hours = digits(text, at + 1, at + 3);
  const minutes = digits(text, at + 4, at + 6);
  if (!(hours >= 0 && minutes >= 0) || hours > 14 || minutes > 59) return null;
  const offsetMinutes = (sign === 45 ? -1 : 1) * (hours * 60 + minutes);
  return { date: written, clock, offsetMinutes, isUtc: false };
}

/** The number that digits from a place to another are; -1 where one is none. */
function digits(text: string, from: number, to: number): number {
  let value = 0;
  for (let at = from; at < to; at++) {
    const digit = text.charCodeAt(at) - 48;
    if (!(digit >= 0 && digit <= 9)) return -1;
    value = value * 10 + digit;
  }
  return value;
}
