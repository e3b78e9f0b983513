import { roundTo, type SeriesReading, type SidedLimit, shownPressure } from '@evenfall/clinical';
import type { Words } from '@evenfall/words';

/** Milliseconds of a day, an hour and a minute. */
export const DAY_MS = 86_400_000;
export const HOUR_MS = 3_600_000;
export const MINUTE_MS = 60_000;
export const DAY_MINUTES = 1440;

/** By language and style: to make one takes a hundred times as long as to use it. */
const FORMATS = new Map<string, Intl.DateTimeFormat>();

function formatOf(locale: string, style: Intl.DateTimeFormatOptions): Intl.DateTimeFormat {
  const key = `${locale} ${Object.entries(style).join(' ')}`;
  let format = FORMATS.get(key);
  if (format === undefined) {
    format = new Intl.DateTimeFormat(locale, { ...style, timeZone: 'UTC' });
    FORMATS.set(key, format);
  }
  return format;
}

/** A calendar day (days since 1970-01-01) as the reader wants dates: `5 Mar 2025`; without the year where `isShort`. */
export function dayText(day: number, words: Words, isShort = false): string {
  const { locale, manner } = words.say;
  const part = (style: Intl.DateTimeFormatOptions) => formatOf(locale, style).format(day * DAY_MS);
  const year = isShort ? {} : ({ year: 'numeric' } as const);
  switch (manner.dates) {
    case null:
      return part({ day: 'numeric', month: 'short', ...year });
    case 'year-month-day': {
      const iso = new Date(day * DAY_MS).toISOString().slice(0, 10);
      return isShort ? iso.slice(5) : iso;
    }
    case 'day-month-year':
      return [part({ day: 'numeric' }), part({ month: 'short' }), ...(isShort ? [] : [part(year)])].join(' ');
    case 'month-day-year':
      return `${part({ month: 'short' })} ${part({ day: 'numeric' })}${isShort ? '' : `, ${part(year)}`}`;
  }
}

/** A time of day by the wall clock, `07:30`; `7:30 AM` where twelve hours are wanted. */
export function clockText(minuteOfDay: number, words: Words): string {
  const minutes = ((minuteOfDay % DAY_MINUTES) + DAY_MINUTES) % DAY_MINUTES;
  const [hour, minute] = [Math.floor(minutes / 60), Math.floor(minutes % 60)];
  const two = (value: number) => String(value).padStart(2, '0');
  if (words.say.manner.hours === 24) return `${two(hour)}:${two(minute)}`;
  return `${hour % 12 === 0 ? 12 : hour % 12}:${two(minute)} ${hour < 12 ? 'AM' : 'PM'}`;
}

/** What was said of the times of readings, by their `index`: whether one is only about right, and which of its sitting it is. */
export type TimesSaid = ReadonlyMap<number, { readonly isAbout: boolean; readonly place: number }>;

/** When a reading was taken; about then where nobody said the time of it; a later one of a sitting by the time of the sitting, as the screen says it. */
export function timeOfReading(
  { index, localDay, minuteOfDay }: SeriesReading,
  about: TimesSaid | undefined,
  words: Words,
  isShort = false,
): string {
  const { isAbout, place } = about?.get(index) ?? { isAbout: false, place: 1 };
  const minute = minuteOfDay - (place - 1);
  // A sitting that passed midnight was begun the day before.
  const text = `${dayText(minute < 0 ? localDay - 1 : localDay, words, isShort)} ${clockText(minute, words)}`;
  const said = isAbout ? words.sentence('away.timeAbout', { text }) : text;
  return place === 1 ? said : words.sentence('away.laterReading', { text: said, place });
}

/** How far the wall clock of a reading stands before UTC, in minutes. */
export function offsetOf({ localDay, minuteOfDay, atMs }: SeriesReading): number {
  return Math.round(
    (localDay * DAY_MS + minuteOfDay * MINUTE_MS - Math.floor(atMs / MINUTE_MS) * MINUTE_MS) / MINUTE_MS,
  );
}

/** Numbers of a pressure as they were read, `142/88`; a hyphen for one that is not there. */
export function pressureText(systolic: number | null, diastolic: number | null, words: Words): string {
  const shown = (value: number | null) => (value === null ? '-' : words.say.short(value));
  return `${shown(systolic)}/${shown(diastolic)}`;
}

/** A mean in mmHg as it is shown beside its limit (`shownPressure`), with the decimal mark of the language; a hyphen for none. */
export function meanText(mmHg: number | null, limit: SidedLimit | null, words: Words): string {
  if (mmHg === null) return '-';
  return decimalsOf(shownPressure(mmHg, limit === null ? [] : [limit]), words);
}

/** A number in digits with a point, as `shownPressure` gives it, with the decimal mark of the language. */
export function decimalsOf(text: string, words: Words): string {
  return words.say.number(Number(text), (text.split('.')[1] ?? '').length);
}

/** The same to two decimals, or those asked for; as many more as keep it on its own side of the limit. */
export function exactText(mmHg: number | null, limit: SidedLimit | null, words: Words, places = 2): string {
  if (mmHg === null) return '-';
  const isOnItsSide =
    limit === null || Math.sign(roundTo(mmHg, places) - limit.limit) === Math.sign(mmHg - limit.limit);
  return isOnItsSide ? words.say.number(mmHg, places) : words.say.beside(mmHg, limit.limit, places);
}

/** Two means as one pressure. */
export function meansText(
  mean: { readonly systolic: number | null; readonly diastolic: number | null },
  systolic: SidedLimit | null,
  diastolic: SidedLimit | null,
  words: Words,
): string | null {
  if (mean.systolic === null && mean.diastolic === null) return null;
  return `${meanText(mean.systolic, systolic, words)}/${meanText(mean.diastolic, diastolic, words)}`;
}

/** The mean of one day, of few readings: to one decimal, on paper as on the screen. */
export function dayMeanText(
  mean: { readonly systolic: number | null; readonly diastolic: number | null },
  systolic: SidedLimit | null,
  diastolic: SidedLimit | null,
  words: Words,
): string {
  return `${exactText(mean.systolic, systolic, words, 1)}/${exactText(mean.diastolic, diastolic, words, 1)}`;
}
