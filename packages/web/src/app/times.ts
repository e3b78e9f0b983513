import type { Stamp } from '@evenfall/record';
import type { Words } from '@evenfall/words';

/** A local date `YYYY-MM-DD` as a person reads it, the month in letters so that no day is taken for a month. */
export function dayText(date: string, { say }: Words): string {
  const [year = 0, month = 1, day = 1] = date.split('-').map(Number);
  const at = new Date(Date.UTC(year, month - 1, day));
  // Years before 100 would be read as of the last century.
  at.setUTCFullYear(year);
  return new Intl.DateTimeFormat(say.locale, { dateStyle: 'medium', timeZone: 'UTC' }).format(at);
}

/** When something was done, by the clock of the place where it was done. */
export function stampText(stamp: Pick<Stamp, 'at'>, words: Words): string {
  const { day, time } = stampParts(stamp, words);
  return `${day}, ${time}`;
}

/** The day and the time of day of a stamp, for a sentence that says what happened then. */
export function stampParts({ at }: Pick<Stamp, 'at'>, words: Words) {
  return { day: dayText(at.slice(0, 10), words), time: at.slice(11, 16) };
}

/** The time alone on the given local date, the day alone before it; the year only where it is another one. */
export function shortStampText(at: string, today: string, { say }: Words): string {
  if (at.startsWith(today)) return at.slice(11, 16);
  const [year = 0, month = 1, day = 1] = at.slice(0, 10).split('-').map(Number);
  const isThisYear = at.slice(0, 4) === today.slice(0, 4);
  const parts = { day: 'numeric', month: 'short', timeZone: 'UTC' } as const;
  return new Intl.DateTimeFormat(say.locale, isThisYear ? parts : { ...parts, year: 'numeric' }).format(
    new Date(Date.UTC(year, month - 1, day)),
  );
}

/** An instant of the server (UTC), by the clock of this device, from 00:00 to 23:59 as every other time here. */
export function instantText(instant: string, { say }: Words): string {
  const style = { dateStyle: 'medium', timeStyle: 'short', hourCycle: 'h23' } as const;
  return new Intl.DateTimeFormat(say.locale, style).format(new Date(instant));
}
