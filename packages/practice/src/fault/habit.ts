import type { SoundEvent } from '@evenfall/physiology';
import type { DebriefMark } from '../exercise/debrief.js';
import type { Exercise } from '../exercise/exercise.js';
import type { FallOf } from '../exercise/fall.js';
import { type Replay, settledNeedle } from '../exercise/replay.js';
import { OBSERVER_FIGURES as F } from '../observer/figures.js';
import { firstOfTwo } from '../reading/firstOfTwo.js';

export const MARK_MMHG = 2;
const TEN = 10;
/** The nearest ten is no further than 5, and a mark read as its neighbour 1 more. */
const TEN_OFF_MMHG = 6;
/** Further than two marks beside the needle a number was misread, or never read. */
const MISREAD_MMHG = 2 * MARK_MMHG;
const ROUNDING = 1e-6;

/** What is known of how a number was read. */
export type Habit = {
  /** Sounds passed over before it (after it: negative). */
  readonly skipped: number;
  /** Read where no sound was: the needle then beside where it stood at the right sound, mmHg. */
  readonly shiftMmHg: number;
  readonly delaySeconds: number;
  /** What the pen made of the needle, mmHg, and as which fault it counts; null: as none. */
  readonly offMmHg: number;
  readonly pen: 'digit-habit' | 'misread' | null;
  /** Whether it is known when the needle was read. */
  readonly isTimed: boolean;
};

const NONE: Habit = {
  skipped: 0,
  shiftMmHg: 0,
  delaySeconds: 0,
  offMmHg: 0,
  pen: null,
  isTimed: false,
};

/**
 * How a number was read, by its mark; one that was typed without a mark is held against what the needle showed at the
 * sounds of the fall. `earDb`: quieter sounds do not exist for this ear in this place.
 */
export function habitOf(
  side: 'systolic' | 'diastolic',
  exercise: Exercise,
  played: Replay,
  marks: readonly DebriefMark[],
  fall: FallOf,
  earDb: number,
): Habit {
  const mark = marks.find(({ what }) => what === (side === 'systolic' ? 'first sound' : 'last sound'));
  const entered = exercise.entered[side];
  // Where sounds go on to the end one may be marked when the cuff is as good as empty.
  const until = Math.max(fall.endSeconds, mark?.soundSeconds ?? 0);
  const heard = played.sounds.filter(
    ({ atSeconds, levelDb }) => levelDb >= earDb && atSeconds >= fall.peakSeconds && atSeconds <= until,
  );
  const right = side === 'systolic' ? firstOfTwo(heard) : heard.at(-1);
  if (entered === null || right === undefined) return NONE;
  const needleAt = (sound: SoundEvent) =>
    settledNeedle(played, exercise.instrument, sound.atSeconds + F.reactionSeconds.value);
  if (mark === undefined || mark.needleMmHg === null || mark.atSeconds === null)
    return untimed(entered, heard.map(needleAt), heard.indexOf(right));
  const off = { ...penOf(entered, mark.needleMmHg), isTimed: true };
  const took = heard.findIndex(({ atSeconds }) => atSeconds === mark.soundSeconds);
  // A mark on no sound was a sound imagined.
  if (took < 0) return { ...NONE, ...off, shiftMmHg: mark.needleMmHg - needleAt(right) };
  return {
    ...NONE,
    ...off,
    skipped: took - heard.indexOf(right),
    delaySeconds: Math.max(0, mark.atSeconds - (heard[took]?.atSeconds ?? mark.atSeconds)),
  };
}

/** A number to the nearest mark, or to the mark above, is as the needle was; a ten near it is a habit; the rest was misread. */
function penOf(entered: number, needleMmHg: number): Pick<Habit, 'offMmHg' | 'pen'> {
  const offMmHg = entered - needleMmHg;
  if (offMmHg >= -MARK_MMHG / 2 - ROUNDING && offMmHg <= MARK_MMHG + ROUNDING) return { offMmHg, pen: null };
  const isTen = entered % TEN === 0 && Math.abs(offMmHg) <= TEN_OFF_MMHG;
  return { offMmHg, pen: isTen || Math.abs(offMmHg) <= MISREAD_MMHG ? 'digit-habit' : 'misread' };
}

/** Without a time nothing is known within a beat of the fall and two marks; beyond, another sound was taken, or none. */
function untimed(entered: number, needles: readonly number[], right: number): Habit {
  const at = needles[right] as number;
  const beside = [needles[right - 1], needles[right + 1]].flatMap((one) =>
    one === undefined ? [] : [Math.abs(one - at)],
  );
  const room = Math.min(...beside, TEN) + MISREAD_MMHG;
  if (Math.abs(entered - at) <= room) return NONE;
  let took = right;
  for (const [i, one] of needles.entries())
    if (Math.abs(entered - one) < Math.abs(entered - (needles[took] as number))) took = i;
  if (Math.abs(entered - (needles[took] as number)) <= room / 2) return { ...NONE, skipped: took - right };
  return { ...NONE, offMmHg: entered - at, pen: 'misread' };
}
