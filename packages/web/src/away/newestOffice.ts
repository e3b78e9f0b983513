import { type Chart, type RulesOf, roundAverage } from '@evenfall/record';

/** What the newest round of the office with a mean came to, mmHg, and when it was. */
export type Office = { readonly systolic: number; readonly diastolic: number; readonly at: string };

/** Days about a series in which an office pressure belongs to it. Source: decision of this project. */
const WITHIN_DAYS = 92;
const DAY_MS = 86_400_000;

/**
 * The mean of the round nearest to the end of a series; null where there is none within three months of it.
 *
 * @param until the last local day of the series, `YYYY-MM-DD`
 */
export function newestOffice({ rounds }: Chart, rulesOf: RulesOf, until: string): Office | null {
  const end = Date.parse(`${until}T12:00:00Z`);
  const found = rounds.flatMap((round) => {
    if (round.isInError || round.isPreliminary) return [];
    const average = roundAverage(round, rulesOf);
    const at = round.values.at(-1)?.original.measuredAt.at;
    return average === null || at === undefined
      ? []
      : [{ systolic: average.systolic, diastolic: average.diastolic, at }];
  });
  const apart = ({ at }: Office) => Math.abs(Date.parse(at) - end);
  const [nearest] = found.toSorted((a, b) => apart(a) - apart(b));
  return nearest === undefined || apart(nearest) > WITHIN_DAYS * DAY_MS ? null : nearest;
}
