import { type ForEachMeasure, forEachMeasure } from './byMeasure.js';
import { type Cosinor, cosinorAt, rightSides } from './cosinor.js';
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
  // Most readings have all their numbers, and share their times: then what these say is worked out once for the three.
  let known: { readonly hours: readonly number[]; readonly times: CosinorTimes | null } | null = null;
  return forEachMeasure((measure) => {
    const { hours, values } = series[measure];
    if (known === null || known.hours !== hours) {
      const first = kept.find((one) => one[measure] !== null);
      known = { hours, times: first === undefined || !isEnough(hours) ? null : timesFrom(first, hours) };
    }
    return known.times === null ? { one: null, two: null } : curvesAt(known.times, values);
  });
}

/** Hours from the first reading's own local midnight: time that passed, also where the clock changes. */
function timesFrom({ minuteOfDay }: SeriesReading, hours: readonly number[]): CosinorTimes {
  return cosinorTimes(hours, minuteOfDay / 60 - (hours[0] as number));
}

function curvesAt(times: CosinorTimes, values: readonly number[]): Curves {
  const sides = rightSides(times, values);
  return { one: cosinorAt(times, values, sides, 1), two: cosinorAt(times, values, sides, 2) };
}

function isEnough(hours: readonly number[]): boolean {
  const gap = longestGap(hours);
  return (
    hours.length >= F.cosinorLeastReadings.value &&
    gap !== null &&
    gap <= F.cosinorLongestGapHours.value &&
    coveredHours(hours) >= F.cosinorLeastHours.value
  );
}
