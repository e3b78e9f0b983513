import { REST_SKIPPED_REASONS } from '@evenfall/clinical';
import { z } from 'zod';
import { CHAPERONES, CONSENTS, IDENTIFIERS_SAID, INTERPRETERS } from './beginningNames.js';

/**
 * What was settled before anything was taken: by which identifiers the person was known, whether they agreed, who else
 * was there. `who` names a chaperone, an interpreter or whoever agreed, and the language.
 * Source: bedside handbook 3.18 (two identifiers; consent, and a refusal is recorded).
 */
export const beginning = z
  .object({
    identifiers: z
      .array(z.enum(IDENTIFIERS_SAID))
      .refine((said) => new Set(said).size === said.length, { message: 'each-once' }),
    consent: z.enum(CONSENTS),
    chaperone: z.enum(CHAPERONES),
    interpreter: z.enum(INTERPRETERS),
    who: z.string().trim().min(1).max(200).nullable(),
  })
  .strict();
export type Beginning = z.infer<typeof beginning>;

/** The rest before the pressure, by the clock: how long it was, how long it should be, and why nobody waited for it. */
export const rest = z
  .object({
    seconds: z.number().min(0),
    neededSeconds: z.number().positive(),
    skipped: z
      .object({
        reason: z.enum(REST_SKIPPED_REASONS),
        text: z.string().trim().min(1).max(500).nullable(),
      })
      .strict()
      .refine(({ reason, text }) => reason !== 'other' || text !== null, {
        path: ['text'],
        message: 'text-for-other',
      })
      .nullable(),
  })
  .strict();
export type RestKept = z.infer<typeof rest>;
