import type { Words } from '@evenfall/words';
import { lengthOf, type Span } from './view.js';

const DAY = 86_400_000;

/** A time on the line under a trend: the time of day within days, the day within months, else the month and year. */
export function tickText(time: number, span: Span, { say }: Words): string {
  const isMidnight = time % DAY === 0;
  const style: Intl.DateTimeFormatOptions =
    lengthOf(span) <= 3 * DAY && !isMidnight
      ? { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' }
      : lengthOf(span) <= 400 * DAY
        ? { day: 'numeric', month: 'short' }
        : { month: 'short', year: 'numeric' };
  return new Intl.DateTimeFormat(say.locale, { ...style, timeZone: 'UTC' }).format(new Date(time));
}
