import { passes } from '../contract/threshold.js';
import { mean } from '../statistics/mean.js';
import { OUT_OF_OFFICE_COMPARISONS as SIDE } from './comparisons.js';
import { OUT_OF_OFFICE_FIGURES as F } from './figures.js';

/** A pressure of the office on a local day, `YYYY-MM-DD`; mmHg. */
export type OfficePressure = { readonly date: string; readonly systolic: number; readonly diastolic: number };

/** The pressures of one local day: one visit, with the mean of them, mmHg; `rounds` is how many they are. */
export type OfficeVisit = OfficePressure & { readonly rounds: number };

/** What visits to the office come to: the mean over them, mmHg, and each of them, oldest first. */
export type OfficeVisits = {
  readonly systolic: number;
  readonly diastolic: number;
  readonly visits: readonly OfficeVisit[];
};

/**
 * Pressures of the office as visits: those of one day are one, since what varies between visits they share. Null of none.
 * Source: decision of this project, beside out-of-office handbook 16.
 */
export function officeVisits(pressures: readonly OfficePressure[]): OfficeVisits | null {
  const byDate = new Map<string, OfficePressure[]>();
  for (const one of pressures) byDate.set(one.date, [...(byDate.get(one.date) ?? []), one]);
  const visits = [...byDate]
    .map(([date, all]) => ({ date, rounds: all.length, ...meanOf(all) }))
    .sort((a, b) => (a.date < b.date ? -1 : 1));
  return visits.length === 0 ? null : { ...meanOf(visits), visits };
}

/** Whether an office pressure so many days from a series belongs to it. */
export function isNearSeries(daysApart: number): boolean {
  return passes(daysApart, SIDE.officeWithinDays, F.officeWithinDays.value);
}

/** The mean of pressures, of which there is at least one. */
function meanOf(pressures: readonly Omit<OfficePressure, 'date'>[]): Omit<OfficePressure, 'date'> {
  const of = (component: 'systolic' | 'diastolic') => mean(pressures.map((one) => one[component])) as number;
  return { systolic: of('systolic'), diastolic: of('diastolic') };
}
