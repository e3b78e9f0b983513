import { z } from 'zod';
import { id } from '../entry/id.js';

/** The signs a round can hold so far, in the order in which a round takes them. */
export const SIGNS = ['pulse', 'breaths'] as const;

/** Why a sign was not done. Source: bedside handbook 7.1 (common practice, no source). A blank is not allowed. */
export const NOT_DONE_REASONS = ['declined', 'away', 'asleep', 'not-possible', 'other'] as const;

/**
 * The signing of one set of signs: which entries belong to it, and for each sign without one why it was not
 * done. `status` is `preliminary` for a learner's round until a supervisor countersigns.
 */
export const roundContent = z
  .object({
    status: z.enum(['preliminary', 'final']),
    signs: z
      .array(
        z.union([
          z.object({ sign: z.enum(SIGNS), entries: z.array(id).min(1) }).strict(),
          z
            .object({
              sign: z.enum(SIGNS),
              notDone: z
                .object({ reason: z.enum(NOT_DONE_REASONS), text: z.string().max(500).nullable() })
                .strict()
                .refine(({ reason, text }) => reason !== 'other' || (text ?? '').trim() !== '', {
                  path: ['text'],
                  message: 'text-for-other',
                }),
            })
            .strict(),
        ]),
      )
      .min(1)
      .refine((signs) => new Set(signs.map(({ sign }) => sign)).size === signs.length, {
        message: 'each-sign-once',
      }),
    protocolVersion: z.string().max(80).nullable(),
    note: z.string().max(1000).nullable(),
  })
  .strict();
export type RoundContent = z.infer<typeof roundContent>;
