import { type ForEachMeasure, forEachMeasure } from './byMeasure.js';
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
 * measure is left out of its columns and ends no run; one of neither period ends the run before it.
 *
 * @param kept in order of time; hours count from the first
 * @param periods the period of each
 */
export function periodColumns(kept: readonly SeriesReading[], periods: readonly PeriodOf[]): PeriodColumns {
  const columns = forEachMeasure(() => new Column());
  const { systolic, diastolic, pulse } = columns;
  const startMs = kept[0]?.atMs ?? 0;
  for (let k = 0; k < kept.length; k++) {
    const reading = kept[k] as SeriesReading;
    const period = periods[k] as PeriodOf;
    const hour = (reading.atMs - startMs) / HOUR_MS;
    const isNew = k === 0 || period !== periods[k - 1];
    const clockHour = Math.floor(reading.minuteOfDay / 60);
    if (isNew) for (const column of [systolic, diastolic, pulse]) column.isChanged = true;
    if (reading.systolic !== null) systolic.add(hour, clockHour, reading.systolic, period);
    if (reading.diastolic !== null) diastolic.add(hour, clockHour, reading.diastolic, period);
    if (reading.pulse !== null) pulse.add(hour, clockHour, reading.pulse, period);
  }
  return {
    whole: forEachMeasure((measure) => columns[measure].whole),
    day: forEachMeasure((measure) => columns[measure].day),
    night: forEachMeasure((measure) => columns[measure].night),
  };
}

type Filling = { hours: number[]; values: number[]; starts: number[] };

/** One measure while it is filled. */
class Column {
  readonly whole = { hours: [] as number[], clockHours: [] as number[], values: [] as number[], starts: [0] };
  readonly day: Filling = { hours: [], values: [], starts: [] };
  readonly night: Filling = { hours: [], values: [], starts: [] };
  /** Whether the period changed since a value of this measure was last added. */
  isChanged = true;

  add(hour: number, clockHour: number, value: number, period: PeriodOf): void {
    this.whole.hours.push(hour);
    this.whole.clockHours.push(clockHour);
    this.whole.values.push(value);
    if (period === 'neither') return;
    const { hours, values, starts } = period === 'day' ? this.day : this.night;
    if (this.isChanged) starts.push(values.length);
    hours.push(hour);
    values.push(value);
    this.isChanged = false;
  }
}
