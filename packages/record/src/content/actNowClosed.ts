import { z } from 'zod';
import { stamp } from '../entry/stamp.js';

/**
 * What was done about conditions of a round that ask somebody to act now: whom was told, when, and what was said
 * back. Without all three nothing is closed. Source: bedside handbook 7.1; the project's design, section 6.
 */
export const actNowClosedContent = z
  .object({
    /** Ids of the conditions that it closes; those of the round that are not among them stay open. */
    conditions: z.array(z.string().min(1).max(60)).min(1),
    toldWhom: z.string().trim().min(1).max(200),
    toldAt: stamp,
    saidBack: z.string().trim().min(1).max(1000),
  })
  .strict();
export type ActNowClosedContent = z.infer<typeof actNowClosedContent>;
