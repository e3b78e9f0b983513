import { isPast } from './bands.js';
import type { Fall } from './falls.js';
import { SCORE_FIGURES as F } from './figures.js';
import type { StandingFlag, StandingTest } from './standing.js';

type Rise = {
  readonly pulseRise: number | null;
  readonly riseToReport: boolean | null;
  readonly flags: readonly StandingFlag[];
};

/**
 * The greatest rise of the pulse within 10 minutes of standing, and whether it is to be reported: 30 a minute, 40
 * from 12 to 19 years, without a fall. An age that is not known takes 30.
 *
 * Source: bedside handbook 3.14 (from memory). It is reported, not named.
 */
export function riseWithoutFall(test: StandingTest, falls: readonly Fall[], hasFall: boolean): Rise {
  const rises = falls
    .filter(({ minutes }) => isPast(minutes, 'standingRiseWithinMinutes'))
    .flatMap(({ pulseRise }) => (pulseRise === null ? [] : [pulseRise]));
  if (rises.length === 0) return { pulseRise: null, riseToReport: null, flags: [] };
  const pulseRise = Math.max(...rises);
  const { age } = test;
  const isTeenage = age !== null && isPast(age, 'teenageFromYears') && isPast(age, 'teenageToYears');
  const limit = isTeenage ? 'standingRiseTeenage' : 'standingRise';
  const riseToReport = !hasFall && isPast(pulseRise, limit);
  const figures = { pulseRise, limitPerMinute: F[limit].value };
  return { pulseRise, riseToReport, flags: riseToReport ? [{ code: 'rise-without-fall', figures }] : [] };
}
