import { isGaugeOff } from '../fault/faults.js';
import type { Exercise } from './exercise.js';
import { type Replay, settledNeedle } from './replay.js';

/**
 * The exercise as its numbers were written: where each marked moment was written as a right gauge would have shown it, and not as this
 * one did, whoever read it knew the gauge and took its error off. It is then judged as read from a right one: the gauge cost nothing,
 * and no needle was misread.
 */
export function withGaugeErrorTaken(exercise: Exercise, played: Replay): Exercise {
  const { instrument } = exercise;
  const { run } = exercise.evidence;
  if (run === null || !isGaugeOff(instrument)) return exercise;
  const right = { ...instrument, zeroOffsetMmHg: 0, scaleError: 0 };
  const step = run.run.gaugeStepMmHg;
  const timed = run.run.moments.flatMap(({ mmHg, atSeconds }) =>
    atSeconds === null ? [] : [{ mmHg, at: run.startSeconds + atSeconds }],
  );
  const isTaken = timed.every(({ mmHg, at }) => {
    const off = (of: typeof instrument) => Math.abs(mmHg - settledNeedle(played, of, at));
    return off(right) <= step && off(instrument) > step;
  });
  return timed.length > 0 && isTaken ? { ...exercise, instrument: right } : exercise;
}
