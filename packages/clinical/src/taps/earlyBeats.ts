import { MAD_TO_SD, medianAbsoluteDeviation } from '../statistics/median.js';
import { known, type Series } from '../statistics/series.js';
import { TAP_FIGURES as FIGURE } from './figures.js';
import { localIntervals } from './localInterval.js';

/**
 * The intervals with each early beat and the pause after it taken out (null), or null if there is no early beat
 * or if they are too many to be occasional.
 *
 * A beat is early if its interval is shorter than the local one by 15 %, by four SD of a tapper's jitter and by
 * four robust SD of the person's own intervals, and the next interval is not shorter than the local one. A single
 * tap that came early looks the same: only its size tells them apart.
 *
 * @param jitterShare SD of one tap as a share of the mean interval
 */
export function withoutEarlyBeats(intervals: Series, jitterShare: number): Series | null {
  const whole = known(intervals);
  const local = localIntervals(whole);
  const ratios = whole.map((interval, i) => interval / (local[i] as number));
  const spread = MAD_TO_SD * (medianAbsoluteDeviation(ratios) ?? 0);
  const spreads = FIGURE.earlySpreads.value * Math.max(spread, Math.SQRT2 * jitterShare);
  const limit = 1 - Math.max(FIGURE.earlyBy.value, spreads);
  const rest = [...intervals];
  let early = 0;
  let place = -1;
  for (let i = 0; i < intervals.length; i++) {
    if (intervals[i] === null) continue;
    place++;
    if ((ratios[place] as number) > limit || intervals[i + 1] == null || (ratios[place + 1] as number) < 1)
      continue;
    early++;
    rest[i] = null;
    rest[i + 1] = null;
  }
  const isOccasional = early > 0 && early <= FIGURE.earlyAtMost.value * whole.length;
  return isOccasional ? rest : null;
}
