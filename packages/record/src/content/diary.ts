import { z } from 'zod';
import { id } from '../entry/id.js';
import { note } from './shared.js';

/** The languages in which a diary can be printed. */
export const DIARY_LANGUAGES = ['en', 'es', 'ar'] as const;
export type DiaryLanguage = (typeof DIARY_LANGUAGES)[number];

/** Longest diary and most readings in one sitting that a page has room for. Source: decision of this project. */
export const DIARY_LIMITS = { days: 14, readingsInSitting: 4 } as const;

/** A page went home with the person: how many days and readings were asked, in which language, and when it is due back. */
export const diaryHandedContent = z
  .object({
    days: z.number().int().min(1).max(DIARY_LIMITS.days),
    readingsInSitting: z.number().int().min(1).max(DIARY_LIMITS.readingsInSitting),
    language: z.enum(DIARY_LANGUAGES),
    /** First day of measuring, and the day from which it is due back (`YYYY-MM-DD`, local). */
    from: z.iso.date(),
    dueOn: z.iso.date(),
    note,
  })
  .strict()
  .refine(({ from, dueOn }) => dueOn >= from, { path: ['dueOn'], message: 'not-before-from' });
export type DiaryHandedContent = z.infer<typeof diaryHandedContent>;

/** A diary that will not come back, and why. */
export const diaryEndedContent = z.object({ diary: id, reason: z.string().trim().min(1).max(500) }).strict();
export type DiaryEndedContent = z.infer<typeof diaryEndedContent>;

/** What a protocol's rules of readings at home ask of a diary that begins on a day: how long, how often, and back when. */
export function diaryAsked(
  { daysAsked, readingsInSitting }: { readonly daysAsked: number; readonly readingsInSitting: number },
  from: string,
): Pick<DiaryHandedContent, 'days' | 'readingsInSitting' | 'from' | 'dueOn'> {
  const last = new Date(`${from}T00:00:00Z`);
  // The last evening is measured too: it can come back on the day after.
  last.setUTCDate(last.getUTCDate() + daysAsked);
  return {
    days: daysAsked,
    readingsInSitting,
    from,
    dueOn: last.toISOString().slice(0, 'YYYY-MM-DD'.length),
  };
}
