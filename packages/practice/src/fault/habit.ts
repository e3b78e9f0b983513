import type { SoundEvent } from '@evenfall/physiology';
import { heardIn, soundsIn } from '../exercise/ear.js';
import type { Exercise } from '../exercise/exercise.js';
import { settledNeedle, traceAt } from '../exercise/replay.js';
import type { DebriefRules } from '../exercise/rules.js';
import { OBSERVER_FIGURES as F } from '../observer/figures.js';
import { firstOfTwo } from '../reading/firstOfTwo.js';
import type { Reading, Side } from './base.js';

/** What is known of how a number was read. */
export type Habit = {
  /** Sounds passed over; under 0 before the right one. */
  readonly skipped: number;
  readonly delaySeconds: number;
  /** What the pen made of the needle, and what that is called; null: what everybody makes of it. */
  readonly offMmHg: number;
  readonly pen: 'digit-habit' | 'misread-needle' | null;
  /** How far from the needle at the right sound, where the number is of no sound, and what that is called; null: it is of one. */
  readonly awayMmHg: number;
  readonly away: 'off-the-sound' | 'on-no-sound' | 'silent-gap' | null;
  readonly isTimed: boolean;
};

const NONE: Habit = {
  skipped: 0,
  delaySeconds: 0,
  offMmHg: 0,
  pen: null,
  awayMmHg: 0,
  away: null,
  isTimed: false,
};
/** A habit of the pen goes to the nearest ten, to five, or two marks beside; what is further off was read wrongly. */
const HABITS = [
  { per: 10, most: 5 },
  { per: 5, most: 2.5 },
] as const;
const MARKS_BESIDE = 2;
/** So far under the last sound above a gap a number is of none of those; so little under the first one below it is that one, or one of the next three. */
const BELOW_MMHG = 4;
const JUST_BELOW_MMHG = 12;
const TINY = 1e-6;

/**
 * How a number was read: sounds passed over before (after) it, how late the eye was, what the pen made of the needle. A
 * number that was not marked in time, or marked on no sound, is held against the sound that it should have been of.
 */
export function habitOf(side: Side, reading: Reading, isByFeel: boolean): Habit {
  const { exercise, played, fall, marks } = reading;
  const isMuffling = side === 'diastolic' && reading.isByMuffled;
  const entered = isMuffling ? mufflingOf(exercise) : exercise.entered[side];
  if (entered === null || (isByFeel && side === 'diastolic')) return NONE;
  const pulse = played.felt.find(
    ({ isFelt, atSeconds }) => isFelt && atSeconds > fall.peakSeconds && atSeconds <= fall.endSeconds,
  );
  const ofEnd = isMuffling && exercise.entered.muffled !== null ? 'muffled' : 'last sound';
  const what = isByFeel ? 'pulse back' : side === 'systolic' ? 'first sound' : ofEnd;
  const mark = marks.find((one) => one.what === what);
  const isTimed = mark !== undefined && mark.needleMmHg !== null && mark.atSeconds !== null;
  const endOf = (heard: readonly SoundEvent[]) => (isMuffling ? mufflingIn(heard) : heard.at(-1));
  const rightIn = (heard: readonly SoundEvent[]) => (side === 'systolic' ? firstOfTwo(heard) : endOf(heard));
  const heard = heardIn(exercise, played, fall);
  const right = isByFeel ? pulse : rightIn(heard);
  if (right === undefined) return { ...NONE, isTimed };
  if (side === 'systolic' && !isByFeel && isAfterGap(entered, heard, right, reading)) {
    const needle = settledNeedle(played, exercise.instrument, right.atSeconds);
    return { ...NONE, isTimed, awayMmHg: entered - needle, away: 'silent-gap' };
  }
  if (!isTimed) {
    const awayMmHg = away(entered, right.atSeconds, reading);
    return { ...NONE, awayMmHg, away: awayMmHg === 0 ? null : 'off-the-sound' };
  }
  const offMmHg = entered - (mark.needleMmHg ?? 0);
  const read = { ...NONE, isTimed, offMmHg, pen: penOf(entered, offMmHg, reading) };
  const late = (from: number) => Math.max(0, (mark.atSeconds ?? 0) - from);
  if (isByFeel) return { ...read, delaySeconds: late(right.atSeconds) };
  // An ear may hear more than its check told.
  const lists = [heard, soundsIn(played, fall).filter(({ levelDb }) => levelDb >= 0)];
  const list = lists.find((all) => all.some(({ atSeconds }) => atSeconds === mark.soundSeconds));
  if (list === undefined) {
    const needle = settledNeedle(played, exercise.instrument, right.atSeconds);
    return { ...NONE, isTimed, awayMmHg: entered - needle, away: 'on-no-sound' };
  }
  const took = list.findIndex(({ atSeconds }) => atSeconds === mark.soundSeconds);
  return {
    ...read,
    skipped: took - list.indexOf(rightIn(list) as SoundEvent),
    delaySeconds: late((list[took] as SoundEvent).atSeconds),
  };
}

