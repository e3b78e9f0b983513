import { plainMeanPressure } from '../score/meanPressure.js';
import { mean } from '../statistics/mean.js';
import { sampleSd } from '../statistics/sampleSd.js';
import { type ByMeasure, forEachMeasure } from './byMeasure.js';
import { type SeriesReading, valuesOf } from './seriesReading.js';

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

/** What the readings of a period come to. Source: out-of-office handbook 1, 13, 14. */
export function periodResult(readings: readonly SeriesReading[]): PeriodResult {
  const values = forEachMeasure((measure) => valuesOf(readings, measure));
  const ofPairs = (of: (systolic: number, diastolic: number) => number) => {
    const found: number[] = [];
    for (const { systolic, diastolic } of readings) {
      if (systolic !== null && diastolic !== null) found.push(of(systolic, diastolic));
    }
    return mean(found);
  };
  const products: number[] = [];
  for (const { systolic, pulse } of readings) {
    if (systolic !== null && pulse !== null) products.push(systolic * pulse);
  }
  return {
    n: readings.length,
    mean: forEachMeasure((measure) => mean(values[measure])),
    sd: forEachMeasure((measure) => sampleSd(values[measure])),
    least: forEachMeasure((measure) => extremeOf(values[measure], Math.min)),
    most: forEachMeasure((measure) => extremeOf(values[measure], Math.max)),
    pulsePressure: ofPairs((systolic, diastolic) => systolic - diastolic),
    meanArterial: ofPairs(plainMeanPressure),
    doubleProduct: mean(products),
  };
}

/** The least or the most of any number of values; null of none. */
function extremeOf(values: readonly number[], pick: (a: number, b: number) => number): number | null {
  return values.length === 0 ? null : values.reduce((a, b) => pick(a, b));
}
