import { INTERRUPTIONS } from '@evenfall/clinical';
import { z } from 'zod';
import { computedBy } from './computedBy.js';
import { circumstances, countOf, flag, note, override } from './shared.js';

const start = {
  of: countOf,
  windowSeconds: z.number().positive(),
  clock: z.enum(['beat', 'any']),
  first: z.literal([0, 1]),
};
const counted = z.object({ ...start, n: z.number().int().min(0) }).strict();
const broken = z
  .object({
    ...start,
    interrupted: z
      .object({ atSeconds: z.number().min(0).nullable(), reason: z.enum(INTERRUPTIONS) })
      .strict(),
  })
  .strict();

const rate = z.number().nullable();

/**
 * A count of beats or breaths in a window, charted. `evidence` is what was done; `value` is what
 * `clinical/count` made of it under the rule that `computedBy` names. A count that was broken off is void: it
 * keeps its evidence, and every number of its value is null.
 */
export const countContent = z
  .object({
    evidence: z.object({ count: z.union([counted, broken]), circumstances }).strict(),
    value: z
      .object({
        perMinute: rate,
        stepPerMinute: rate,
        lowPerMinute: rate,
        highPerMinute: rate,
        lowIncluded: z.boolean().nullable(),
        highIncluded: z.boolean().nullable(),
        flags: z.array(flag),
        nextWindowSeconds: rate,
        why: z.array(flag),
      })
      .strict(),
    override,
    computedBy,
    note,
  })
  .strict()
  .refine(({ evidence, override: byHand }) => byHand === null || 'n' in evidence.count, {
    path: ['override'],
    message: 'no-rate-over-void',
  });
export type CountContent = z.infer<typeof countContent>;
