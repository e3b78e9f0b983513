import type { SeriesContent, SeriesReadingKept } from './series.js';

/** A reading that is in the record already, and in which series. */
export type AlreadyThere<Reading> = { readonly reading: Reading; readonly series: string };

type Known = { readonly series: string; readonly readings: SeriesContent['readings'] };
type Compared = Pick<SeriesReadingKept, 'at' | 'systolic' | 'diastolic' | 'pulse' | 'site'>;

/**
 * Tells readings that are new from those of the same person that another series has: the same instant, numbers and
 * site. A second one of the same in `incoming` is left for the rules, which say which they keep.
 *
 * @param existing the series of the person that stand
 */
export function newReadings<Reading extends Compared>(
  existing: readonly Known[],
  incoming: readonly Reading[],
): { readonly fresh: readonly Reading[]; readonly already: readonly AlreadyThere<Reading>[] } {
  const known = new Map<string, string>();
  for (const { series, readings } of existing) {
    for (const reading of readings) if (!known.has(keyOf(reading))) known.set(keyOf(reading), series);
  }
  const fresh: Reading[] = [];
  const already: AlreadyThere<Reading>[] = [];
  for (const reading of incoming) {
    const series = known.get(keyOf(reading));
    if (series === undefined) fresh.push(reading);
    else already.push({ reading, series });
  }
  return { fresh, already };
}

function keyOf({ at, systolic, diastolic, pulse, site }: Compared): string {
  return `${Date.parse(at.at)}/${systolic}/${diastolic}/${pulse}/${site}`;
}
