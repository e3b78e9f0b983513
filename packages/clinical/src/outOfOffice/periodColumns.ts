import type { ForEachMeasure } from './byMeasure.js';
import { HOUR_MS } from './clock.js';
import type { PeriodOf } from './periods.js';
import type { SeriesReading } from './seriesReading.js';
import type { TimedRuns } from './timedValue.js';

/** What is known of each measure, in order of time: over the whole recording, by day and by night. */
export type PeriodColumns = {
  /** One run; `clockHours` is the hour of the clock of each value, 0 to 23. */
  readonly whole: ForEachMeasure<TimedRuns & { readonly clockHours: readonly number[] }>;
  /** A run for each stretch of the period; what lies between two is not bridged. */
  readonly day: ForEachMeasure<TimedRuns>;
  readonly night: ForEachMeasure<TimedRuns>;
};

/**
 * Readings turned into columns of numbers, once, so that every statistic goes through plain lists. A reading without a
 * measure is left out of its columns and ends no run; one of neither period ends the run before it. Measures that no
 * reading lacks stand at the same times, and share the lists of these.
 *
 * @param kept in order of time; hours count from the first
 * @param periods the period of each
 */
export function periodColumns(kept: readonly SeriesReading[], periods: readonly PeriodOf[]): PeriodColumns {
  const n = kept.length;
  const systolics = new Array<number | null>(n);
  const diastolics = new Array<number | null>(n);
  const pulses = new Array<number | null>(n);
  for (let k = 0; k < n; k++) {
    const { systolic, diastolic, pulse } = kept[k] as SeriesReading;
    systolics[k] = systolic;
    diastolics[k] = diastolic;
    pulses[k] = pulse;
  }
  const all = timesOf(kept, periods, null);
  const columnsOf = (values: (number | null)[]) =>
    isKnown(values)
      ? columnsAt(all, values)
      : columnsAt(timesOf(kept, periods, values), values.filter((one) => one !== null)); // biome-ignore format: one thought
  const systolic = columnsOf(systolics);
  const diastolic = columnsOf(diastolics);
  const pulse = columnsOf(pulses);
  return {
    whole: { systolic: systolic.whole, diastolic: diastolic.whole, pulse: pulse.whole },
    day: { systolic: systolic.day, diastolic: diastolic.day, pulse: pulse.day },
    night: { systolic: systolic.night, diastolic: diastolic.night, pulse: pulse.night },
  };
}

function isKnown(values: readonly (number | null)[]): values is readonly number[] {
  return !values.includes(null);
}

/** When values stand, over the whole and in each period: there with the places that they have in the whole. */
type Times = {
  readonly hours: readonly number[];
  readonly clockHours: readonly number[];
  readonly day: PeriodTimes;
  readonly night: PeriodTimes;
};
type PeriodTimes = {
  readonly hours: number[];
  readonly starts: number[];
  readonly places: number[];
};

/** The times of all readings, or of those that have a value. */
function timesOf(
  kept: readonly SeriesReading[],
  periods: readonly PeriodOf[],
  values: readonly (number | null)[] | null,
): Times {
  const hours: number[] = [];
  const clockHours: number[] = [];
  const day: PeriodTimes = { hours: [], starts: [], places: [] };
  const night: PeriodTimes = { hours: [], starts: [], places: [] };
  const startMs = kept[0]?.atMs ?? 0;
  let isNewRun = true;
  for (let k = 0; k < kept.length; k++) {
    const period = periods[k] as PeriodOf;
    if (k > 0 && period !== periods[k - 1]) isNewRun = true;
    if (values !== null && values[k] === null) continue;
    const { atMs, minuteOfDay } = kept[k] as SeriesReading;
    const hour = (atMs - startMs) / HOUR_MS;
    if (period !== 'neither') {
      const own = period === 'day' ? day : night;
      if (isNewRun) own.starts.push(own.hours.length);
      own.places.push(hours.length);
      own.hours.push(hour);
      isNewRun = false;
    }
    hours.push(hour);
    clockHours.push(Math.floor(minuteOfDay / 60));
  }
  return { hours, clockHours, day, night };
}

/** One measure, a value for each of its times. */
function columnsAt({ hours, clockHours, day, night }: Times, values: readonly number[]) {
  return {
    whole: { hours, clockHours, values, starts: [0] },
    day: { hours: day.hours, values: valuesAt(values, day.places), starts: day.starts },
    night: { hours: night.hours, values: valuesAt(values, night.places), starts: night.starts },
  };
}

function valuesAt(values: readonly number[], places: readonly number[]): number[] {
  const found = new Array<number>(places.length);
  for (let k = 0; k < places.length; k++) found[k] = values[places[k] as number] as number;
  return found;
}
