import { rmssd } from '../statistics/rmssd.js';
import { sampleSd } from '../statistics/sampleSd.js';
import { known, type Series } from '../statistics/series.js';
import { shannonEntropy } from '../statistics/shannonEntropy.js';
import { turningPointRatio } from '../statistics/turningPointRatio.js';
import type { RepairedTaps } from './repair.js';

/**
 * What the intervals between taps say. Times in ms; `cv` and `nrmssd` are shares of the mean interval.
 *
 * Without repairs every statistic is the handbook's. An interval in which taps were missed holds several beats
 * at unknown places: it counts in the mean interval and in nothing else, and a difference or a turning point is
 * looked for only between neighbours that are both whole.
 * Source: bedside handbook 1.12.
 */
export type IntervalStatistics = {
  readonly meanIntervalMs: number | null;
  readonly sdIntervalMs: number | null;
  readonly cv: number | null;
  readonly rmssdMs: number | null;
  readonly nrmssd: number | null;
  readonly turningPointRatio: number | null;
  readonly shannonEntropy: number | null;
};

/** {@link IntervalStatistics} of taps; `intervals` are their {@link wholeIntervalsMs}. All null for one tap. */
export function intervalStatistics(taps: RepairedTaps, intervals: Series): IntervalStatistics {
  const meanIntervalMs = meanInterval(taps);
  const whole = known(intervals);
  const sdIntervalMs = sampleSd(whole);
  const rmssdMs = rmssd(intervals);
  return {
    meanIntervalMs,
    sdIntervalMs,
    cv: shareOf(sdIntervalMs, meanIntervalMs),
    rmssdMs,
    nrmssd: shareOf(rmssdMs, meanIntervalMs),
    turningPointRatio: turningPointRatio(intervals),
    shannonEntropy: shannonEntropy(whole),
  };
}

/** A nanosecond, in ms: finer differences are the last binary digits of a time, not a difference of beats. */
const FINEST_MS = 1e-6;

/**
 * The intervals in ms, null for one in which taps were missed. They are freed of what subtracting leaves of the
 * times' last binary digits, so that equal intervals are equal wherever the clock's zero lies.
 */
export function wholeIntervalsMs({ seconds, beatsToNext }: RepairedTaps): Series {
  const furthest = Math.max(Math.abs(seconds[0] ?? 0), Math.abs(seconds.at(-1) ?? 0));
  const digits = Math.max(
    FINEST_MS,
    10 ** Math.ceil(Math.log10(furthest * 4000 * Number.EPSILON || FINEST_MS)),
  );
  const perMs = Math.round(1 / digits);
  return beatsToNext.map((beats, i) => {
    if (beats > 1) return null;
    const interval = ((seconds[i + 1] as number) - (seconds[i] as number)) * 1000;
    return perMs > 0 ? Math.round(interval * perMs) / perMs : interval;
  });
}

/** Beats after repair: taps kept, and the missed ones. */
export function beatsOf({ beatsToNext }: RepairedTaps): number {
  let beats = 1;
  for (const toNext of beatsToNext) beats += toNext;
  return beats;
}

/** RMSSD as a share of the mean interval. */
export function nrmssdOf(intervals: Series, meanIntervalMs: number): number | null {
  return shareOf(rmssd(intervals), meanIntervalMs);
}

function meanInterval(taps: RepairedTaps): number | null {
  const intervals = beatsOf(taps) - 1;
  if (intervals === 0) return null;
  return (((taps.seconds.at(-1) as number) - (taps.seconds[0] as number)) * 1000) / intervals;
}

function shareOf(part: number | null, whole: number | null): number | null {
  return part === null || whole === null ? null : part / whole;
}
