import { isNearSeries, mean, type VisitsMean } from '@evenfall/clinical';
import type { Chart, ChartRound } from './projectChart.js';
import { roundAverage } from './roundAverage.js';
import type { RulesOf } from './valueStanding.js';

/** The office rounds of one local day (`YYYY-MM-DD`): one visit, with the mean of their means, mmHg. */
export type OfficeVisit = {
  readonly date: string;
  readonly rounds: number;
  readonly systolic: number;
  readonly diastolic: number;
};

/** What the office rounds about a series came to: the mean over their visits, mmHg, and each visit, oldest first. */
export type OfficeNear = {
  readonly systolic: number;
  readonly diastolic: number;
  readonly visits: readonly OfficeVisit[];
};

/** The same as so many visits, for what is taken together with the readings; null of none. */
export function visitsMean(office: OfficeNear | null): VisitsMean | null {
  return office === null ? null : { ...office, visits: office.visits.length };
}

/** The first and the last local day of a series, `YYYY-MM-DD`. */
export type SeriesDays = { readonly from: string; readonly until: string };

/**
 * The office rounds that belong to a series: every signed one within three months of its days; null where there is none.
 * A learner's round counts once it is countersigned. Rounds of one day are one visit: what varies between visits they share.
 */
export function officeNear({ rounds }: Chart, rulesOf: RulesOf, days: SeriesDays): OfficeNear | null {
  const byDate = new Map<string, Pair[]>();
  for (const round of rounds) {
    const found = averageOn(round, rulesOf);
    if (found === null || !isNearSeries(daysApart(found.date, days))) continue;
    byDate.set(found.date, [...(byDate.get(found.date) ?? []), found]);
  }
  const visits = [...byDate].map(([date, all]) => ({ date, rounds: all.length, ...meanOfPairs(all) }));
  if (visits.length === 0) return null;
  return { ...meanOfPairs(visits), visits: visits.toSorted((a, b) => (a.date < b.date ? -1 : 1)) };
}

type Pair = { readonly systolic: number; readonly diastolic: number };

function averageOn(round: ChartRound, rulesOf: RulesOf): (Pair & { readonly date: string }) | null {
  if (round.isInError || round.isPreliminary) return null;
  const average = roundAverage(round, rulesOf);
  const at = round.values.at(-1)?.original.measuredAt.at;
  if (average === null || at === undefined) return null;
  const { systolic, diastolic } = average;
  return { systolic, diastolic, date: at.slice(0, 'YYYY-MM-DD'.length) };
}

/** Whole days from a day to the nearest of the series; 0 within it. */
function daysApart(date: string, { from, until }: SeriesDays): number {
  const before = Date.parse(from) - Date.parse(date);
  const after = Date.parse(date) - Date.parse(until);
  return Math.max(0, before, after) / DAY_MS;
}

const DAY_MS = 86_400_000;

/** The mean of pairs, of which there is at least one. */
function meanOfPairs(pairs: readonly Pair[]): Pair {
  const of = (component: keyof Pair) => mean(pairs.map((one) => one[component])) as number;
  return { systolic: of('systolic'), diastolic: of('diastolic') };
}
