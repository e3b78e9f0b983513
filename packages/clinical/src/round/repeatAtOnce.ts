import type { Flag } from '../contract/flag.js';
import { isOnePlace } from './readingsOf.js';
import type { Recheck, RecheckCode } from './recheckAfter.js';
import { recheckFlag } from './recheckFlag.js';
import type { RoundReading } from './roundReading.js';
import { isLowCondition } from './worstAlerts.js';

/** The systolics of a reading that nobody was to wait after, and of the one that repeated it; mmHg. */
export type RepeatAtOnce = { readonly firstSystolic: number; readonly againSystolic: number };

type HastyReading = Pick<RoundReading, 'side' | 'site' | 'posture' | 'systolic'> & {
  /** Very low or unwell: the next is asked for without a wait. Absent is no. */
  readonly isNextAtOnce?: boolean;
};

/**
 * Whether what was very low, or of somebody unwell, was repeated: the lowest such reading with the last one that repeats it; null
 * where there was none such, or nothing repeats the last of them yet. A repeat is what came after it at its place or lying, whatever
 * it read, or itself, where it repeats one at its place. One on the feet is repeated off them; another arm or site repeats nothing.
 *
 * @param readings of one round, in the order in which they were taken
 *
 * Source: bedside handbook 3.15 (at once, by hand). That it is one repeat, at its place: common practice, no source.
 */
export function repeatAtOnce(readings: readonly HastyReading[]): RepeatAtOnce | null {
  const hasty = readings.filter(({ isNextAtOnce }) => isNextAtOnce === true);
  const last = hasty.at(-1);
  if (last === undefined || pairOf(last, readings) === null) return null;
  const lowest = hasty.reduce((low, one) => (one.systolic < low.systolic ? one : low));
  return pairOf(lowest, readings);
}

/** A reading with the last that repeats it, or with the one before that it repeats itself; null where nothing does. */
function pairOf(one: HastyReading, readings: readonly HastyReading[]): RepeatAtOnce | null {
  const at = readings.indexOf(one);
  const after = readings.slice(at + 1).findLast((later) => isRepeatOf(one, later));
  if (after !== undefined) return { firstSystolic: one.systolic, againSystolic: after.systolic };
  const before = readings[at - 1];
  const isOfPlace = before?.isNextAtOnce === true && isOnePlace(before, one) && one.posture !== 'stand';
  return isOfPlace ? { firstSystolic: before.systolic, againSystolic: one.systolic } : null;
}

function isRepeatOf(low: HastyReading, one: HastyReading): boolean {
  if (low.side !== one.side || low.site !== one.site || one.posture === 'stand') return false;
  return low.posture === one.posture || low.posture === 'stand' || one.posture !== 'sit';
}

/**
 * The alerts of a round as they are said beside its readings: one of a low pressure no longer asks for a repeat that is in the
 * round. No kept value changes: this is how it is read out.
 */
export function alertsBeside<Alert extends { readonly condition: string; readonly figures: Flag['figures'] }>(
  alerts: readonly Alert[],
  repeat: RepeatAtOnce | null,
): readonly Alert[] {
  if (repeat === null) return alerts;
  return alerts.map((alert) =>
    isLowCondition(alert.condition) ? { ...alert, figures: { ...alert.figures, ...repeat } } : alert,
  );
}

/** What is to be looked at again where the repeat that it speaks of was made in the round. */
export type RecheckBesideCode = RecheckCode | 'recheck-repeated-at-once' | 'recheck-abnormal-again';

/**
 * The repeats that are due as they are said beside a round: what was repeated in it, and is as it was, is not asked for as if it
 * had not been. No kept value changes: this is how it is read out.
 */
export function rechecksBeside(
  rechecks: readonly Recheck[],
  repeat: RepeatAtOnce | null,
): readonly Flag<RecheckBesideCode>[] {
  const isSoonOver = !rechecks.some(({ code }) => code === 'recheck-abnormal-soon');
  return rechecks.map((one) => {
    const { code, figures } = recheckFlag(one);
    if (code === 'recheck-at-once' && repeat !== null)
      return { code: 'recheck-repeated-at-once', figures: { ...figures, ...repeat } };
    if (code === 'recheck-abnormal-later' && isSoonOver) return { code: 'recheck-abnormal-again', figures };
    return { code, figures };
  });
}
