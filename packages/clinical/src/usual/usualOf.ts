import type { Component } from '../category/scheme.js';
import type { Sex } from '../child/sex.js';
import type { AmbulatoryResult } from '../outOfOffice/ambulatoryResult.js';
import type { AmbulatoryRules } from '../outOfOffice/ambulatoryRules.js';
import { homeDayOf } from '../outOfOffice/homeDays.js';
import type { HomeResult } from '../outOfOffice/homeResult.js';
import type { HomeRules } from '../outOfOffice/homeRules.js';
import { homeScheme } from '../outOfOffice/homeSchemes.js';
import type { SeriesReading } from '../outOfOffice/seriesReading.js';
import { ownSds } from './components.js';
import { HOME_OFFSET, type UsualQuestion, type UsualResult, usualResult } from './usualResult.js';

type ByComponent<T> = { readonly systolic: T; readonly diastolic: T };

/** What is known of both numbers; each part null where it was not measured. */
export type UsualKnown = {
  readonly ageYears: number | null;
  readonly sex: Sex | null;
  readonly office: ByComponent<UsualQuestion['office']>;
  readonly home: ByComponent<UsualQuestion['home']>;
  readonly ambulatory: ByComponent<UsualQuestion['ambulatory']>;
};

/** The usual pressure of one number about a threshold in mmHg, home minus office taken as nothing else is known. */
export function usualOf(component: Component, known: UsualKnown, threshold: number): UsualResult | null {
  return usualResult({
    component,
    ageYears: known.ageYears,
    sex: known.sex,
    office: known.office[component],
    home: known.home[component],
    ambulatory: known.ambulatory[component],
    threshold,
    offset: HOME_OFFSET[component],
  });
}

/** The readings of a mean at home with their own variation by day, for the usual pressure. Source: out-of-office handbook 17.4. */
export function homeMeanKnown(
  readings: readonly SeriesReading[],
  result: Pick<HomeResult, 'mean' | 'counts' | 'dropped'>,
  rules: HomeRules,
): UsualKnown['home'] {
  const dropped = new Set(result.dropped.map(({ index }) => index));
  const days = new Map<number, SeriesReading[]>();
  for (const one of readings) {
    if (dropped.has(one.index)) continue;
    const day = homeDayOf(one, rules);
    const ofDay = days.get(day);
    if (ofDay === undefined) days.set(day, [one]);
    else ofDay.push(one);
  }
  const of = (component: Component) => {
    const mean = result.mean[component];
    if (mean === null) return null;
    const byDay = [...days.values()]
      .map((ofDay) => ofDay.map((one) => one[component]).filter((value): value is number => value !== null))
      .filter((values) => values.length > 0);
    return { mean, readings: result.counts[component], days: byDay.length, own: ownSds(byDay) };
  };
  return { systolic: of('systolic'), diastolic: of('diastolic') };
}

/** What a recording says of the usual pressure: its mean by day, and the limit of day that it is about, mmHg. */
export type DayAsked = {
  readonly ambulatory: UsualKnown['ambulatory'];
  readonly thresholds: readonly ByComponent<number>[];
};

/** The mean by day about the limit of day; null where one of them is not known. Source: out-of-office handbook 17.4. */
export function dayAsked(
  { day: { mean } }: Pick<AmbulatoryResult, 'day'>,
  { daySystolic, dayDiastolic }: Pick<AmbulatoryRules, 'daySystolic' | 'dayDiastolic'>,
): DayAsked | null {
  const { systolic, diastolic } = mean;
  if (systolic === null || diastolic === null || daySystolic === null || dayDiastolic === null) return null;
  return {
    ambulatory: { systolic: { mean: systolic }, diastolic: { mean: diastolic } },
    thresholds: [{ systolic: daySystolic.limit, diastolic: dayDiastolic.limit }],
  };
}

/** The limit of high first, then the other limits of the names, where both numbers have one; mmHg. */
export function homeThresholds(rules: HomeRules): ByComponent<number>[] {
  const { highSystolic, highDiastolic, scheme } = rules;
  if (highSystolic === null || highDiastolic === null) return [];
  const high = { systolic: highSystolic.limit, diastolic: highDiastolic.limit };
  const bands = homeScheme(scheme, highSystolic, highDiastolic)?.bands ?? [];
  const others = bands.flatMap(({ systolic, diastolic }) =>
    systolic === null || diastolic === null ? [] : [{ systolic: systolic.limit, diastolic: diastolic.limit }],
  );
  return [
    high,
    ...others.filter((one) => one.systolic !== high.systolic || one.diastolic !== high.diastolic),
  ];
}
