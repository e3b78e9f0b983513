import { mean } from '../statistics/mean.js';
import { DAY_HOURS } from './clock.js';
import { OUT_OF_OFFICE_FIGURES as F } from './figures.js';
import type { Measure, SeriesReading } from './seriesReading.js';

/** The readings of one hour of the clock; an hour without any is not there. SD null under three. */
export type Hour = {
  readonly hour: number;
  readonly n: number;
  readonly mean: number;
  readonly sd: number | null;
};

/**
 * Means by the clock's hour, in the order in which the hours first come. An empty hour is missing and is never filled.
 * Source: out-of-office handbook 13.
 */
export function hourlyMeans(inOrder: readonly SeriesReading[], measure: Measure): Hour[] {
  const hours: number[] = [];
  const values: number[] = [];
  for (let k = 0; k < inOrder.length; k++) {
    const reading = inOrder[k] as SeriesReading;
    const value = reading[measure];
    if (value === null) continue;
    hours.push(Math.floor(reading.minuteOfDay / 60));
    values.push(value);
  }
  return meansByHour(hours, values);
}

/** The same of values with the hour of the clock of each. */
function meansByHour(hours: readonly number[], values: readonly number[]): Hour[] {
  const found = [...FOUND.subarray(0, gather(hours, values))];
  SQUARES.fill(0);
  for (let k = 0; k < hours.length; k++) {
    const hour = hours[k] as number;
    SQUARES[hour] = (SQUARES[hour] as number) + ((values[k] as number) - meanOf(hour)) ** 2;
  }
  return found.map((hour) => {
    const count = COUNTS[hour] as number;
    const sd = count < F.hourlySdReadings.value ? null : Math.sqrt((SQUARES[hour] as number) / (count - 1));
    return { hour, n: count, mean: meanOf(hour), sd };
  });
}

/** The mean of the means by the clock's hour, however many readings each has; null of nothing. Source: as above. */
export function meanOfHours(hours: readonly number[], values: readonly number[]): number | null {
  const means = new Array<number>(gather(hours, values));
  for (let k = 0; k < means.length; k++) means[k] = meanOf(FOUND[k] as number);
  return mean(means);
}

/** The hours found, and by hour; written anew by each call, and here so that none has to make them. */
const FOUND = new Uint8Array(DAY_HOURS);
const COUNTS = new Float64Array(DAY_HOURS);
const SUMS = new Float64Array(DAY_HOURS);
const FIRSTS = new Float64Array(DAY_HOURS);
const RESTS = new Float64Array(DAY_HOURS);
const SQUARES = new Float64Array(DAY_HOURS);

/** Fills what `meanOf` asks for, and the hours in the order in which they first come; how many there are. */
function gather(hours: readonly number[], values: readonly number[]): number {
  let found = 0;
  for (const one of [COUNTS, SUMS, RESTS]) one.fill(0);
  for (let k = 0; k < hours.length; k++) {
    const hour = hours[k] as number;
    if (COUNTS[hour] === 0) FOUND[found++] = hour;
    COUNTS[hour] = (COUNTS[hour] as number) + 1;
    SUMS[hour] = (SUMS[hour] as number) + (values[k] as number);
  }
  // As `mean` goes over a list: the second pass takes off what rounding left in the first sum.
  for (let k = 0; k < found; k++) {
    const hour = FOUND[k] as number;
    FIRSTS[hour] = (SUMS[hour] as number) / (COUNTS[hour] as number);
  }
  for (let k = 0; k < hours.length; k++) {
    const hour = hours[k] as number;
    RESTS[hour] = (RESTS[hour] as number) + ((values[k] as number) - (FIRSTS[hour] as number));
  }
  return found;
}

function meanOf(hour: number): number {
  return (FIRSTS[hour] as number) + (RESTS[hour] as number) / (COUNTS[hour] as number);
}
