import type { Stamp } from '@evenfall/record';

/**
 * The stamp of an instant: RFC 3339 with milliseconds and the offset in force, and the zone's name.
 *
 * @param epochMs milliseconds since 1970 UTC
 * @param offsetMinutes minutes east of UTC
 */
export function stampAt(epochMs: number, offsetMinutes: number, zone: string): Stamp {
  const local = new Date(epochMs + offsetMinutes * 60_000).toISOString().slice(0, -1);
  const size = Math.abs(offsetMinutes);
  const two = (value: number) => String(value).padStart(2, '0');
  const offset = `${offsetMinutes < 0 ? '-' : '+'}${two(Math.floor(size / 60))}:${two(size % 60)}`;
  return { at: `${local}${offset}`, zone, asEntered: null };
}

/** The local date of a stamp, `YYYY-MM-DD`, as it was where it was made. */
export function localDate({ at }: Stamp): string {
  return at.slice(0, 10);
}
