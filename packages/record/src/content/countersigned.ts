import { z } from 'zod';
import { id } from '../entry/id.js';

/**
 * A supervisor looked at a learner's round and signs for it, with or without a reading of their own beside it.
 * `agrees` false says that it was seen and is not relied on: the round stays preliminary.
 */
export const countersignedContent = z
  .object({
    /** The signing that it countersigns. */
    signing: id,
    agrees: z.boolean(),
    /** The supervisor's own round of the same person, shown beside; null if none was taken. */
    ownRound: id.nullable(),
    note: z.string().max(1000).nullable(),
  })
  .strict()
  .refine(({ agrees, note }) => agrees || (note ?? '').trim() !== '', {
    path: ['note'],
    message: 'text-for-other',
  });
export type CountersignedContent = z.infer<typeof countersignedContent>;
