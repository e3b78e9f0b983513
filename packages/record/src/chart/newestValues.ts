import type { Posture } from '@evenfall/clinical';
import { type LatestReading, type LatestValue, newestNumbers } from './newestNumbers.js';
import type { ChartRound } from './projectChart.js';
import { postureOfAverage, type RoundAverage, roundAverage } from './roundAverage.js';
import type { RulesOf } from './valueStanding.js';

/** The newest standing pressure, with what its round came to; `posture` is of what it came to, where that is an average. */
export type LatestPressure = Omit<LatestReading, 'posture'> & {
  readonly posture: Posture | null;
  /** What its round comes to, where that is the average of several readings and nobody disputes one of them. */
  readonly average: RoundAverage | null;
};

/** The newest standing number of each sign that the list of people goes by. */
export type NewestValues = {
  readonly pulse: LatestValue | null;
  readonly breaths: LatestValue | null;
  readonly pressure: LatestPressure | null;
};

/**
 * {@link newestNumbers} with what the round of the pressure came to.
 *
 * @param rulesOf the rules by which a round that was amended after signing is judged again
 */
export function newestValues(rounds: readonly ChartRound[], rulesOf: RulesOf): NewestValues {
  const { pulse, breaths, pressure, ofPressure } = newestNumbers(rounds);
  if (pressure === null) return { pulse, breaths, pressure };
  const average = ofPressure === null ? null : roundAverage(ofPressure, rulesOf);
  const posture =
    average === null || ofPressure === null ? pressure.posture : postureOfAverage(ofPressure, average);
  return { pulse, breaths, pressure: { ...pressure, posture, average } };
}
