import type { Flag } from '../contract/flag.js';
import { passes, settled } from '../contract/threshold.js';
import { COUNT_COMPARISONS as COUNT_SIDE } from '../count/comparisons.js';
import { COUNT_FIGURES } from '../count/figures.js';
import { known, type Series } from '../statistics/series.js';
import { beatSeries } from './beatSeries.js';
import type { TapFlagCode, TapReasonCode } from './codes.js';
import { TAP_COMPARISONS as SIDE } from './comparisons.js';
import { TAP_FIGURES } from './figures.js';
import {
  beatsOf,
  type IntervalStatistics,
  intervalStatistics,
  wholeIntervalsMs,
} from './intervalStatistics.js';
import { manyMissed } from './missed.js';
import { rateInterval } from './rateInterval.js';
import { type Repair, type RepairedTaps, repairTaps, unrepairedTaps } from './repair.js';
import { type NamedRhythm, type Rhythm, rhythm } from './rhythm.js';
import { type TapJitter, tapJitter } from './tapJitter.js';
import { tappingPause } from './tappingPause.js';
import type { Taps } from './taps.js';

/**
 * A rate and what the taps say about how far to trust it. `beats` counts taps after repair, missed ones included;
 * `perMinute` is 60 (beats - 1) / (last - first). `lowPerMinute` and `highPerMinute` are a 95 % interval of the
 * long-run rate. Null is "not defined"; the reason stands in `why`.
 * Source: docs/conventions.md section 5; bedside handbook 1.12.
 */
export type TapResult = IntervalStatistics & {
  readonly perMinute: number | null;
  readonly lowPerMinute: number | null;
  readonly highPerMinute: number | null;
  readonly beats: number;
  readonly repairs: readonly Repair[];
  readonly tapJitterMs: number | null;
  readonly rhythm: Rhythm;
  readonly flags: readonly Flag<TapFlagCode>[];
  readonly why: readonly Flag<TapReasonCode>[];
};

export type TapOptions = {
  /** Whether missed and doubled taps are repaired; otherwise the taps stand as read. */
  readonly repair: boolean;
};

/**
 * What taps say. One tap is no error: everything but `beats` is null and `why` says `too-few`; so it is after a pause of
 * the tapping, of which `why` says `tapping-paused`.
 */
export function tapResult(taps: Taps, { repair }: TapOptions): TapResult {
  const repaired = repair ? repairTaps(taps) : unrepairedTaps(taps);
  const intervals = wholeIntervalsMs(repaired);
  const statistics = intervalStatistics(repaired, intervals);
  const { meanIntervalMs } = statistics;
  if (meanIntervalMs === null) {
    const taps = beatsOf(repaired);
    return nothingFrom(repaired, statistics, { code: 'too-few', figures: { taps, needs: 2 } });
  }
  const paused = tappingPause(repaired);
  if (paused !== null) {
    const figures = { ...paused };
    return nothingFrom(repaired, NO_STATISTICS, { code: 'tapping-paused', figures });
  }
  const perMinute = (60 * (beatsOf(repaired) - 1)) / spanSeconds(repaired);
  const beats = beatSeries(repaired, meanIntervalMs);
  const range = rateInterval(repaired, meanIntervalMs, beats);
  const jitter = tapJitter(intervals);
  const evidence = { of: taps.of, intervals, statistics, beats };
  const named = neverRegularUnrepaired(rhythm(evidence), repaired, statistics);
  const irregular = IRREGULAR.includes(named.rhythm);
  const missed = manyMissed(intervals);
  return {
    perMinute,
    lowPerMinute: range.lowPerMinute,
    highPerMinute: range.highPerMinute,
    beats: beatsOf(repaired),
    repairs: repaired.repairs,
    ...statistics,
    tapJitterMs: irregular ? null : jitter.tapJitterMs,
    rhythm: named.rhythm,
    flags: [
      ...repaired.flags,
      ...putInFlags(repaired),
      ...(missed === null ? [] : [missed]),
      ...(irregular ? [{ code: 'rhythm-irregular' as const, figures: {} }] : []),
      ...rateFlags(perMinute),
    ],
    why: [
      ...statisticsWhy(statistics, intervals),
      ...range.why,
      ...(irregular ? jitterOfNobody(jitter) : jitter.why),
      ...named.why,
    ],
  };
}

