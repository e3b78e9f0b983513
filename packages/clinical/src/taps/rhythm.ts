import type { Flag } from '../contract/flag.js';
import { passes, settled } from '../contract/threshold.js';
import type { CountOf } from '../count/count.js';
import { autocovariances } from '../statistics/autocovariances.js';
import { known, type Series } from '../statistics/series.js';
import type { BeatSeries } from './beatSeries.js';
import { TAP_COMPARISONS as SIDE } from './comparisons.js';
import { withoutEarlyBeats } from './earlyBeats.js';
import { TAP_FIGURES as FIGURE } from './figures.js';
import { type IntervalStatistics, nrmssdOf } from './intervalStatistics.js';
import { localRatios, robustSpread } from './localInterval.js';
import { manyMissed } from './missed.js';

/** What the taps feel like, in words of the trade; never the name of an arrhythmia. */
export type Rhythm =
  | 'regular'
  | 'regular-with-breathing'
  | 'occasionally-irregular'
  | 'regularly-irregular'
  | 'irregularly-irregular'
  | 'undecided';

export type NamedRhythm = {
  readonly rhythm: Rhythm;
  readonly why: readonly Flag<'too-few-for-rhythm' | 'many-missed' | 'rhythm-not-clear'>[];
};

/** What a rhythm is told from; `intervals` in ms, null where taps were missed. */
export type RhythmEvidence = {
  readonly of: CountOf;
  readonly intervals: Series;
  readonly statistics: IntervalStatistics;
  readonly beats: BeatSeries | null;
};

/**
 * Names the rhythm of the taps, or says why not. In this order, with the limits of figures.ts:
 *
 * - many intervals with missed taps: undecided, since beats may be dropping out of the pulse;
 * - successive differences over the irregular limit, and a cycle of 2 to 4 intervals that repeats: regularly irregular;
 * - a few early beats, the rest steady: occasionally irregular;
 * - over the irregular limit, no pattern, turning points as in a random series: irregularly irregular;
 * - a wave that stands out, at the pace of breathing, and is most of what varies beyond the regular limit: regular
 *   with breathing;
 * - differences and spread both under the regular limit: regular; anything else, or between the limits: undecided.
 *
 * The irregular limit rises with the tapper's floor, what a perfectly steady pulse would show at this rate. The regular
 * one does not: a jitter that is only assumed must not make an uneven pulse regular. Under 30 whole
 * intervals only `regular` or `undecided`, as for breaths at any number: their statistics have no published limits.
 * Source: docs/conventions.md section 5; bedside handbook 1.8, 1.12.
 */
export function rhythm(evidence: RhythmEvidence): NamedRhythm {
  const { of, intervals, statistics } = evidence;
  const missed = manyMissed(intervals);
  if (missed !== null) return { rhythm: 'undecided', why: [missed] };
  const whole = known(intervals).length;
  const { nrmssd, cv, meanIntervalMs } = statistics;
  const needs = FIGURE.intervalsForRhythm.value;
  const tooFew = undecided('too-few-for-rhythm', { intervals: whole, needs });
  if (nrmssd === null || cv === null || meanIntervalMs === null) return tooFew;
  if (passes(whole, SIDE.intervalsForRegular, FIGURE.intervalsForRegular.value)) return tooFew;
  const isShort = passes(whole, SIDE.intervalsForRhythm, needs);
  const limits = of === 'breaths' ? BREATHS_LIMITS : pulseLimits(meanIntervalMs);
  if (of === 'pulse' && !isShort) {
    const found = pattern(evidence, nrmssd, limits);
    if (found !== null) return { rhythm: found, why: [] };
  }
  if (isSteady(statistics, limits)) return { rhythm: 'regular', why: [] };
  return isShort ? tooFew : undecided('rhythm-not-clear', { nrmssd, cv, ...limits });
}

type Limits = { readonly regularUpTo: number; readonly irregularOver: number };

const BREATHS_LIMITS: Limits = {
  regularUpTo: FIGURE.breathsRegularUnder.value,
  irregularOver: FIGURE.breathsRegularUnder.value,
};

/** The tapper's floor is the RMSSD of a steady pulse, jitter x root 6, as a share of the mean interval. */
function pulseLimits(meanIntervalMs: number): Limits {
  const floor = (FIGURE.assumedJitterMs.value * Math.sqrt(6)) / meanIntervalMs;
  return {
    regularUpTo: FIGURE.regularUnder.value,
    irregularOver: Math.max(FIGURE.irregularOver.value, FIGURE.irwideFloors.value * floor),
  };
}

