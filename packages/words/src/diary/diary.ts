import { arabic } from './arabic.js';
import type { DiaryText } from './diaryText.js';
import { english } from './english.js';
import { spanish } from './spanish.js';

/** Every language that a diary can be printed in. The program's own screens need not have it. */
export const DIARY_TEXTS = { en: english, es: spanish, ar: arabic } as const satisfies Readonly<
  Record<string, DiaryText>
>;

/** A local date `YYYY-MM-DD` in full, as a diary says on which day it is due back. */
export function diaryDate(date: string, { locale }: Pick<DiaryText, 'locale'>): string {
  return inUtc(locale, { weekday: 'long', day: 'numeric', month: 'long' }).format(new Date(`${date}T12:00Z`));
}

/** A local date `YYYY-MM-DD` in short, as it stands beside a row. */
export function diaryDay(date: string, { locale }: Pick<DiaryText, 'locale'>): string {
  return inUtc(locale, { weekday: 'short', day: 'numeric', month: 'short' }).format(
    new Date(`${date}T12:00Z`),
  );
}

/** The year of a local date, as it stands under its row. */
export function diaryYear(date: string, { locale }: Pick<DiaryText, 'locale'>): string {
  return inUtc(locale, { year: 'numeric' }).format(new Date(`${date}T12:00Z`));
}

/** A date of birth, in full. */
export function diaryBirth(date: string, { locale }: Pick<DiaryText, 'locale'>): string {
  return inUtc(locale, { day: 'numeric', month: 'long', year: 'numeric' }).format(new Date(`${date}T12:00Z`));
}

function inUtc(locale: string, style: Intl.DateTimeFormatOptions): Intl.DateTimeFormat {
  return new Intl.DateTimeFormat(locale, { ...style, timeZone: 'UTC' });
}
