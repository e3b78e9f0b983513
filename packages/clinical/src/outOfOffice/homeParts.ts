import type { Flag } from '../contract/flag.js';
import { mean } from '../statistics/mean.js';
import { sampleSd } from '../statistics/sampleSd.js';
import { type ByMeasure, forEachMeasure } from './byMeasure.js';
import { OUT_OF_OFFICE_FIGURES as F } from './figures.js';
import { dayPartOf, homeDayOf } from './homeDays.js';
import { type DayToDay, type Dropped, dayToDayOf } from './homeResult.js';
import type { HomeRules } from './homeRules.js';
import { type Measure, type SeriesReading, valuesOf } from './seriesReading.js';

/** How the mornings of a series vary from day to day, its evenings, and what lies between both on one day. */
export type HomeParts = {
  readonly morning: DayToDay & { readonly most: ByMeasure };
  readonly evening: DayToDay & { readonly most: ByMeasure };
  /** Morning minus evening of each day that has both. */
  readonly morningMinusEvening: { readonly days: number; readonly mean: ByMeasure; readonly sd: ByMeasure };
  /** That too few mornings have two readings for how systolic varies; none where they are enough. */
  readonly flags: readonly Flag<'few-mornings'>[];
};

/**
 * Variation from day to day of mornings and evenings by themselves: of the mean of each morning, of each evening. Worked out where it
 * is shown; readings that the result does not use are not in it.
 *
 * Source: out-of-office handbook 12, 19 (H1).
 */
export function homeParts(
  readings: readonly SeriesReading[],
  dropped: readonly Pick<Dropped, 'index'>[],
  rules: HomeRules,
): HomeParts {
  const left = new Set(dropped.map(({ index }) => index));
  const byDay = new Map<number, { morning: SeriesReading[]; evening: SeriesReading[] }>();
  for (const one of readings) {
    const part = dayPartOf(one, rules);
    if (left.has(one.index) || part === 'other') continue;
    const day = homeDayOf(one, rules);
    const ofDay = byDay.get(day) ?? { morning: [], evening: [] };
    ofDay[part].push(one);
    byDay.set(day, ofDay);
  }
  const days = [...byDay.entries()].sort(([a], [b]) => a - b).map(([, ofDay]) => ofDay);
  const meansOf = (part: 'morning' | 'evening') =>
    days.flatMap((ofDay) => {
      const list = ofDay[part];
      return list.length === 0 ? [] : [forEachMeasure((measure) => mean(valuesOf(list, measure)))];
    });
  const differences = (measure: Measure) =>
    days.flatMap(({ morning, evening }) => {
      const [a, b] = [mean(valuesOf(morning, measure)), mean(valuesOf(evening, measure))];
      return a === null || b === null ? [] : [a - b];
    });
  const mornings = days.filter(
    ({ morning }) => valuesOf(morning, 'systolic').length >= F.variabilityMorningReadings.value,
  ).length;
  const least = F.variabilityMornings.value;
  return {
    morning: varied(meansOf('morning')),
    evening: varied(meansOf('evening')),
    morningMinusEvening: {
      days: differences('systolic').length,
      mean: forEachMeasure((measure) => mean(differences(measure))),
      sd: forEachMeasure((measure) => sampleSd(differences(measure))),
    },
    // One day alone varies from none.
    flags:
      mornings >= least || days.length < 2 ? [] : [{ code: 'few-mornings', figures: { mornings, least } }],
  };
}

function varied(means: readonly ByMeasure[]): HomeParts['morning'] {
  const most = forEachMeasure((measure) => {
    const known = means.map((one) => one[measure]).filter((one) => one !== null);
    return known.length === 0 ? null : Math.max(...known);
  });
  return { ...dayToDayOf(means), most };
}
