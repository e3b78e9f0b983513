import { z } from 'zod';

/** What made a value: the program, the rule and its version, and the protocol in force (null for none). */
export const computedBy = z
  .object({
    program: z.string().min(1).max(80),
    rule: z.string().min(1).max(80),
    preset: z.string().max(80).nullable(),
    presetVersion: z.string().max(80).nullable(),
  })
  .strict();
