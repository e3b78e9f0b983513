import type { Flag } from '../contract/flag.js';
import { settled } from '../contract/threshold.js';
import { isPast } from './bands.js';
import type { Fall } from './falls.js';
import { SCORE_FIGURES as F } from './figures.js';
import type { StandingReasonCode, StandingTest } from './standing.js';

/**
 * How far the pulse rose for each mmHg that the systolic fell, at the last reading within 3 minutes that shows a
 * fall; null with the reason where it means nothing, and without one where no pulse was taken and none is wanted. The pattern is a pointer, no diagnosis.
 */
export type HeartRateRatio = {
  readonly heartRateRatio: number | null;
  readonly heartRatePattern: 'neurogenic' | 'not-neurogenic' | null;
  readonly why: readonly Flag<StandingReasonCode>[];
};

/**
 * Rise of the pulse / fall of the systolic, per minute per mmHg. Only with a fall of the systolic from lying, in
 * sinus rhythm, without a pacemaker or a drug that slows the heart; each must be known.
 *
 * Errors: none. Source: Norcliffe-Kaufmann 2018, Ann Neurol 83:522; bedside handbook 3.14.
 *
 * @example heartRateRatio(test, falls) // lying 148, pulse 68; standing 112, pulse 76: 8 / 36 = 0.22, neurogenic
 */
export function heartRateRatio(test: StandingTest, falls: readonly Fall[]): HeartRateRatio {
  const fall = falls.findLast(
    ({ isSystolicFall, isDelayed, pulseRise }) => isSystolicFall === true && !isDelayed && pulseRise !== null,
  );
  const why = reasons(test, falls, fall);
  if (why.length > 0 || fall === undefined || fall.systolicFall === null || fall.pulseRise === null) {
    return { heartRateRatio: null, heartRatePattern: null, why };
  }
  const ratio = fall.pulseRise / fall.systolicFall;
  const isLow = isPast(settled(ratio), 'heartRateRatio');
  return { heartRateRatio: ratio, heartRatePattern: isLow ? 'neurogenic' : 'not-neurogenic', why: [] };
}

function reasons(
  test: StandingTest,
  falls: readonly Fall[],
  fall: Fall | undefined,
): Flag<StandingReasonCode>[] {
  const hasPulse = falls.some(({ pulseRise }) => pulseRise !== null);
  if (test.from === 'sitting') return hasPulse ? [because('ratio-needs-lying')] : [];
  const hasFall = falls.some(({ isSystolicFall, isDelayed }) => isSystolicFall === true && !isDelayed);
  if (!hasFall && !hasPulse) return [];
  if (!hasFall) return [{ code: 'no-systolic-fall', figures: { limitMmHg: F.standingSystolicFall.value } }];
  if (fall === undefined) return [because('no-pulse-with-fall')];
  const found: Flag<StandingReasonCode>[] = [];
  if (test.sinusRhythm === false) found.push(because('rhythm-not-sinus'));
  if (test.pacemaker === true) found.push(because('has-pacemaker'));
  if (test.rateSlowingDrug === true) found.push(because('takes-rate-slowing-drug'));
  const isUnknown = [test.sinusRhythm, test.pacemaker, test.rateSlowingDrug].includes(null);
  return found.length === 0 && isUnknown ? [because('rhythm-not-known')] : found;
}

function because(code: StandingReasonCode): Flag<StandingReasonCode> {
  return { code, figures: {} };
}
