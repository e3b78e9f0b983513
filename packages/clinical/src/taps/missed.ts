import type { Flag } from '../contract/flag.js';
import { passes, settled } from '../contract/threshold.js';
import type { Series } from '../statistics/series.js';
import { TAP_COMPARISONS as SIDE } from './comparisons.js';
import { TAP_FIGURES } from './figures.js';

const MANY_MISSED = TAP_FIGURES.manyMissed.value;

/**
 * Says so if taps are missing in more than one interval and in over a tenth of them: a tapper seldom misses so
 * many, so beats may be dropping out of the pulse, and then the pulse felt is slower than the rate given.
 * `gaps` counts the intervals in which taps are missing.
 */
export function manyMissed(intervals: Series): Flag<'many-missed'> | null {
  const gaps = intervals.filter((interval) => interval === null).length;
  if (gaps < 2 || !passes(settled(gaps / intervals.length), SIDE.manyMissed, MANY_MISSED)) return null;
  return { code: 'many-missed', figures: { gaps, intervals: intervals.length } };
}
