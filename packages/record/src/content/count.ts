import { z } from 'zod';
import { computedBy } from './computedBy.js';
import { circumstances, countOf, flag, note, override } from './shared.js';

/**
 * A count of beats or breaths in a window, charted. `evidence` is what was done; `value` is what
 * `clinical/count` made of it under the rule that `computedBy` names. An interrupted count is void: it keeps
 * its evidence and has no value.
 */
export const countContent = z
  .object({
    evidence: z
      .object({
        count: z
          .object({
            of: countOf,
            n: z.number().int().min(0).nullable(),
            windowSeconds: z.number().positive(),
            clock: z.enum(['beat', 'any']),
            first: z.union([z.literal(0), z.literal(1)]),
          })
          .strict(),
        interrupted: z
          .object({ atSeconds: z.number().min(0), reason: z.string().max(200).nullable() })
          .strict()
          .nullable(),
        circumstances,
      })
      .strict(),
    value: z
      .object({
        perMinute: z.number(),
        stepPerMinute: z.number(),
        lowPerMinute: z.number(),
        highPerMinute: z.number(),
        lowIncluded: z.boolean(),
        highIncluded: z.boolean(),
        flags: z.array(flag),
        nextWindowSeconds: z.number().nullable(),
        why: z.array(flag),
      })
      .strict()
      .nullable(),
    override,
    computedBy,
    note,
  })
  .strict();
export type CountContent = z.infer<typeof countContent>;
