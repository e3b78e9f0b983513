import { type ForEachMeasure, forEachMeasure } from './byMeasure.js';
import { type Cosinor, cosinorAt } from './cosinor.js';
import { type CosinorTimes, cosinorTimes } from './cosinorTimes.js';
import { OUT_OF_OFFICE_FIGURES as F } from './figures.js';
import type { SeriesReading } from './seriesReading.js';
import { coveredHours, longestGap, type TimedValues } from './timedValue.js';

/** A curve of one harmonic and one of two; null where none is fitted. */
export type Curves = { readonly one: Cosinor | null; readonly two: Cosinor | null };

/**
 * The fitted curves of each measure where there are readings enough, none far apart, over most of a day.
 * Source: out-of-office handbook 15.
 *
 * @param series what is known of each measure in `kept`, in order of time
 */
export function recordingCurves(
  kept: readonly SeriesReading[],
  series: ForEachMeasure<TimedValues>,
): ForEachMeasure<Curves> {
  // Most readings have all their numbers: then what the times say is worked out once for the three.
  let known: { readonly local: readonly number[]; readonly times: CosinorTimes } | null = null;
  return forEachMeasure((measure) => {
    const { hours, values } = series[measure];
    if (!isEnough(series[measure])) return { one: null, two: null };
    // Hours from the first reading's own local midnight: time that passed, also where the clock changes.
    const first = kept.find((one) => one[measure] !== null) as SeriesReading;
    const fromMidnight = first.minuteOfDay / 60 - (hours[0] as number);
    const local = hours.map((hour) => hour + fromMidnight);
    if (known === null || !isSame(known.local, local)) known = { local, times: cosinorTimes(local) };
    return { one: cosinorAt(known.times, values, 1), two: cosinorAt(known.times, values, 2) };
  });
}

function isEnough(timed: TimedValues): boolean {
  const gap = longestGap(timed.hours);
  return (
    timed.values.length >= F.cosinorLeastReadings.value &&
    gap !== null &&
    gap <= F.cosinorLongestGapHours.value &&
    coveredHours(timed) >= F.cosinorLeastHours.value
  );
}

function isSame(a: readonly number[], b: readonly number[]): boolean {
  return a.length === b.length && a.every((hour, k) => hour === b[k]);
}
