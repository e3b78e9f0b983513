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

const RATE_OF_COUNT = { path: ['override'], message: 'no-rate-over-void' };

function isRateOfCount({
  evidence,
  override: byHand,
}: {
  readonly evidence: { readonly count: object };
  readonly override: unknown;
}): boolean {
  return byHand === null || 'n' in evidence.count;
}

/** How a rate that was typed was counted: over a window that whoever typed it said, or one that was presumed. */
const RATES_TYPED = ['window-said', 'window-presumed'] as const;
export type RateTyped = (typeof RATES_TYPED)[number];

/** Schema 1: before it was kept that a rate was typed and no count. */
export const firstCountContent = z
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
  .refine(isRateOfCount, RATE_OF_COUNT);

/**
 * A count of beats or breaths in a window, charted. `evidence` is what was done; `value` is what
 * `clinical/count` made of it under the rule that `computedBy` names. A count that was broken off is void: it
 * keeps its evidence, and every number of its value is null. Where a rate a minute was typed, `count` is what its window
 * would hold and `rateTyped` says whether that window was said; null where a number was counted, or nobody said.
 */
export const countContent = z
  .object({
    ...firstCountContent.shape,
    evidence: z
      .object({
        count: z.union([counted, broken]),
        circumstances,
        rateTyped: z.enum(RATES_TYPED).nullable(),
      })
      .strict()
      .refine(({ count, rateTyped }) => rateTyped === null || 'n' in count, {
        path: ['rateTyped'],
        message: 'no-rate-over-void',
      }),
  })
  .strict()
  .refine(isRateOfCount, RATE_OF_COUNT);
export type CountContent = z.infer<typeof countContent>;

/** An older count in the newest shape: in schema 1 nobody said whether a rate was typed. */
export function upgradeCount(content: unknown, from: number): unknown {
  if (from > 1) return content;
  const older = content as z.infer<typeof firstCountContent>;
  return { ...older, evidence: { ...older.evidence, rateTyped: null } };
}
