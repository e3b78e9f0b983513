import { roundTo } from '../contract/rounding.js';
import { settled } from '../contract/threshold.js';

/**
 * Whether a charted rate can have come from a whole number of beats in a window: as it stands, or as the whole
 * number that such a rate is shown as (73 from 55 beats in 45 s, which is 73.33). A check of data: no 15-second
 * count gives 73.
 *
 * Units: per minute, seconds over 0.
 * Source: derived, bedside handbook 1.3.
 */
export function isReachable(perMinute: number, windowSeconds: number): boolean {
  if (perMinute < 0) return false;
  const beats = (perMinute * windowSeconds) / 60;
  return [Math.floor(beats), Math.ceil(beats)].some((n) => {
    const rate = (60 * n) / windowSeconds;
    return settled(rate) === settled(perMinute) || roundTo(rate, 0) === perMinute;
  });
}
