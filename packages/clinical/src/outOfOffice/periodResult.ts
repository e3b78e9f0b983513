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
  const { pulsePressure, meanArterial, doubleProduct } = meansOfEach(readings);
  return {
    n: readings.length,
    mean: { systolic: systolic.mean, diastolic: diastolic.mean, pulse: pulse.mean },
    sd: { systolic: systolic.sd, diastolic: diastolic.sd, pulse: pulse.sd },
    least: { systolic: systolic.least, diastolic: diastolic.least, pulse: pulse.least },
    most: { systolic: systolic.most, diastolic: diastolic.most, pulse: pulse.most },
    pulsePressure,
    meanArterial,
    doubleProduct,
  };
}

/** Means of what is worked out of each reading, each as `mean` of a list of them: worked out twice rather than kept. */
function meansOfEach(readings: readonly SeriesReading[]) {
  const sums = sumsOver(readings, 0, 0, 0);
  const { pressures, products } = sums;
  const pulsePressure = sums.pulsePressure / pressures;
  const meanArterial = sums.meanArterial / pressures;
  const doubleProduct = sums.doubleProduct / products;
  const rests = sumsOver(readings, pulsePressure, meanArterial, doubleProduct);
  return {
    pulsePressure: pressures === 0 ? null : pulsePressure + rests.pulsePressure / pressures,
    meanArterial: pressures === 0 ? null : meanArterial + rests.meanArterial / pressures,
    doubleProduct: products === 0 ? null : doubleProduct + rests.doubleProduct / products,
  };
}

/** How far each reading lies over a pulse pressure, a mean arterial pressure and a product, summed; and how many have them. */
function sumsOver(
  readings: readonly SeriesReading[],
  pressureLevel: number,
  arterialLevel: number,
  productLevel: number,
) {
  let pressures = 0;
  let products = 0;
  let pulsePressure = 0;
  let meanArterial = 0;
  let doubleProduct = 0;
  for (let k = 0; k < readings.length; k++) {
    const { systolic, diastolic, pulse } = readings[k] as SeriesReading;
    if (systolic === null) continue;
    if (diastolic !== null) {
      pressures++;
      pulsePressure += systolic - diastolic - pressureLevel;
      meanArterial += plainMeanPressure(systolic, diastolic) - arterialLevel;
    }
    if (pulse !== null) {
      products++;
      doubleProduct += systolic * pulse - productLevel;
    }
  }
  return { pressures, products, pulsePressure, meanArterial, doubleProduct };
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
