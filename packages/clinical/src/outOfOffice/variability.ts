import { sampleSd } from '../statistics/sampleSd.js';
import { straightLine } from '../statistics/straightLine.js';
import type { TimedRuns, TimedValues } from './timedValue.js';

/** 100 SD over mean, in percent; null where either is not defined. Source: out-of-office handbook 12. */
export function cvPercent(centre: number | null, sd: number | null): number | null {
  return centre === null || sd === null || centre === 0 ? null : (100 * sd) / centre;
}

/**
 * Average real variability: the mean size of the steps from each value to the next, steps of all runs together.
 * Null without a step. Source: out-of-office handbook 12.
 */
export function averageRealVariability({
  values,
  starts,
}: Pick<TimedRuns, 'values' | 'starts'>): number | null {
  let sum = 0;
  let steps = 0;
  for (let run = 0; run < starts.length; run++) {
    const end = starts[run + 1] ?? values.length;
    for (let k = (starts[run] as number) + 1; k < end; k++) {
      sum += Math.abs((values[k] as number) - (values[k - 1] as number));
      steps++;
    }
  }
  return steps === 0 ? null : sum / steps;
}

/** The same with each step weighing by the time it took. Null where no time passed. */
export function timeWeightedVariability({ hours, values, starts }: TimedRuns): number | null {
  let sum = 0;
  let weight = 0;
  for (let run = 0; run < starts.length; run++) {
    const end = starts[run + 1] ?? values.length;
    for (let k = (starts[run] as number) + 1; k < end; k++) {
      const gap = (hours[k] as number) - (hours[k - 1] as number);
      sum += gap * Math.abs((values[k] as number) - (values[k - 1] as number));
      weight += gap;
    }
  }
  return weight === 0 ? null : sum / weight;
}

/**
 * The SD (divisor n - 1, as everywhere) of what a straight line in time leaves over: without a slow rise or fall of the whole
 * series. Null of fewer than three values, which a line goes through, and where no time passed.
 * Source: out-of-office handbook 12.
 *
 * @param centre the mean of the values
 */
export function sdAboutTrend({ hours, values }: TimedValues, centre: number | null): number | null {
  const n = values.length;
  const line = n <= 2 ? null : straightLine(hours, values, centre);
  if (line === null) return null;
  const { intercept, slope } = line;
  const rest = new Array<number>(n);
  for (let k = 0; k < n; k++) rest[k] = (values[k] as number) - intercept - slope * (hours[k] as number);
  return sampleSd(rest);
}

/**
 * The SDs of day and night, weighing by their hours, which leaves the fall between them out. Null where one is.
 * Source: out-of-office handbook 12 (Bilo 2007).
 */
export function weightedSd(
  daySd: number | null,
  nightSd: number | null,
  dayHours: number,
  nightHours: number,
): number | null {
  if (daySd === null || nightSd === null || dayHours + nightHours <= 0) return null;
  return (daySd * dayHours + nightSd * nightHours) / (dayHours + nightHours);
}
