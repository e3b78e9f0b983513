import type { Moment, Run } from '@evenfall/clinical';
import { isGaugeOff } from '../fault/faults.js';
import { away, mufflingIn } from '../fault/habit.js';
import { firstOfTwo } from '../reading/firstOfTwo.js';
import { heardIn } from './ear.js';
import type { Exercise } from './exercise.js';
import type { FallOf } from './fall.js';
import { type Replay, settledNeedle } from './replay.js';
import type { DebriefRules } from './rules.js';

/**
 * The exercise as its numbers were written: where each was written as a right gauge would have shown it, and not as this one did,
 * whoever read it knew the gauge and took its error off. It is then judged as read from a right one: the gauge cost nothing, and no
 * needle was misread. Numbers that were marked in time are held against the needle of that instant; where none was, each against the
 * needle at the sound that it should be of, read as anybody may. A gauge that is off by so little that both are so is left as it is.
 */
export function withGaugeErrorTaken(
  exercise: Exercise,
  played: Replay,
  fall: FallOf | null,
  rules: DebriefRules,
): Exercise {
  const { instrument } = exercise;
  const { run } = exercise.evidence;
  if (run === null || !isGaugeOff(instrument)) return exercise;
  const asRight = { ...exercise, instrument: { ...instrument, zeroOffsetMmHg: 0, scaleError: 0 } };
  const { moments } = run.run;
  const isTimed = moments.some(({ atSeconds }) => atSeconds !== null);
  const isTaken = isTimed
    ? isTakenInTime(run.run, run.startSeconds, exercise, asRight, played)
    : fall !== null && isTakenFromMemory(moments, exercise, asRight, played, fall, rules);
  return moments.length > 0 && isTaken ? asRight : exercise;
}

function isTakenInTime(
  { moments, gaugeStepMmHg }: Run,
  startSeconds: number,
  asWas: Exercise,
  asRight: Exercise,
  played: Replay,
): boolean {
  return moments.every(({ mmHg, atSeconds }) => {
    if (atSeconds === null) return true;
    const off = ({ instrument }: Exercise) =>
      Math.abs(mmHg - settledNeedle(played, instrument, startSeconds + atSeconds));
    return off(asRight) <= gaugeStepMmHg && off(asWas) > gaugeStepMmHg;
  });
}

function isTakenFromMemory(
  moments: readonly Moment[],
  asWas: Exercise,
  asRight: Exercise,
  played: Replay,
  fall: FallOf,
  rules: DebriefRules,
): boolean {
  const heard = heardIn(asWas, played, fall);
  const { felt } = played;
  const at = {
    'first sound': firstOfTwo(heard),
    muffled: mufflingIn(heard),
    'last sound': heard.at(-1),
    'pulse back': felt.find(
      ({ isFelt, atSeconds }) => isFelt && atSeconds > fall.peakSeconds && atSeconds <= fall.endSeconds,
    ),
  };
  return moments.every(({ what, mmHg }) => {
    const right = at[what];
    if (right === undefined) return false;
    const off = (exercise: Exercise) => away(mmHg, right.atSeconds, { exercise, played, rules });
    return off(asRight) === 0 && off(asWas) !== 0;
  });
}
