import { passes, settled } from '../contract/threshold.js';
import type { RunReasonCode } from './codes.js';
import { DEFLATION_COMPARISONS as SIDE } from './comparisons.js';
import { DEFLATION_FIGURES as F } from './figures.js';
import { isReinflated } from './pressures.js';
import type { Moment, Run } from './run.js';

/** How fast the cuff was let down, positive downwards. Null with the reason in `why`. */
export type Rates = {
  /** First to last moment; by palpation peak to the only one. mmHg/s. */
  readonly deflationRateMmHgPerSecond: number | null;
  /** Peak to first moment. mmHg/s. */
  readonly earlyDeflationRateMmHgPerSecond: number | null;
  /** In one beat at the mean rate. */
  readonly dropPerBeatMmHg: number | null;
  readonly why: readonly RunReasonCode[];
};

/** A gauge value with its time, if known. */
export type Timed = { readonly mmHg: number; readonly atSeconds: number | null };

/**
 * The rates of a run. Between two moments there must be a second or more; a cuff pumped up again has none.
 * Source: docs/conventions.md section 6.
 */
export function ratesOf(run: Run): Rates {
  if (run.method === 'device') return noRates('read-from-display');
  if (isReinflated(run)) return noRates('re-inflated');
  const first = run.moments[0] as Moment;
  const last = run.moments.at(-1) as Moment;
  const early = rateBetween(run.peak, first);
  const mean = run.method === 'palpation' ? early : rateBetween(first, last);
  const why = [early, mean].filter((rate) => typeof rate === 'string');
  if (run.pulsePerMinute === null) why.push('no-pulse');
  const meanRate = typeof mean === 'number' ? mean : null;
  return {
    deflationRateMmHgPerSecond: meanRate,
    earlyDeflationRateMmHgPerSecond: typeof early === 'number' ? early : null,
    dropPerBeatMmHg: perBeat(meanRate, run.pulsePerMinute),
    why: [...new Set(why)],
  };
}

function noRates(why: RunReasonCode): Rates {
  return {
    deflationRateMmHgPerSecond: null,
    earlyDeflationRateMmHgPerSecond: null,
    dropPerBeatMmHg: null,
    why: [why],
  };
}

function rateBetween(from: Timed | null, to: Timed): number | RunReasonCode {
  if (from === null) return 'no-peak';
  const seconds = secondsBetween(from, to);
  if (seconds === null) return 'not-timed';
  if (passes(settled(seconds), SIDE.shortestSeconds, F.shortestSeconds.value)) return 'moments-too-close';
  return (from.mmHg - to.mmHg) / seconds;
}

/** Null if either was not timed. */
export function secondsBetween(from: Timed | null, to: Timed): number | null {
  if (from === null || from.atSeconds === null || to.atSeconds === null) return null;
  return to.atSeconds - from.atSeconds;
}

/** The fall in one beat, in mmHg, of a rate in mmHg/s at a pulse per minute. */
export function perBeat(rate: number | null, pulsePerMinute: number | null): number | null {
  return rate === null || pulsePerMinute === null ? null : (rate * 60) / pulsePerMinute;
}
