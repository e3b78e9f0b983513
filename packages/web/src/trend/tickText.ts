import type { Words } from '@evenfall/words';
import { dayOfYearText, timeText } from '../app/times.js';
import { lengthOf, type Span } from './view.js';

const DAY = 86_400_000;

/** A time on the line under a trend: the time of day where one falls within a day, the day within months, else the month and year. */
export function tickText(time: number, span: Span, words: Words): string {
  const isMidnight = time % DAY === 0;
  const at = new Date(time);
  const iso = at.toISOString();
  if (!isMidnight) return timeText(iso.slice(11, 16), words);
  if (lengthOf(span) <= 400 * DAY) return dayOfYearText(iso.slice(0, 10), words);
  const style = { month: 'short', year: 'numeric', timeZone: 'UTC' } as const;
  return new Intl.DateTimeFormat(words.say.locale, style).format(at);
}

/** What stands under a round of a drawing in which each has its own place: its time, and its day where that is another one. */
export function roundTickTexts(time: number, isNewDay: boolean, words: Words): readonly string[] {
  const iso = new Date(time).toISOString();
  const text = timeText(iso.slice(11, 16), words);
  return isNewDay ? [text, dayOfYearText(iso.slice(0, 10), words)] : [text];
}
