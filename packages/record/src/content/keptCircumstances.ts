import type { Circumstances } from '@evenfall/clinical';

/** The circumstances that an entry keeps: what a device shows is asked about when it is looked at, and kept in none. */
export function keptCircumstances({
  devicePerMinute: _,
  ...kept
}: Circumstances): Omit<Circumstances, 'devicePerMinute'> {
  return kept;
}
