import type { Flag } from '../contract/flag.js';
import { passes, settled } from '../contract/threshold.js';
import { autocovariances } from '../statistics/autocovariances.js';
import { sampleSd } from '../statistics/sampleSd.js';
import { known, type Series } from '../statistics/series.js';
import { TAP_COMPARISONS as SIDE } from './comparisons.js';
import { TAP_FIGURES } from './figures.js';

const FEWEST = TAP_FIGURES.intervalsForJitter.value;
const LOWEST_CORRELATION = TAP_FIGURES.lowestJitterCorrelation.value;

export type TapJitter = {
  readonly tapJitterMs: number | null;
  readonly why: readonly Flag<'too-few-for-jitter' | 'jitter-cannot-be-told'>[];
};

/**
 * The tapper's timing jitter (SD of one tap, ms) apart from the person's irregularity, by the two-process model:
 * a late tap lengthens one interval and shortens the next, so the lag-one autocovariance of the intervals is
 * minus the jitter's variance.
 *
 * Null under 30 whole intervals, and where the lag-one autocorrelation is not from -0.55 to under 0: a person
 * whose beats vary slowly (breathing) or in turn (an alternating rhythm) covers it up. Never 0 for "could not tell".
 * Source: docs/conventions.md section 5.
 */
export function tapJitter(intervals: Series): TapJitter {
  const whole = known(intervals);
  if (passes(whole.length, SIDE.intervalsForJitter, FEWEST)) {
    const why = { code: 'too-few-for-jitter', figures: { intervals: whole.length, needs: FEWEST } } as const;
    return { tapJitterMs: null, why: [why] };
  }
  const covariance = autocovariances(intervals, 1)[1] ?? 0;
  const variance = (sampleSd(whole) ?? 0) ** 2;
  const autocorrelation = variance === 0 ? 0 : settled(covariance / variance);
  const isTooLow = passes(autocorrelation, SIDE.lowestJitterCorrelation, LOWEST_CORRELATION);
  if (!isTooLow && autocorrelation < 0) {
    return { tapJitterMs: Math.sqrt(-covariance), why: [] };
  }
  return { tapJitterMs: null, why: [{ code: 'jitter-cannot-be-told', figures: { autocorrelation } }] };
}
