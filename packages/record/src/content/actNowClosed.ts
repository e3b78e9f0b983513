import { z } from 'zod';
import { stamp } from '../entry/stamp.js';

/**
 * What was done about conditions of a round that ask somebody to act now: whom was told, when, and what was said
 * back. Without all three nothing is closed. Source: bedside handbook 7.1; the project's design, section 6.
 */
export const firstActNowClosedContent = z
  .object({
    /** Ids of the conditions that it closes; those of the round that are not among them stay open. */
    conditions: z.array(z.string().min(1).max(60)).min(1),
    toldWhom: z.string().trim().min(1).max(200),
    toldAt: stamp,
    saidBack: z.string().trim().min(1).max(1000),
  })
  .strict();

/** What it is about is named since schema 2: a telling without network says nothing of what came before it to the server. */
export const actNowClosedContent = firstActNowClosedContent
  .extend({
    /**
     * Ids of the entries of its round or series that whoever closed it had before them, amendments among them: it covers
     * those alone. Null of those of schema 1, which cover what was recorded before them.
     */
    saw: z.array(z.uuid()).min(1).max(1000).nullable(),
  })
  .strict();
export type ActNowClosedContent = z.infer<typeof actNowClosedContent>;

export function upgradeActNowClosed(content: unknown, from: number): unknown {
  return from > 1 ? content : { ...(content as z.infer<typeof firstActNowClosedContent>), saw: null };
}

/** Whether an entry of its round or series was before whoever closed it. */
export function isCovered(
  closing: { readonly recordedAt: string; readonly content: ActNowClosedContent },
  entry: { readonly id: string; readonly recordedAt: string },
): boolean {
  const { saw } = closing.content;
  if (saw !== null) return saw.includes(entry.id);
  return Date.parse(entry.recordedAt) <= Date.parse(closing.recordedAt);
}
