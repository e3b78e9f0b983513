import type { Flag } from '../contract/flag.js';
import { COUNT_FIGURES } from '../count/figures.js';
import {
  beatsOf,
  type IntervalStatistics,
  intervalStatistics,
  wholeIntervalsMs,
} from './intervalStatistics.js';
import { rateInterval } from './rateInterval.js';
import { type Repair, repairTaps, unrepairedTaps } from './repair.js';
import { type Rhythm, rhythm } from './rhythm.js';
import { tapJitter } from './tapJitter.js';
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
  readonly flags: readonly Flag[];
  readonly why: readonly Flag[];
};

export type TapOptions = {
  /** Whether missed and doubled taps are repaired; otherwise the taps stand as read. */
  readonly repair: boolean;
  /** The tapper's own jitter, calibrated on a steady beat; absent if not known. */
  readonly tapperJitterMs?: number;
};

/** What taps say. One tap is no error: everything but `beats` is null and `why` says `too-few`. */
export function tapResult(taps: Taps, { repair, tapperJitterMs }: TapOptions): TapResult {
  const repaired = repair ? repairTaps(taps) : unrepairedTaps(taps);
  const intervals = wholeIntervalsMs(repaired);
  const beats = beatsOf(repaired);
  const statistics = intervalStatistics(repaired, intervals);
  const { meanIntervalMs } = statistics;
  const perMinute = meanIntervalMs === null ? null : 60_000 / meanIntervalMs;
  const range = rateInterval(repaired);
  const jitter = tapJitter(intervals);
  const named = rhythm(taps.of, intervals, tapperJitterMs);
  return {
    perMinute,
    lowPerMinute: range.lowPerMinute,
    highPerMinute: range.highPerMinute,
    beats,
    repairs: repaired.repairs,
    ...statistics,
    tapJitterMs: jitter.tapJitterMs,
    rhythm: named.rhythm,
    flags: [...repaired.flags, ...rateFlags(perMinute)],
    why:
      perMinute === null
        ? [{ code: 'too-few', figures: { taps: beats, needs: 2 } }]
        : [...range.why, ...jitter.why, ...named.why],
  };
}

/** After parsing only a repair can lift a rate over what anybody has; it is shown and flagged. */
function rateFlags(perMinute: number | null): Flag[] {
  const ceilingPerMinute = COUNT_FIGURES.ceilingPerMinute.value;
  if (perMinute === null || perMinute <= ceilingPerMinute) return [];
  return [{ code: 'rate-impossible', figures: { perMinute, ceilingPerMinute } }];
}
