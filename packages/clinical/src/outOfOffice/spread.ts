import { populationSd } from '../statistics/populationSd.js';
import { rmssd } from '../statistics/rmssd.js';
import { type ByMeasure, type ForEachMeasure, forEachMeasure, ofEachMeasure } from './byMeasure.js';
import type { PeriodResult } from './periodResult.js';
import type { TimedValues } from './timedValue.js';
import { sdAboutTrend } from './variability.js';

/** Further ways to say how far the values of a whole recording lie apart, each in the unit of its measure. */
export type Spread = {
  /** The SD with divisor n. */
  readonly populationSd: ByMeasure;
  /** Root mean square of the steps from each value to the next. */
  readonly rmssd: ByMeasure;
  readonly sdAboutTrend: ByMeasure;
  readonly mostMinusLeast: ByMeasure;
  readonly mostMinusMean: ByMeasure;
  readonly meanMinusLeast: ByMeasure;
};

/** Source: out-of-office handbook 12. */
export function spreadOf(series: ForEachMeasure<TimedValues>, { mean, least, most }: PeriodResult): Spread {
  const minus = (a: number | null, b: number | null) => (a === null || b === null ? null : a - b);
  return {
    populationSd: forEachMeasure((m) => populationSd(series[m].values, mean[m])),
    rmssd: ofEachMeasure(series, ({ values }) => rmssd(values)),
    sdAboutTrend: forEachMeasure((m) => sdAboutTrend(series[m], mean[m])),
    mostMinusLeast: forEachMeasure((m) => minus(most[m], least[m])),
    mostMinusMean: forEachMeasure((m) => minus(most[m], mean[m])),
    meanMinusLeast: forEachMeasure((m) => minus(mean[m], least[m])),
  };
}
