import { DEFLATION_FIGURES } from './figures.js';
import type { InflationRules } from './rules.js';

/** What is known of an arm in this round, mmHg: where its pulse was lost, and the systolics read there. */
export type KnownOfArm = { readonly lostMmHg: number | null; readonly readMmHg: readonly number[] };

/** How far to pump up, mmHg, and what decided it; `mmHg` is null where nothing is known. */
export type InflateTo = { readonly mmHg: number | null; readonly by: 'felt' | 'read' | null };

const STEP = DEFLATION_FIGURES.targetStepMmHg.value;

/** What a target of the cuff rests on, of the arm and the posture in which it is pumped up now. */
export type TargetRestsOn = {
  readonly isFeltHere: boolean;
  readonly isReadHere: boolean;
  /** What was read here last was so low that it is taken again at once. */
  readonly isLowHere: boolean;
  /** On their feet the pressure is seldom higher than before: a target from there holds. */
  readonly isUpright: boolean;
};

/**
 * Whether the pulse is to be felt while the cuff goes up, and the cuff to go on by the margin above where it is lost: the target comes of
 * another posture, in which the pressure may be far lower, or of a low reading that may itself have begun inside a gap.
 * Source: bedside handbook 3.5 (stopping inside the gap gives a falsely low systolic); when to feel on: common practice, no source.
 */
export function isFeltOn({ isFeltHere, isReadHere, isLowHere, isUpright }: TargetRestsOn): boolean {
  return !isFeltHere && (isLowHere || !(isReadHere || isUpright));
}

/**
 * How far to pump up: the local margin above where the pulse was lost, or above what was read on this arm before if that
 * is more. Who takes a repeat is not told the earlier reading, so its target is rounded up to the next ten.
 * Source: bedside handbook 3.5 (margins of 10, 20 and 30 are in use); above what was read, decision of this project.
 *
 * @example inflateTo({ lostMmHg: 124, readMmHg: [] }, DEFAULT_INFLATION_RULES) // { mmHg: 154, by: 'felt' }
 */
export function inflateTo(
  { lostMmHg, readMmHg }: KnownOfArm,
  { marginMmHg }: Pick<InflationRules, 'marginMmHg'>,
): InflateTo {
  const byFelt = lostMmHg === null ? null : lostMmHg + marginMmHg;
  const byRead = readMmHg.length === 0 ? null : STEP * Math.ceil((Math.max(...readMmHg) + marginMmHg) / STEP);
  if (byRead !== null && (byFelt === null || byRead > byFelt)) return { mmHg: byRead, by: 'read' };
  return { mmHg: byFelt, by: byFelt === null ? null : 'felt' };
}
