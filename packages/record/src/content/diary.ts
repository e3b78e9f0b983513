import { z } from 'zod';
import { id } from '../entry/id.js';
import { DIARY_LANGUAGES, DIARY_LIMITS } from './diaryNames.js';
import { note } from './shared.js';

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
