import { COUNT_FIGURES, PULSE_SITES } from '@evenfall/clinical';
import { z } from 'zod';

export const countOf = z.enum(['pulse', 'breaths']);
/** Characters of a note. Source: decision of this project. */
export const LONGEST_NOTE = 1000;
export const note = z.string().max(LONGEST_NOTE).nullable();

export const flag = z
  .object({ code: z.string().min(1).max(60), figures: z.record(z.string(), z.number()) })
  .strict();

/** What else was noticed while counting. Null is "not known", never "no". */
export const circumstances = z
  .object({
    rhythmFelt: z.enum(['regular', 'irregular']).nullable(),
    strength: z.enum(['weak', 'normal', 'strong']).nullable(),
    firstOnPerson: z.boolean().nullable(),
    ageMonths: z.number().int().min(0).nullable(),
    site: z.enum(PULSE_SITES).nullable(),
    heartRateDrug: z.boolean().nullable(),
    previousPerMinute: z.number().nullable(),
  })
  .strict();

/** A value set by hand over the computed one. It needs a reason and stays visible as an override. */
export const override = z
  .object({
    perMinute: z.number().positive().max(COUNT_FIGURES.ceilingPerMinute.value),
    reason: z.string().trim().min(1).max(500),
  })
  .strict()
  .nullable();
export type Override = z.infer<typeof override>;
