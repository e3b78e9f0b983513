import type { SoundEvent } from '@evenfall/physiology';
import { firstOfTwo } from '../reading/firstOfTwo.js';
import type { DebriefMark } from './debrief.js';
import { heardIn } from './ear.js';
import type { Exercise } from './exercise.js';
import type { FallOf } from './fall.js';
import { type Replay, settledNeedle, traceAt } from './replay.js';

/** A mark may come this long after the sound it was made on, seconds. */
const REACH_SECONDS = 1.5;
/** Clocks of mark and sound may differ by a tick or two. */
const EARLY_SECONDS = 0.02;

/** Every moment of the reading on the visit’s clock, with what cuff and needle were then and the sound that it was made on. */
export function marksOf(exercise: Exercise, played: Replay, fall: FallOf | null): DebriefMark[] {
  const { run } = exercise.evidence;
  if (run === null) return [];
  const heard = fall === null ? [] : heardIn(exercise, played, fall);
  return run.run.moments.map(({ what, mmHg, atSeconds }) => {
    if (atSeconds === null)
      return { what, atSeconds: null, mmHg, cuffMmHg: null, needleMmHg: null, soundSeconds: null };
    const at = run.startSeconds + atSeconds;
    const isReached = (one: SoundEvent | undefined): one is SoundEvent =>
      one !== undefined && one.atSeconds <= at + EARLY_SECONDS && at - one.atSeconds <= REACH_SECONDS;
    // A late hand may mark after the next sound has come: the right one is meant where it is within reach.
    const right = what === 'first sound' ? firstOfTwo(heard) : undefined;
    const before = played.sounds.findLast((one) => one.atSeconds <= at + EARLY_SECONDS);
    const sound = isReached(right) ? right : before;
    return {
      what,
      atSeconds: at,
      mmHg,
      cuffMmHg: traceAt(played.cuffMmHg, played.tracePerSecond, at),
      needleMmHg: settledNeedle(played, exercise.instrument, at),
      soundSeconds: isReached(sound) ? sound.atSeconds : null,
    };
  });
}
