import type { HomeRules } from '@evenfall/clinical';
import type { InForce } from '../content/inForce.js';
import type { ChartedSeries } from './chartSeries.js';
import { compareSeries, type SeriesComparison } from './compareSeries.js';
import { seriesAbout } from './seriesAbout.js';

type Limits = {
  readonly systolic: HomeRules['highSystolic'];
  readonly diastolic: HomeRules['highDiastolic'];
};

/** One of two series with all that stands beside its means: how many readings, how they were taken, by which rules. */
export type OneOfTwo = Pick<ReturnType<typeof seriesAbout>, 'arms' | 'devices'> & {
  readonly series: ChartedSeries;
  readonly of: ChartedSeries['content']['of'];
  readonly used: number;
  readonly days: number | null;
  readonly dropped: number;
  readonly treated: boolean | null;
  readonly note: string | null;
  readonly ruleSet: { readonly id: string; readonly version: string } | null;
  readonly limits: { readonly [P in 'mean' | 'day' | 'night']: Limits };
};

/** Two series of one person, the one that began earlier first, of two that began at once the one that ended earlier; each under the rules that it names. */
export function twoSeries(
  one: ChartedSeries,
  other: ChartedSeries,
  rulesFor: (series: ChartedSeries) => InForce,
): { readonly first: OneOfTwo; readonly second: OneOfTwo; readonly compared: SeriesComparison } {
  const [first, second] = byTime(one, other) > 0 ? [other, one] : [one, other];
  return {
    first: oneOfTwo(first, rulesFor(first)),
    second: oneOfTwo(second, rulesFor(second)),
    compared: compareSeries(
      { of: first.content.of, value: first.value },
      { of: second.content.of, value: second.value },
    ),
  };
}

/** By the first reading, then by the last, then by id: whichever of the two was opened, the order is the same. */
function byTime(one: ChartedSeries, other: ChartedSeries): number {
  const [a, b] = [spanMs(one), spanMs(other)];
  return a.from - b.from || a.until - b.until || (one.id < other.id ? -1 : 1);
}

function spanMs({ content }: ChartedSeries): { readonly from: number; readonly until: number } {
  const times = content.readings.map(({ at }) => Date.parse(at.at));
  return { from: Math.min(...times), until: Math.max(...times) };
}

function oneOfTwo(series: ChartedSeries, rules: InForce): OneOfTwo {
  const { content, value } = series;
  const { computedBy, of, treated, note } = content;
  const { arms, devices } = seriesAbout(content);
  return {
    series,
    of,
    used: value.used,
    days: value.days,
    dropped: value.dropped.length,
    treated,
    note,
    arms,
    devices,
    ruleSet:
      computedBy.preset === null ? null : { id: computedBy.preset, version: computedBy.presetVersion ?? '' },
    limits: {
      mean: seriesLimits(of, 'mean', rules),
      day: seriesLimits(of, 'day', rules),
      night: seriesLimits(of, 'night', rules),
    },
  };
}

/** The limits of high that a mean of a series stands beside. */
export function seriesLimits(
  of: ChartedSeries['content']['of'],
  part: 'mean' | 'day' | 'night',
  { homeRules, ambulatoryRules: a }: Pick<InForce, 'homeRules' | 'ambulatoryRules'>,
): Limits {
  if (of === 'home') return { systolic: homeRules.highSystolic, diastolic: homeRules.highDiastolic };
  if (part === 'mean') return { systolic: a.wholeSystolic, diastolic: a.wholeDiastolic };
  return part === 'day'
    ? { systolic: a.daySystolic, diastolic: a.dayDiastolic }
    : { systolic: a.nightSystolic, diastolic: a.nightDiastolic };
}