/** The words after which a full minute is asked for. */
export const IRREGULAR: readonly Rhythm[] = [
  'occasionally-irregular',
  'regularly-irregular',
  'irregularly-irregular',
];

/**
 * Taps that vary too much to be repaired are not called regular in the same breath; nor are a few intervals between which
 * a beat was put in: in so few a beat that drops out now and then looks like one slip.
 */
function neverRegularUnrepaired(
  named: NamedRhythm,
  repaired: RepairedTaps,
  { nrmssd, cv }: IntervalStatistics,
): NamedRhythm {
  const needs = TAP_FIGURES.intervalsForPutIn.value;
  const intervals = repaired.beatsToNext.length;
  const isPutIn = repaired.repairs.some(({ added }) => added > 0);
  if (named.rhythm === 'regular' && isPutIn && passes(intervals, SIDE.intervalsForPutIn, needs)) {
    return { rhythm: 'undecided', why: [{ code: 'too-few-for-rhythm', figures: { intervals, needs } }] };
  }
  const has = (code: TapFlagCode) => repaired.flags.some((flag) => flag.code === code);
  const isUneven = has('irregular-not-repaired') || has('steady-not-sure') || has('missed-in-turn');
  const isRegular = named.rhythm === 'regular' && isUneven;
  const isBreathing = named.rhythm === 'regular-with-breathing' && has('missed-in-turn');
  if (!(isRegular || isBreathing) || nrmssd === null || cv === null) return named;
  return { rhythm: 'undecided', why: [{ code: 'rhythm-not-clear', figures: { nrmssd, cv } }] };
}

/** In an irregular rhythm the timing model does not hold: the jitter would be the person's, not the tapper's. */
function jitterOfNobody({ tapJitterMs, why }: TapJitter): readonly Flag<TapReasonCode>[] {
  return tapJitterMs === null ? why : [{ code: 'jitter-cannot-be-told', figures: {} }];
}

/** Beats that nobody tapped are in the rate: how many, and what the rate is of those that were tapped. */
function putInFlags(repaired: RepairedTaps): Flag<TapFlagCode>[] {
  const added = repaired.repairs.reduce((sum, repair) => sum + repair.added, 0);
  if (added === 0) return [];
  const tappedPerMinute = (60 * (repaired.seconds.length - 1)) / spanSeconds(repaired);
  return [{ code: 'beats-put-in', figures: { added, tappedPerMinute } }];
}

/** Intervals over a pause say nothing of what was tapped. */
const NO_STATISTICS: IntervalStatistics = {
  meanIntervalMs: null,
  sdIntervalMs: null,
  cv: null,
  rmssdMs: null,
  nrmssd: null,
  turningPointRatio: null,
  shannonEntropy: null,
};

function nothingFrom(
  repaired: RepairedTaps,
  statistics: IntervalStatistics,
  why: Flag<TapReasonCode>,
): TapResult {
  const beats = beatsOf(repaired);
  return {
    perMinute: null,
    lowPerMinute: null,
    highPerMinute: null,
    beats,
    repairs: repaired.repairs,
    ...statistics,
    tapJitterMs: null,
    rhythm: 'undecided',
    flags: repaired.flags,
    why: [why],
  };
}

const FEWEST = TAP_FIGURES.intervalsForStatistics.value;

/** Spread and differences need two whole intervals in a row, turning points three. */
function statisticsWhy(statistics: IntervalStatistics, intervals: Series): Flag<TapReasonCode>[] {
  if (Object.values(statistics).every((value) => value !== null)) return [];
  return [{ code: 'too-few-for-statistics', figures: { intervals: known(intervals).length, needs: FEWEST } }];
}

/** After parsing only a repair can lift a rate over what anybody has; it is shown and flagged. */
function rateFlags(perMinute: number): Flag<TapFlagCode>[] {
  const ceilingPerMinute = COUNT_FIGURES.ceilingPerMinute.value;
  if (!passes(perMinute, COUNT_SIDE.ceilingPerMinute, ceilingPerMinute)) return [];
  return [{ code: 'rate-impossible', figures: { perMinute, ceilingPerMinute } }];
}

/** From the first to the last tap kept, without the noise of binary fractions; never 0, however short. */
function spanSeconds({ seconds }: RepairedTaps): number {
  const span = (seconds.at(-1) as number) - (seconds[0] as number);
  return settled(span) || span;
}
