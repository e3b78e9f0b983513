import { lowest } from '../statistics/lowest.js';
import { mean } from '../statistics/mean.js';
import { straightLine } from '../statistics/straightLine.js';
import { HOUR_MS, MINUTE_MS } from './clock.js';
import { OUT_OF_OFFICE_FIGURES as F } from './figures.js';
import type { SeriesReading } from './seriesReading.js';

/** The seven definitions, in the order of the handbook. */
export const SURGES = [
  'sleepTrough',
  'preWaking',
  'rising',
  'movingTrough',
  'fourReadings',
  'ratePerHour',
  'eveningFall',
] as const;
/** How little one rise says: its SD from one recording to the next, and how far definitions of it lie apart; mmHg. */
export const SURGE_CAUTION = { sd: F.surgeRepeatSd.value, apart: F.surgeMethodsApart.value } as const;

export type SurgeDefinition = (typeof SURGES)[number];

/**
 * Rises around waking, in mmHg and one in mmHg/h; each later minus earlier, so that a rise is positive, and the fall of the
 * evening earlier minus later. Null where there are not enough readings for it. `troughAtEdge` says that the lowest reading is
 * the first or last of the sleep, so that two make its mean.
 */
export type Surge = {
  /** Two hours after waking minus the three readings about the lowest of the sleep (Kario 2003). */
  readonly sleepTrough: number | null;
  /** Two hours after waking minus the two hours before (Sheppard 2015). */
  readonly preWaking: number | null;
  /** Two hours before bed minus the trough. */
  readonly eveningFall: number | null;
  readonly troughAtEdge: boolean;
  /** The first reading up minus the last one lying, both within half an hour of waking. */
  readonly rising: number | null;
  /** Two hours after waking minus the hour of the sleep with the lowest mean: one that begins with a reading and is slept whole. */
  readonly movingTrough: number | null;
  /** The first four readings after waking, all within four hours of it, minus the three lowest asleep, wherever they lie (Almas 2016). */
  readonly fourReadings: number | null;
  /** Slope of the readings from the lowest of the sleep to two hours after waking on their times, mmHg/h (Cheng 2017). */
  readonly ratePerHour: number | null;
};

/**
 * Surges of systolic pressure about the main sleep, of readings in order of time. `bedMs` and `wakeMs` are instants from the
 * person's own diary: by the clock alone nothing of this is computed. Source: out-of-office handbook 10.
 */
export function morningSurge(inOrder: readonly SeriesReading[], bedMs: number, wakeMs: number): Surge {
  const times: number[] = [];
  const values: number[] = [];
  for (let k = 0; k < inOrder.length; k++) {
    const { atMs, systolic } = inOrder[k] as SeriesReading;
    if (systolic === null) continue;
    times.push(atMs);
    values.push(systolic);
  }
  const beside = F.surgeHours.value * HOUR_MS;
  const beforeBed = firstFrom(times, bedMs - beside, 0);
  const bed = firstFrom(times, bedMs, beforeBed);
  const beforeWaking = firstFrom(times, wakeMs - beside, 0);
  const wake = firstFrom(times, wakeMs, beforeWaking);
  const morning = firstFrom(times, wakeMs + beside, wake);
  const after = mean(values, wake, morning);
  const trough = troughOf(values, bed, wake);
  return {
    sleepTrough: minus(after, trough.mmHg),
    preWaking: minus(after, mean(values, beforeWaking, wake)),
    eveningFall: minus(mean(values, beforeBed, bed), trough.mmHg),
    troughAtEdge: trough.atEdge,
    rising: risingOf(times, values, wake, wakeMs),
    movingTrough: minus(after, lowestHour(times, values, bed, wakeMs)),
    fourReadings: minus(firstUp(times, values, wake, wakeMs), lowestAsleep(values, bed, wake)),
    ratePerHour:
      after === null || trough.place === null ? null : rateOf(times, values, trough.place, morning),
  };
}

const minus = (a: number | null, b: number | null) => (a === null || b === null ? null : a - b);

/** The place of the first time at or after an instant, from a place on; behind the last where there is none. */
function firstFrom(times: readonly number[], ms: number, from: number): number {
  let place = from;
  while (place < times.length && (times[place] as number) < ms) place++;
  return place;
}

/** The mean of the lowest value asleep and its neighbours; of the first where several are lowest; null of one alone. */
function troughOf(values: readonly number[], bed: number, wake: number) {
  if (wake <= bed) return { mmHg: null, atEdge: false, place: null };
  let place = bed;
  for (let k = bed + 1; k < wake; k++) if ((values[k] as number) < (values[place] as number)) place = k;
  if (wake - bed < F.surgeTroughReadings.value) return { mmHg: null, atEdge: false, place };
  const mmHg = mean(values, Math.max(bed, place - 1), Math.min(wake, place + 2));
  return { mmHg, atEdge: place === bed || place === wake - 1, place };
}

function risingOf(
  times: readonly number[],
  values: readonly number[],
  wake: number,
  wakeMs: number,
): number | null {
  const within = F.risingLyingMinutes.value * MINUTE_MS;
  const [lying, up] = [times[wake - 1], times[wake]];
  if (lying === undefined || up === undefined) return null;
  if (wakeMs - lying > within || up - wakeMs > within) return null;
  return (values[wake] as number) - (values[wake - 1] as number);
}

/** The lowest mean over an hour of sleep; an end is not of it. */
function lowestHour(
  times: readonly number[],
  values: readonly number[],
  bed: number,
  wakeMs: number,
): number | null {
  const hourMs = F.movingTroughHours.value * HOUR_MS;
  let lowest: number | null = null;
  for (let from = bed, to = bed; from < times.length; from++) {
    const untilMs = (times[from] as number) + hourMs;
    if (untilMs > wakeMs) break;
    to = firstFrom(times, untilMs, to);
    if (to - from < F.movingTroughReadings.value) continue;
    const found = mean(values, from, to) as number;
    if (lowest === null || found < lowest) lowest = found;
  }
  return lowest;
}

/** The mean of the first readings after waking; null where there are too few of the morning. */
function firstUp(
  times: readonly number[],
  values: readonly number[],
  wake: number,
  wakeMs: number,
): number | null {
  const end = wake + F.surgeReadingsAfterWaking.value;
  const last = times[end - 1];
  if (last === undefined || last - wakeMs > F.surgeReadingsWithin.value * HOUR_MS) return null;
  return mean(values, wake, end);
}

/** The mean of the lowest readings asleep, wherever they lie; null where there are too few. */
function lowestAsleep(values: readonly number[], bed: number, wake: number): number | null {
  const n = F.surgeLowestAsleep.value;
  return wake - bed < n ? null : mean(lowest(values, bed, wake, n));
}

/** The slope of the values from one place up to another. */
function rateOf(
  times: readonly number[],
  values: readonly number[],
  from: number,
  to: number,
): number | null {
  if (to - from < F.surgeRateReadings.value) return null;
  const hours = times.slice(from, to).map((ms) => (ms - (times[from] as number)) / HOUR_MS);
  return straightLine(hours, values.slice(from, to))?.slope ?? null;
}
