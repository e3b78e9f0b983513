import type { Posture } from '@evenfall/clinical';
import type { ChartRound } from './projectChart.js';
import { type RulesOf, valueStanding } from './valueStanding.js';

/** The average of a round, mmHg and not rounded; `shown` is each number beside the limits of its category, if it has one. */
export type RoundAverage = {
  readonly systolic: number;
  readonly diastolic: number;
  readonly readings: number;
  /** Ids of the readings that it is made of. */
  readonly used: readonly string[];
  readonly shown: { readonly systolic: string | null; readonly diastolic: string | null };
};

/**
 * What a round comes to; null where it is one reading, where there is none yet, and where amendments disagree.
 *
 * @param rulesOf the rules by which a round that was amended after signing is judged again
 */
export function roundAverage(round: ChartRound, rulesOf: RulesOf): RoundAverage | null {
  if (round.values.some(({ standing }) => standing === 'contested')) return null;
  const value = valueStanding(round, rulesOf);
  if (value === null || value.pressure === null) return null;
  const { systolic, diastolic, used } = value.pressure;
  if (systolic === null || diastolic === null || used.length < 2) return null;
  const shown = value.category?.shown ?? { systolic: null, diastolic: null };
  return { systolic, diastolic, readings: used.length, used, shown };
}

/** How the person was placed for the readings of an average, which are all alike; null where they are not found, or not alike. */
export function postureOfAverage({ values }: ChartRound, { used }: RoundAverage): Posture | null {
  const postures = values
    .filter(({ story }) => story.some(({ id }) => used.includes(id)))
    .map(({ current }) => current.at(-1))
    .map((entry) => (entry?.kind === 'run' ? entry.content.evidence.place.posture : null));
  const [first = null, ...others] = new Set(postures);
  return others.length === 0 ? first : null;
}

/** Ids of the readings that the average of a round is made of; none where there is no average. */
export function readingsAveraged(round: ChartRound, rulesOf: RulesOf): readonly string[] {
  return roundAverage(round, rulesOf)?.used ?? [];
}