/** A rhythm that needs 30 intervals; null if it is regular, or unclear. */
function pattern(evidence: RhythmEvidence, nrmssd: number, limits: Limits): Rhythm | null {
  const { intervals, statistics, beats } = evidence;
  const isOver = (share: number) => passes(settled(share), SIDE.irregularOver, limits.irregularOver);
  const isIrregular = isOver(nrmssd);
  // Without irregularity there is nothing to find a pattern in.
  const correlations = isIrregular ? correlationsOf(intervals) : [];
  if (repeats(correlations)) return 'regularly-irregular';
  const meanIntervalMs = statistics.meanIntervalMs as number;
  const ratios = localRatios(known(intervals));
  const spread = robustSpread(ratios) ?? 0;
  const jitterSpread = (Math.SQRT2 * FIGURE.assumedJitterMs.value) / meanIntervalMs;
  const rest = withoutEarlyBeats(intervals, ratios, Math.max(spread, jitterSpread));
  if (rest !== null && !isOver(nrmssdOf(rest, meanIntervalMs) ?? 1)) {
    return 'occasionally-irregular';
  }
  const wave = beats?.wave ?? null;
  if (isIrregular) {
    // A few intervals far out make the differences large too; without a pattern most intervals are out.
    const isWide = spread > Math.max(FIGURE.steadySpread.value, FIGURE.wideFloors.value * jitterSpread);
    const isRandom = wave === null && !hasPattern(correlations) && turnsAtRandom(statistics, intervals);
    return isWide && isRandom ? 'irregularly-irregular' : null;
  }
  return beats !== null && breathes(beats, isSteady(statistics, limits)) ? 'regular-with-breathing' : null;
}

/** Whether differences and spread are both small enough for a regular pulse. */
function isSteady({ nrmssd, cv }: IntervalStatistics, { regularUpTo }: Limits): boolean {
  if (nrmssd === null || cv === null) return false;
  return [nrmssd, cv].every((share) => passes(settled(share), SIDE.regularUnder, regularUpTo));
}

/**
 * Whether the wave that stands out is strong enough to be named. In intervals that are not steady it must be most of
 * their variation: chance makes a smaller one in a fast pulse without any pattern.
 */
function breathes({ n, wave, power }: BeatSeries, steady: boolean): boolean {
  if (wave === null || power === 0) return false;
  const share = settled(wave.power / power);
  if (!passes(settled(share * n), SIDE.waveNamed, FIGURE.waveNamed.value)) return false;
  if (!steady && !passes(share, SIDE.waveMostly, FIGURE.waveMostly.value)) return false;
  return passes(settled(Math.sqrt((2 * wave.power) / n)), SIDE.waveSmallest, FIGURE.waveSmallest.value);
}

/** Correlation of intervals 1, 2, 3 and 4 places apart, from place 1; 0 where all are alike. */
function correlationsOf(intervals: Series): number[] {
  const [variance, ...further] = autocovariances(intervals, FIGURE.longestCycle.value);
  return further.map((covariance) => (variance ? settled((covariance ?? 0) / variance) : 0));
}

function repeats([neighbours = 0, ...further]: readonly number[]): boolean {
  if (!passes(neighbours, SIDE.cycleNeighbours, FIGURE.cycleNeighbours.value)) return false;
  return further.some((correlation) =>
    passes(correlation, SIDE.cycleCorrelation, FIGURE.cycleCorrelation.value),
  );
}

function hasPattern(correlations: readonly number[]): boolean {
  return correlations.some((correlation) =>
    passes(Math.abs(correlation), SIDE.patternCorrelation, FIGURE.patternCorrelation.value),
  );
}

/** Whether the turning points are as many as in a random series, mean 2/3, variance of the count (16 m - 29) / 90. */
function turnsAtRandom({ turningPointRatio }: IntervalStatistics, intervals: Series): boolean {
  const count = known(intervals).length;
  const spread = Math.sqrt((16 * count - 29) / 90) / (count - 2);
  return (
    turningPointRatio !== null &&
    passes(
      settled(Math.abs(turningPointRatio - 2 / 3) / spread),
      SIDE.turningSpreads,
      FIGURE.turningSpreads.value,
    )
  );
}

function undecided(code: NamedRhythm['why'][number]['code'], figures: Record<string, number>): NamedRhythm {
  return { rhythm: 'undecided', why: [{ code, figures }] };
}
