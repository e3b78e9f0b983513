import { z } from 'zod';
import { offsetMinutes } from './offset.js';

/** No place has been further from UTC. Hours; source: the IANA time zone database since 1900 (from memory). */
const FURTHEST_OFFSET_HOURS = 14;
/** Longer ones hold nothing but more digits of a second. Source: decision of this project. */
const LONGEST_INSTANT_CHARACTERS = 40;

/** An RFC 3339 instant with its offset, of a year that has a number and a place that can be. */
export const instant = z.iso.datetime({ offset: true }).check((read) => {
  const at = read.value;
  const isKeepable =
    at.length <= LONGEST_INSTANT_CHARACTERS &&
    !at.startsWith('0000') &&
    Math.abs(offsetMinutes(at)) <= FURTHEST_OFFSET_HOURS * 60;
  if (!isKeepable) read.issues.push({ code: 'invalid_format', format: 'datetime', input: at });
});

/**
 * When something was done: the instant with the offset in force (RFC 3339, milliseconds kept), the zone's
 * name, and the text a person typed if they typed one. Instants order events; the zone gives local days.
 */
export const stamp = z
  .object({
    at: instant,
    zone: z.string().min(1).max(64),
    asEntered: z.string().max(64).nullable(),
  })
  .strict();
export type Stamp = z.infer<typeof stamp>;
