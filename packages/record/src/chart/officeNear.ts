import {
  isNearSeries,
  type OfficePressure,
  type OfficeVisits,
  officeVisits,
  type VisitsMean,
} from '@evenfall/clinical';
import type { Chart, ChartRound } from './projectChart.js';
import { roundAverage } from './roundAverage.js';
import type { RulesOf } from './valueStanding.js';

/** What the office rounds about a series came to. */
export type OfficeNear = OfficeVisits & {
  /** Signed rounds with a pressure as near as these that are not taken, by why; none of a reason with no round. */
  readonly leftOut: readonly OfficeLeftOut[];
};

/** A learner's round that nobody countersigned, one with amendments that disagree, and one that comes to no mean of two readings or more. */
export const OFFICE_LEFT_OUT = ['not-countersigned', 'disputed', 'no-mean'] as const;
export type OfficeLeftOut = {
  readonly why: (typeof OFFICE_LEFT_OUT)[number];
  readonly rounds: number;
};

/** The same as so many visits, for what is taken together with the readings; null of none. */
export function visitsMean(office: OfficeNear | null): VisitsMean | null {
  if (office === null) return null;
  const { systolic, diastolic, visits } = office;
  return { systolic, diastolic, visits: visits.length };
}

/** The first and the last local day of a series, `YYYY-MM-DD`. */
export type SeriesDays = { readonly from: string; readonly until: string };

/**
 * The office rounds that belong to a series: every signed one within three months of its days that comes to a mean of two
 * readings or more, undisputed; null where there is none. A learner's round counts once it is countersigned. Rounds of one day are one visit: what varies between visits they share.
 */
export function officeNear(chart: Chart, rulesOf: RulesOf, days: SeriesDays): OfficeNear | null {
  const { taken, leftOut } = roundsNear(chart, rulesOf, days);
  return taken === null ? null : { ...taken, leftOut };
}

/** Why none of the office rounds near a series is taken, where some are near and none is; else nothing. */
export function officeNotTaken(chart: Chart, rulesOf: RulesOf, days: SeriesDays): readonly OfficeLeftOut[] {
  const { taken, leftOut } = roundsNear(chart, rulesOf, days);
  return taken === null ? leftOut : [];
}

type RoundsNear = { readonly taken: OfficeVisits | null; readonly leftOut: readonly OfficeLeftOut[] };

function roundsNear({ rounds }: Chart, rulesOf: RulesOf, days: SeriesDays): RoundsNear {
  const pressures: OfficePressure[] = [];
  const left: OfficeLeftOut['why'][] = [];
  for (const round of rounds) {
    const date = round.values.at(-1)?.original.measuredAt.at.slice(0, 'YYYY-MM-DD'.length);
    if (date === undefined || !isOfOffice(round) || !isNearSeries(daysApart(date, days))) continue;
    const found = takenOf(round, rulesOf);
    if (typeof found === 'string') left.push(found);
    else pressures.push({ date, ...found });
  }
  const leftOut = OFFICE_LEFT_OUT.flatMap((why) => {
    const rounds = left.filter((one) => one === why).length;
    return rounds === 0 ? [] : [{ why, rounds }];
  });
  return { taken: officeVisits(pressures), leftOut };
}

type Pair = { readonly systolic: number; readonly diastolic: number };

/** Whether a round is one that somebody signed, with a pressure that stands, or that amendments disagree about. */
function isOfOffice({ signed, isInError, values }: ChartRound): boolean {
  return (
    signed !== null && !isInError && values.some(({ current }) => current.some(({ kind }) => kind === 'run'))
  );
}

/** What a round came to; else why it is not taken. */
function takenOf(round: ChartRound, rulesOf: RulesOf): Pair | OfficeLeftOut['why'] {
  if (round.isPreliminary) return 'not-countersigned';
  const average = roundAverage(round, rulesOf);
  if (average !== null) return { systolic: average.systolic, diastolic: average.diastolic };
  return round.values.some(({ standing }) => standing === 'contested') ? 'disputed' : 'no-mean';
}

/** Whole days from a day (`YYYY-MM-DD`) to the nearest of a series; 0 within it. */
export function daysApart(date: string, { from, until }: SeriesDays): number {
  const before = Date.parse(from) - Date.parse(date);
  const after = Date.parse(date) - Date.parse(until);
  return Math.max(0, before, after) / DAY_MS;
}

const DAY_MS = 86_400_000;
