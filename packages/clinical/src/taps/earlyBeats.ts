import { passes, settled } from '../contract/threshold.js';
import { known, type Series } from '../statistics/series.js';
import { TAP_COMPARISONS as SIDE } from './comparisons.js';
import { TAP_FIGURES as FIGURE } from './figures.js';

/**
 * The intervals with each early beat and the pause after it taken out (null), or null if there is no early beat
 * or if they are too many to be occasional.
 *
 * A beat is early if its interval is shorter than the local one by 15 % and by 3.5 SD, and the next interval is not
 * shorter than the local one. A single tap that came early looks the same: only its size tells them apart.
 *
 * @param ratios of the known intervals to their local ones
 * @param sd of such ratios in this rhythm without early beats, the tapper's jitter included
 */
export function withoutEarlyBeats(intervals: Series, ratios: readonly number[], sd: number): Series | null {
  const limit = Math.max(FIGURE.earlyBy.value, FIGURE.earlySpreads.value * sd);
  const rest = [...intervals];
  let early = 0;
  let place = -1;
  for (let i = 0; i + 1 < intervals.length; i++) {
    if (intervals[i] === null) continue;
    place++;
    const isEarly = passes(settled(1 - (ratios[place] as number)), SIDE.earlyBy, limit);
    if (!isEarly || intervals[i + 1] === null || (ratios[place + 1] as number) < 1) continue;
    early++;
    rest[i] = null;
    rest[i + 1] = null;
  }
  const share = settled(early / known(intervals).length);
  const isOccasional = early > 0 && !passes(share, SIDE.earlyAtMost, FIGURE.earlyAtMost.value);
  return isOccasional ? rest : null;
}
