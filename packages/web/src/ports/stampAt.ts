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

/**
 * The stamp of a local time as typed (`YYYY-MM-DDTHH:mm`), kept as entered. Null for what is no time, or for one that
 * the clocks jumped over; of a time that came twice, the first.
 *
 * @param offsetAt the offset in force at an instant, in minutes east of UTC
 */
export function stampOfLocal(
  typed: string,
  zone: string,
  offsetAt: (epochMs: number) => number,
): Stamp | null {
  if (!/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}$/.test(typed)) return null;
  const asUtc = Date.parse(`${typed}:00Z`);
  if (Number.isNaN(asUtc)) return null;
  const dayMs = 86_400_000;
  const offsets = [offsetAt(asUtc - dayMs), offsetAt(asUtc + dayMs)].sort((a, b) => b - a);
  const offset = offsets.find((one) => offsetAt(asUtc - one * 60_000) === one);
  return offset === undefined
    ? null
    : { ...stampAt(asUtc - offset * 60_000, offset, zone), asEntered: typed };
}

/** The local date of a stamp, `YYYY-MM-DD`, as it was where it was made. */
export function localDate({ at }: Stamp): string {
  return at.slice(0, 10);
}
