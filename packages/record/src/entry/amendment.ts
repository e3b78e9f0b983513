import { z } from 'zod';
import { id } from './id.js';

/**
 * Why an entry is amended. Source: bedside handbook 7.3 (the list itself is common practice, no source).
 * `other` needs a text.
 */
export const AMENDMENT_REASONS = [
  'typing-slip',
  'wrong-person',
  'wrong-time',
  'wrong-unit',
  'wrong-limb-or-cuff',
  'equipment-fault',
  'duplicate',
  'other',
] as const;
export type AmendmentReason = (typeof AMENDMENT_REASONS)[number];

/** Whether a value with this reason is nothing of this chart, so that no other number stands in its place. */
export function belongsNowhere(reason: AmendmentReason): boolean {
  return reason === 'wrong-person' || reason === 'duplicate';
}

/**
 * What makes an entry an amendment: the entry it replaces and the reason. The old one stays readable;
 * two amendments of one entry are both kept and both shown.
 */
export const amends = z
  .object({
    entry: id,
    reason: z.enum(AMENDMENT_REASONS),
    text: z.string().max(500).nullable(),
  })
  .strict()
  .refine((given) => given.reason !== 'other' || (given.text ?? '').trim() !== '', {
    path: ['text'],
    message: 'text-for-other',
  });
export type Amends = z.infer<typeof amends>;
