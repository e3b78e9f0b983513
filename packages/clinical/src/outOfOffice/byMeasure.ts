import type { Measure } from './seriesReading.js';

/** Something for each measure. */
export type ForEachMeasure<T> = { readonly [M in Measure]: T };

/** A number for each measure; null where none is known. */
export type ByMeasure = ForEachMeasure<number | null>;

/** A pressure of which either number may not be known, mmHg. */
export type PressurePair = { readonly systolic: number | null; readonly diastolic: number | null };

export function forEachMeasure<T>(of: (measure: Measure) => T): ForEachMeasure<T> {
  return { systolic: of('systolic'), diastolic: of('diastolic'), pulse: of('pulse') };
}

/** The same made of what there is for each measure. */
export function ofEachMeasure<Given, T>(
  given: ForEachMeasure<Given>,
  of: (one: Given) => T,
): ForEachMeasure<T> {
  return { systolic: of(given.systolic), diastolic: of(given.diastolic), pulse: of(given.pulse) };
}