/**
 * Whether a sound at the lower end of this person's silent gap was taken for the first: it was heard above the gap in this very fall, and
 * what was written lies in the silence or just below it. Source: physiology handbook 8.5; bedside handbook 3.4.
 */
function isAfterGap(
  entered: number,
  heard: readonly Pick<SoundEvent, 'atSeconds' | 'cuffMmHg'>[],
  right: Pick<SoundEvent, 'atSeconds'>,
  { exercise, played, gap }: Reading,
): boolean {
  if (gap === null) return false;
  const middle = (gap.topMmHg + gap.bottomMmHg) / 2;
  const above = heard.findLast(({ cuffMmHg }) => cuffMmHg > middle);
  const below = heard.find(({ cuffMmHg }) => cuffMmHg < middle);
  if (above === undefined || below === undefined || above.atSeconds < right.atSeconds) return false;
  const needleAt = (seconds: number) => settledNeedle(played, exercise.instrument, seconds);
  const isBelowThose = entered < needleAt(above.atSeconds) - BELOW_MMHG;
  return isBelowThose && entered > needleAt(below.atSeconds) - JUST_BELOW_MMHG;
}

/** What was written where the sounds became muffled: of two numbers the second was to be that. */
export function mufflingOf({ entered }: Pick<Exercise, 'entered'>): number | null {
  return entered.muffled ?? entered.diastolic;
}

/** The first of the muffled sounds at the end. */
export function mufflingIn(heard: readonly SoundEvent[]): SoundEvent | undefined {
  return heard[heard.findLastIndex(({ isMuffled }) => !isMuffled) + 1];
}

/** What a number beside the needle is called; null: what the gauge is read to anyway. */
function penOf(entered: number, offMmHg: number, { exercise, rules }: Reading): Habit['pen'] {
  const step = stepOf(exercise, rules);
  const [low, high] =
    rules.runRules.deflation.gaugeReading === 'mark-above' ? [0, step] : [-step / 2, step / 2];
  if (offMmHg >= low - TINY && offMmHg <= high + TINY) return null;
  const isHabit =
    Math.abs(offMmHg) <= (MARKS_BESIDE + 0.5) * step + TINY ||
    HABITS.some(({ per, most }) => entered % per === 0 && Math.abs(offMmHg) <= most + TINY);
  return isHabit ? 'digit-habit' : 'misread-needle';
}

/** How far apart the marks of the gauge are, mmHg: as the run says, else by the protocol. */
export function stepOf({ evidence }: Exercise, { runRules }: DebriefRules): number {
  return evidence.run?.run.gaugeStepMmHg ?? runRules.deflation.gaugeStepMmHg;
}

/** How far a number lies from the needle at a sound, where no ordinary reading gives it: half a mark, and what falls in a slow reaction. */
export function away(
  entered: number,
  atSeconds: number,
  { exercise, played, rules }: Pick<Reading, 'exercise' | 'played' | 'rules'>,
): number {
  const needle = settledNeedle(played, exercise.instrument, atSeconds);
  const { cuffMmHg, tracePerSecond } = played;
  const fell =
    traceAt(cuffMmHg, tracePerSecond, atSeconds) -
    traceAt(cuffMmHg, tracePerSecond, atSeconds + F.slowReactionSeconds.value);
  const off = entered - needle;
  const step = stepOf(exercise, rules);
  const isOrdinary = off <= step && off >= -(step / 2 + Math.max(0, fell));
  return isOrdinary ? 0 : off;
}
