import { isNearSeries } from '@evenfall/clinical';
import type { Chart } from './projectChart.js';
import { roundAverage } from './roundAverage.js';
import type { RulesOf } from './valueStanding.js';

/** What a round of the office came to, mmHg, and when it was. */
export type OfficeNear = { readonly systolic: number; readonly diastolic: number; readonly at: string };

const DAY_MS = 86_400_000;

/**
 * The mean of the office round that belongs to a series: the one nearest to its end; null where there is none within three months
 * of it. A learner's round counts once it is countersigned.
 *
 * @param until the last local day of the series, `YYYY-MM-DD`
 */
export function officeNear({ rounds }: Chart, rulesOf: RulesOf, until: string): OfficeNear | null {
  const end = Date.parse(`${until}T12:00:00Z`);
  const found = rounds.flatMap((round) => {
    if (round.isInError || round.isPreliminary) return [];
    const average = roundAverage(round, rulesOf);
    const at = round.values.at(-1)?.original.measuredAt.at;
    return average === null || at === undefined
      ? []
      : [{ systolic: average.systolic, diastolic: average.diastolic, at }];
  });
  const apart = ({ at }: OfficeNear) => Math.abs(Date.parse(at) - end);
  const [nearest] = found.toSorted((a, b) => apart(a) - apart(b));
  return nearest === undefined || !isNearSeries(apart(nearest) / DAY_MS) ? null : nearest;
}
