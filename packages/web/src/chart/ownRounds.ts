import { type ChartRound, projectChart, type Stamp, type StoredEntry } from '@evenfall/record';

/** A round longer before or after another than this says nothing about it. Hours; source: decision of this project. */
export const BESIDE_HOURS = 12;
const MS_AN_HOUR = 3_600_000;

export type OwnRound = { readonly id: string; readonly at: Stamp; readonly round: ChartRound };

/** The rounds of a person that somebody signed themselves within hours of a learner's signing, newest first. */
export function ownRounds(entries: readonly StoredEntry[], agent: string, signing: StoredEntry): OwnRound[] {
  const signedMs = Date.parse(signing.measuredAt.at);
  return projectChart(entries).rounds.flatMap((round) => {
    const own = round.signed?.original;
    if (own === undefined || own.agent !== agent || round.id === signing.round || round.isInError) return [];
    const apartMs = Math.abs(Date.parse(own.measuredAt.at) - signedMs);
    return apartMs > BESIDE_HOURS * MS_AN_HOUR ? [] : [{ id: round.id, at: own.measuredAt, round }];
  });
}
