import { mean } from '../statistics/mean.js';
import { straightLine } from '../statistics/straightLine.js';
import { HOUR_MS, MINUTE_MS } from './clock.js';
import { OUT_OF_OFFICE_FIGURES as F } from './figures.js';
import { inTimeOrder, type SeriesReading } from './seriesReading.js';

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
  /** The first four readings after waking minus the three lowest asleep, wherever they lie (Almas 2016). */
  readonly fourReadings: number | null;
  /** Slope of the readings from the lowest of the sleep to two hours after waking on their times, mmHg/h (Cheng 2017). */
  readonly ratePerHour: number | null;
};

/**
 * Surges of systolic pressure about the main sleep. `bedMs` and `wakeMs` are instants from the person's own diary: by the clock alone
 * nothing of this is computed. Source: out-of-office handbook 10.
 */
export function morningSurge(readings: readonly SeriesReading[], bedMs: number, wakeMs: number): Surge {
  const [times, values]: [number[], number[]] = [[], []];
  for (const { atMs, systolic } of inTimeOrder(readings)) {
    if (systolic === null) continue;
    times.push(atMs);
    values.push(systolic);
  }
  const placeOf = (ms: number) => firstFrom(times, ms);
  const between = (fromMs: number, untilMs: number) => values.slice(placeOf(fromMs), placeOf(untilMs));
  const beside = F.surgeHours.value * HOUR_MS;
  const [bed, wake, morning] = [placeOf(bedMs), placeOf(wakeMs), placeOf(wakeMs + beside)];
  const asleep = values.slice(bed, wake);
  const after = mean(values.slice(wake, morning));
  const trough = troughOf(asleep);
  return {
    sleepTrough: minus(after, trough.mmHg),
    preWaking: minus(after, mean(between(wakeMs - beside, wakeMs))),
    eveningFall: minus(mean(between(bedMs - beside, bedMs)), trough.mmHg),
    troughAtEdge: trough.atEdge,
    rising: risingOf(times, values, wake, wakeMs),
    movingTrough: minus(after, lowestHour(times.slice(bed, wake), asleep, wakeMs)),
    fourReadings: minus(
      meanOfAll(
        values.slice(wake, wake + F.surgeReadingsAfterWaking.value),
        F.surgeReadingsAfterWaking.value,
      ),
      meanOfAll(
        asleep.toSorted((a, b) => a - b).slice(0, F.surgeLowestAsleep.value),
        F.surgeLowestAsleep.value,
      ),
    ),
    ratePerHour:
      after === null || trough.place === null ? null : rateOf(times, values, bed + trough.place, morning),
  };
}

const minus = (a: number | null, b: number | null) => (a === null || b === null ? null : a - b);

/** The place of the first time at or after an instant; behind the last where there is none. */
function firstFrom(times: readonly number[], ms: number): number {
  let place = 0;
  while (place < times.length && (times[place] as number) < ms) place++;
  return place;
}

/** The mean where there are as many as are asked for. */
function meanOfAll(values: readonly number[], least: number): number | null {
  return values.length < least ? null : mean(values);
}

/** The mean of the lowest value and its neighbours; of the first where several are lowest. */
function troughOf(asleep: readonly number[]): { mmHg: number | null; atEdge: boolean; place: number | null } {
  if (asleep.length === 0) return { mmHg: null, atEdge: false, place: null };
  const place = asleep.indexOf(asleep.reduce((a, b) => Math.min(a, b)));
  const around = asleep.slice(Math.max(0, place - 1), place + 2);
  return { mmHg: mean(around), atEdge: place === 0 || place === asleep.length - 1, place };
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
function lowestHour(times: readonly number[], asleep: readonly number[], wakeMs: number): number | null {
  const hourMs = F.movingTroughHours.value * HOUR_MS;
  let lowest: number | null = null;
  for (let from = 0, to = 0; from < times.length; from++) {
    const untilMs = (times[from] as number) + hourMs;
    if (untilMs > wakeMs) break;
    while (to < times.length && (times[to] as number) < untilMs) to++;
    const found = meanOfAll(asleep.slice(from, to), F.movingTroughReadings.value);
    if (found !== null && (lowest === null || found < lowest)) lowest = found;
  }
  return lowest;
}

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
