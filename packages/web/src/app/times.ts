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
export function stampText({ at }: Pick<Stamp, 'at'>, words: Words): string {
  return `${dayText(at.slice(0, 10), words)}, ${at.slice(11, 16)}`;
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

/** An instant of the server (UTC), by the clock of this device. */
export function instantText(instant: string, { say }: Words): string {
  return new Intl.DateTimeFormat(say.locale, { dateStyle: 'medium', timeStyle: 'short' }).format(
    new Date(instant),
  );
}
