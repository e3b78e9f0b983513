import { mean } from '../statistics/mean.js';
import { DAY_HOURS } from './clock.js';
import type { TimedValues } from './timedValue.js';

/**
 * The mean over time by trapezoids between neighbours, so that times measured more densely do not weigh more. The
 * value itself where there is one; null of none. Values at one instant share their weight.
 * Source: out-of-office handbook 13.
 */
export function trapezoidMean({ hours, values }: TimedValues): number | null {
  const n = values.length;
  if (n === 0) return null;
  const span = (hours[n - 1] as number) - (hours[0] as number);
  return span === 0 ? mean(values) : trapezoidArea({ hours, values }) / span;
}

/**
 * The trapezoid mean of a whole day: the first value stands again 24 hours after it was taken. Null where the
 * recording is longer than that.
 * Source: out-of-office handbook 13.
 */
export function closedMean({ hours, values }: TimedValues): number | null {
  const n = values.length;
  if (n === 0) return null;
  const [first, last] = [hours[0] as number, hours[n - 1] as number];
  if (last - first > DAY_HOURS) return null;
  const end = first + DAY_HOURS;
  const closing = ((end - last) * ((values[n - 1] as number) + (values[0] as number))) / 2;
  return (trapezoidArea({ hours, values }) + closing) / (end - first);
}

/** The area under the straight lines between neighbours, in the unit of the values times hours. */
function trapezoidArea({ hours, values }: TimedValues): number {
  let area = 0;
  for (let k = 1; k < values.length; k++) {
    const gap = (hours[k] as number) - (hours[k - 1] as number);
    area += (gap * ((values[k - 1] as number) + (values[k] as number))) / 2;
  }
  return area;
}

/** A mean of day and one of night, each weighing by its hours; null where one of them is. Source: as above. */
export function hoursWeightedMean(
  day: number | null,
  night: number | null,
  dayHours: number,
  nightHours: number,
): number | null {
  if (day === null || night === null || dayHours + nightHours <= 0) return null;
  return (dayHours * day + nightHours * night) / (dayHours + nightHours);
}

/**
 * The share of the whole time that the value at a place stands for: half of the gaps to its neighbours, in hours.
 * Source: out-of-office handbook 13 ("half-gap weighting").
 */
export function halfGap(hours: readonly number[], place: number): number {
  const last = hours.length - 1;
  const before = hours[place === 0 ? 0 : place - 1] as number;
  const after = hours[place === last ? last : place + 1] as number;
  return (after - before) / 2;
}
