import {
  isNearSeries,
  type OfficePressure,
  type OfficeVisit,
  officeVisits,
  type Refusal,
  refusal,
  type SeriesReading,
  type VisitsMean,
} from '@evenfall/clinical';
import { daysApart } from '@evenfall/record';
import type { Given } from '../../options/option.js';
import { dateText } from './seriesOfText.js';
import { meanOf, type TypedMean } from './typedMean.js';

/** What was typed of the office: a mean and of how many visits, or pressures each with its day. */
export type TypedOffice =
  | (TypedMean & { readonly dated: null })
  | { readonly dated: readonly OfficePressure[] };

/** What of it is taken beside a series: null where nothing is. `visits` are those with a day, `tooFar` how many pressures are too far from it. */
export type OfficeTaken = {
  readonly systolic: number;
  readonly diastolic: number;
  readonly count: number;
  readonly visits: readonly OfficeVisit[] | null;
};

/** Reads `148/92x2`, or `2026-11-01=148/92,2026-11-08=150/90`; null where it was not typed or is refused. */
export function officeOf(given: Given, refusals: Refusal[]): TypedOffice | null {
  const text = given.text('office');
  if (text === null) return null;
  if (!text.includes('=')) {
    const mean = meanOf(given, 'office', refusals);
    return mean === null ? null : { ...mean, dated: null };
  }
  const dated: OfficePressure[] = [];
  for (const part of text.split(',')) {
    const [, date = '', systolic = '', diastolic = ''] = DATED.exec(part.trim()) ?? [];
    if (date === '' || !isDay(date)) {
      refusals.push(refusal('/office', 'not-a-time', 'dated-pressures', part.trim()));
      return null;
    }
    const one = { date, systolic: Number(systolic), diastolic: Number(diastolic) };
    if (one.diastolic >= one.systolic) {
      const figures = { systolic: one.systolic };
      refusals.push(
        refusal('/office', 'not-below-systolic', 'diastolic-below-this', part.trim(), { figures }),
      );
      return null;
    }
    dated.push(one);
  }
  return { dated };
}

const DATED = /^(\d{4}-\d{2}-\d{2})=(\d{1,3}(?:\.\d+)?)\/(\d{1,3}(?:\.\d+)?)$/;

/** Whether a date is one of the calendar: 30 February is none. */
function isDay(date: string): boolean {
  const ms = Date.parse(`${date}T00:00:00Z`);
  return !Number.isNaN(ms) && new Date(ms).toISOString().startsWith(date);
}

/** The office as it stands by itself: of pressures with a day each day is a visit. */
export function officeTyped(office: TypedOffice | null): OfficeTaken | null {
  if (office === null) return null;
  if (office.dated === null) {
    const { systolic, diastolic, count } = office;
    return { systolic, diastolic, count, visits: null };
  }
  const found = officeVisits(office.dated);
  return found === null ? null : { ...found, count: found.visits.length };
}

/** The same beside readings: a pressure with a day that is too far from them is left out, and counted. */
export function officeBesideReadings(
  office: TypedOffice | null,
  readings: readonly SeriesReading[],
): { readonly taken: OfficeTaken | null; readonly tooFar: number } {
  if (office === null || office.dated === null || readings.length === 0)
    return { taken: officeTyped(office), tooFar: 0 };
  const days = readings.map(({ localDay }) => localDay);
  const series = { from: dateText(Math.min(...days)), until: dateText(Math.max(...days)) };
  const near = office.dated.filter(({ date }) => isNearSeries(daysApart(date, series)));
  return { taken: officeTyped({ dated: near }), tooFar: office.dated.length - near.length };
}

/** The office mean as so many visits, as the chances take it. */
export function visitsOf(taken: OfficeTaken | null): VisitsMean | null {
  if (taken === null) return null;
  const { systolic, diastolic, count } = taken;
  return { systolic, diastolic, visits: count };
}
