import { mean } from '../statistics/mean.js';
import { sampleSd } from '../statistics/sampleSd.js';
import type { TimedValues } from './timedValue.js';

/** Stretches of time order between which nothing is bridged: a night between two days, a gap that is too long. */
export type Segments = readonly TimedValues[];

/** 100 SD over mean, in percent; null where either is not defined. Source: out-of-office handbook 12. */
export function cvPercent(values: readonly number[]): number | null {
  const [centre, sd] = [mean(values), sampleSd(values)];
  return centre === null || sd === null || centre === 0 ? null : (100 * sd) / centre;
}

/**
 * Average real variability: the mean size of the steps from each value to the next, steps of all segments together.
 * Null without a step. Source: out-of-office handbook 12.
 */
export function averageRealVariability(segments: Segments): number | null {
  let sum = 0;
  let steps = 0;
  for (const { values } of segments) {
    for (let k = 1; k < values.length; k++) {
      sum += Math.abs((values[k] as number) - (values[k - 1] as number));
      steps++;
    }
  }
  return steps === 0 ? null : sum / steps;
}

/** The same with each step weighing by the time it took. Null where no time passed. */
export function timeWeightedVariability(segments: Segments): number | null {
  let sum = 0;
  let weight = 0;
  for (const { hours, values } of segments) {
    for (let k = 1; k < values.length; k++) {
      const gap = (hours[k] as number) - (hours[k - 1] as number);
      sum += gap * Math.abs((values[k] as number) - (values[k - 1] as number));
      weight += gap;
    }
  }
  return weight === 0 ? null : sum / weight;
}

/** Cuts a series where two neighbours lie further apart than `longestHours`. */
export function withoutGaps({ hours, values }: TimedValues, longestHours: number): Segments {
  const segments: { hours: number[]; values: number[] }[] = [];
  hours.forEach((hour, k) => {
    const before = hours[k - 1];
    if (before === undefined || hour - before > longestHours) segments.push({ hours: [], values: [] });
    segments.at(-1)?.hours.push(hour);
    segments.at(-1)?.values.push(values[k] as number);
  });
  return segments;
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
