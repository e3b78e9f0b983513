import type { Stamp } from '@evenfall/record';
import type { DateOrder, Words } from '@evenfall/words';

/**
 * A local date `YYYY-MM-DD` as a person reads it, in the order this device's user chose: the month in letters or the year
 * first, so that no day is taken for a month.
 */
export function dayText(date: string, { say }: Words): string {
  const { dates } = say.manner;
  const at = atNoon(date);
  if (dates === null) return inUtc(say.locale, { dateStyle: 'medium' }).format(at);
  return ordered(dates, date, at, say.locale, true);
}

/** A time of day `HH:MM` by the clock of 24 or of 12 hours. */
export function timeText(time: string, { say }: Words): string {
  if (say.manner.hours === 24) return time;
  const style = { hour: 'numeric', minute: '2-digit', hourCycle: 'h12' } as const;
  return inUtc(say.locale, style).format(new Date(`2000-01-01T${time}Z`));
}

/** When something was done, by the clock of the place where it was done. */
export function stampText(stamp: Pick<Stamp, 'at'>, words: Words): string {
  const { day, time } = stampParts(stamp, words);
  return `${day}, ${time}`;
}

/** The day and the time of day of a stamp, for a sentence that says what happened then. */
export function stampParts({ at }: Pick<Stamp, 'at'>, words: Words) {
  return { day: dayText(at.slice(0, 10), words), time: timeText(at.slice(11, 16), words) };
}

/** The time alone on the given local date, the day alone before it; the year only where it is another one. */
export function shortStampText(at: string, today: string, words: Words): string {
  const date = at.slice(0, 10);
  if (date === today) return timeText(at.slice(11, 16), words);
  return at.slice(0, 4) === today.slice(0, 4) ? dayOfYearText(date, words) : dayText(date, words);
}

/** A local date `YYYY-MM-DD` without its year. */
export function dayOfYearText(date: string, { say }: Words): string {
  const { dates } = say.manner;
  const at = atNoon(date);
  if (dates === null) return inUtc(say.locale, { day: 'numeric', month: 'short' }).format(at);
  return ordered(dates, date, at, say.locale, false);
}

/** An instant of the server (UTC), by the clock of this device. */
export function instantText(instant: string, words: Words): string {
  const at = new Date(instant);
  const two = (part: number) => String(part).padStart(2, '0');
  const date = `${String(at.getFullYear()).padStart(4, '0')}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
  return stampText({ at: `${date}T${two(at.getHours())}:${two(at.getMinutes())}` }, words);
}

/** Years before 100 would be read as of the last century. */
function atNoon(date: string): Date {
  const [year = 0, month = 1, day = 1] = date.split('-').map(Number);
  const at = new Date(Date.UTC(year, month - 1, day, 12));
  at.setUTCFullYear(year);
  return at;
}

function inUtc(locale: string, style: Intl.DateTimeFormatOptions): Intl.DateTimeFormat {
  return new Intl.DateTimeFormat(locale, { ...style, timeZone: 'UTC' });
}

function ordered(order: DateOrder, date: string, at: Date, locale: string, hasYear: boolean): string {
  if (order === 'year-month-day') return hasYear ? date : date.slice(5);
  const month = inUtc(locale, { month: 'short' }).format(at);
  const day = at.getUTCDate();
  const year = date.slice(0, 4).replace(/^0+/, '');
  if (order === 'day-month-year') return hasYear ? `${day} ${month} ${year}` : `${day} ${month}`;
  return hasYear ? `${month} ${day}, ${year}` : `${month} ${day}`;
}
