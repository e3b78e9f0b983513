/**
 * Values in order, with null where there was one that is not known. Whatever needs neighbours looks only at
 * those that are both there; nothing is closed up over a gap.
 */
export type Series = readonly (number | null)[];

/** The values that are there, in order. */
export function known(series: Series): number[] {
  return series.filter((value) => value !== null);
}
