import { plainMeanPressure } from '../score/meanPressure.js';
import { mean } from '../statistics/mean.js';
import { sampleSd } from '../statistics/sampleSd.js';
import type { ByMeasure, ForEachMeasure } from './byMeasure.js';
import type { SeriesReading } from './seriesReading.js';
import type { TimedValues } from './timedValue.js';

/** What readings of one period come to. */
export type PeriodResult = {
  readonly n: number;
  readonly mean: ByMeasure;
  readonly sd: ByMeasure;
  readonly least: ByMeasure;
  readonly most: ByMeasure;
  /** Of each reading, then averaged: systolic minus diastolic, and diastolic and a third of that. */
  readonly pulsePressure: number | null;
  readonly meanArterial: number | null;
  /** Systolic times pulse of each reading, then averaged. */
  readonly doubleProduct: number | null;
};

/**
 * What the readings of a period come to. Source: out-of-office handbook 1, 13, 14.
 *
 * @param values what is known of each measure in them
 */
export function periodResult(
  readings: readonly SeriesReading[],
  values: ForEachMeasure<TimedValues>,
): PeriodResult {
  const systolic = spreadOf(values.systolic.values);
  const diastolic = spreadOf(values.diastolic.values);
  const pulse = spreadOf(values.pulse.values);
  return {
    n: readings.length,
    mean: { systolic: systolic.mean, diastolic: diastolic.mean, pulse: pulse.mean },
    sd: { systolic: systolic.sd, diastolic: diastolic.sd, pulse: pulse.sd },
    least: { systolic: systolic.least, diastolic: diastolic.least, pulse: pulse.least },
    most: { systolic: systolic.most, diastolic: diastolic.most, pulse: pulse.most },
    pulsePressure: meanOver(readings, pulsePressureOf),
    meanArterial: meanOver(readings, meanArterialOf),
    doubleProduct: meanOver(readings, doubleProductOf),
  };
}

function pulsePressureOf({ systolic, diastolic }: SeriesReading): number | null {
  return systolic === null || diastolic === null ? null : systolic - diastolic;
}

function meanArterialOf({ systolic, diastolic }: SeriesReading): number | null {
  return systolic === null || diastolic === null ? null : plainMeanPressure(systolic, diastolic);
}

function doubleProductOf({ systolic, pulse }: SeriesReading): number | null {
  return systolic === null || pulse === null ? null : systolic * pulse;
}

/** The mean of what is worked out of each reading, as `mean` of a list of them: worked out twice rather than kept. */
function meanOver(
  readings: readonly SeriesReading[],
  of: (reading: SeriesReading) => number | null,
): number | null {
  let n = 0;
  let sum = 0;
  for (let k = 0; k < readings.length; k++) {
    const value = of(readings[k] as SeriesReading);
    if (value === null) continue;
    sum += value;
    n++;
  }
  if (n === 0) return null;
  const first = sum / n;
  let rest = 0;
  for (let k = 0; k < readings.length; k++) {
    const value = of(readings[k] as SeriesReading);
    if (value !== null) rest += value - first;
  }
  return first + rest / n;
}

/** Centre and spread of any number of values; null of none, and without an SD of one. */
function spreadOf(values: readonly number[]) {
  const centre = mean(values);
  if (centre === null) return { mean: null, sd: null, least: null, most: null };
  let least = values[0] as number;
  let most = least;
  for (let k = 1; k < values.length; k++) {
    const value = values[k] as number;
    if (value < least) least = value;
    if (value > most) most = value;
  }
  return { mean: centre, sd: sampleSd(values, centre), least, most };
}
