/**
 * A reading as averaging takes it, mmHg: `diastolic` is the one that is used, null by palpation or where sounds
 * went to zero unmarked. `atSeconds` is its end on any one clock.
 */
export type Reading = {
  readonly systolic: number;
  readonly diastolic: number | null;
  readonly irregular?: boolean | null;
  readonly atSeconds?: number | null;
};

/** A reading with both numbers, and its place among all readings, from 1. */
export type FullReading = Reading & { readonly diastolic: number; readonly index: number };

/**
 * The readings that have both numbers, in order. One without a diastolic never enters an average with these: a
 * systolic by feel lies below one by ear. Source: bedside handbook 3.4; docs/conventions.md section 6.
 */
export function fullReadings(readings: readonly Reading[]): readonly FullReading[] {
  return readings.flatMap((reading, at) => {
    const { diastolic } = reading;
    return diastolic === null ? [] : [{ ...reading, diastolic, index: at + 1 }];
  });
}
