import { plainMeanPressure } from '../score/meanPressure.js';
import { mean } from '../statistics/mean.js';
import { sampleSd } from '../statistics/sampleSd.js';
import type { Period } from './ambulatoryRules.js';
import { type DayNight, periodOf } from './periods.js';
import type { Edited } from './recordingKept.js';
import type { SeriesReading } from './seriesReading.js';

/** What is worked out of the two numbers of each reading. */
export const DERIVED = ['meanArterial', 'pulsePressure'] as const;
export type Derived = (typeof DERIVED)[number];

/** How far the values of a period lie apart, mmHg: SD by n - 1, lowest, highest; null where it is not defined. */
export type DerivedSpread = {
  readonly sd: number | null;
  readonly least: number | null;
  readonly most: number | null;
};
export type DerivedSpreads = Readonly<Record<Period, Readonly<Record<Derived, DerivedSpread>>>>;

const OF: Readonly<Record<Derived, (systolic: number, diastolic: number) => number>> = {
  meanArterial: plainMeanPressure,
  pulsePressure: (systolic, diastolic) => systolic - diastolic,
};

/**
 * How far mean arterial and pulse pressure lie apart in each period of a recording: worked out where it is shown, since
 * nothing is judged by it. Their means are in the result.
 *
 * @param readings all that came
 * @param edited those that the result does not use
 * Source: out-of-office handbook 1, 12, 18.
 */
export function derivedSpreads(
  readings: readonly SeriesReading[],
  edited: readonly Pick<Edited, 'index'>[],
  dayNight: DayNight,
): DerivedSpreads {
  const left = new Set(edited.map(({ index }) => index));
  const kept = readings.filter(({ index }) => !left.has(index));
  const of = (period: Period) => {
    const those = period === 'whole' ? kept : kept.filter((one) => periodOf(one, dayNight) === period);
    return {
      meanArterial: spreadOf(valuesOf(those, OF.meanArterial)),
      pulsePressure: spreadOf(valuesOf(those, OF.pulsePressure)),
    };
  };
  return { whole: of('whole'), day: of('day'), night: of('night') };
}

function valuesOf(readings: readonly SeriesReading[], of: (typeof OF)[Derived]): number[] {
  return readings.flatMap(({ systolic, diastolic }) =>
    systolic === null || diastolic === null ? [] : [of(systolic, diastolic)],
  );
}

function spreadOf(values: readonly number[]): DerivedSpread {
  if (values.length === 0) return { sd: null, least: null, most: null };
  return { sd: sampleSd(values, mean(values)), least: Math.min(...values), most: Math.max(...values) };
}
