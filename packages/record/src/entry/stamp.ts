import { z } from 'zod';

/**
 * When something was done: the instant with the offset in force (RFC 3339, milliseconds kept), the zone's
 * name, and the text a person typed if they typed one. Instants order events; the zone gives local days.
 */
export const stamp = z
  .object({
    at: z.iso.datetime({ offset: true }),
    zone: z.string().min(1).max(64),
    asEntered: z.string().max(64).nullable(),
  })
  .strict();
export type Stamp = z.infer<typeof stamp>;

/** The offset written in an RFC 3339 instant, in minutes east of UTC: `+05:30` is 330, `Z` is 0. */
export function offsetMinutes(at: string): number {
  const found = /([+-])(\d{2}):(\d{2})$/.exec(at);
  if (found === null) return 0;
  const minutes = Number(found[2]) * 60 + Number(found[3]);
  return found[1] === '-' ? -minutes : minutes;
}
