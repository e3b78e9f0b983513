import type { Component } from '../category/scheme.js';
import { mean } from '../statistics/mean.js';
import { USUAL_FIGURES as F } from './figures.js';
import { assessmentSd } from './prior.js';

/**
 * How far a mean over days at home lies from the usual pressure, in mmHg: what does not shrink with more readings in
 * the same weeks (long-term), what shrinks with days, what shrinks with readings. `isOwn` says that the series itself told
 * the last two.
 */
export type Components = {
  readonly long: number;
  readonly day: number;
  readonly reading: number;
  readonly isOwn: boolean;
};

/** SDs from day to day and from reading to reading within a day. */
export type OwnSds = { readonly day: number; readonly reading: number };

/**
 * Variation of readings by day, by one-way analysis of variance; a negative part from day to day is 0. With unequal days
 * the usual mean size of a group. Null under three days of two readings each.
 * Source: out-of-office handbook 17.4, worked example H1.
 */
export function ownSds(days: readonly (readonly number[])[]): OwnSds | null {
  const groups = days.filter((one) => one.length > 0);
  const n = groups.reduce((sum, one) => sum + one.length, 0);
  const k = groups.length;
  if (groups.filter((one) => one.length > 1).length < F.leastDaysOfOwn.value) return null;
  const centre = mean(groups.flat()) as number;
  let [between, within, squares] = [0, 0, 0];
  for (const group of groups) {
    const own = mean(group) as number;
    between += group.length * (own - centre) ** 2;
    squares += group.length ** 2;
    for (const value of group) within += (value - own) ** 2;
  }
  const msBetween = between / (k - 1);
  const msWithin = within / (n - k);
  const size = (n - squares / n) / (k - 1);
  return { day: Math.sqrt(Math.max(0, (msBetween - msWithin) / size)), reading: Math.sqrt(msWithin) };
}

/**
 * The parts of the variation of a series at home. The long-term part is what makes a standard week come to the published
 * variation of weeks. Source: out-of-office handbook 17.4.
 */
export function componentsOf(component: Component, level: number, own: OwnSds | null): Components {
  const isSystolic = component === 'systolic';
  const day = own?.day ?? (isSystolic ? F.daySdSystolic : F.daySdDiastolic).value;
  const reading = own?.reading ?? (isSystolic ? F.readingSdSystolic : F.readingSdDiastolic).value;
  const week = assessmentSd('home', component, level);
  const shrinking = day ** 2 / F.standardDays.value + reading ** 2 / F.standardReadings.value;
  return { long: Math.sqrt(Math.max(0, week ** 2 - shrinking)), day, reading, isOwn: own !== null };
}

/** The standard error of a mean of `readings` over `days`, in mmHg. */
export function homeSe({ long, day, reading }: Components, days: number, readings: number): number {
  return Math.sqrt(long ** 2 + day ** 2 / days + reading ** 2 / readings);
}
