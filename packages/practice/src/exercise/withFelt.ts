import type { Run } from '@evenfall/clinical';
import { observerKey, observerNormal, observerUniform } from '../observer/chance.js';
import type { Observer } from '../observer/observer.js';
import { written } from '../reading/written.js';
import type { Exercise } from './exercise.js';
import { lastFall, MEANT_MMHG } from './fall.js';
import { feltBack } from './feltBack.js';
import { replay, settledNeedle, traceAt } from './replay.js';
import { roundedMark } from './roundedMark.js';

/** What the finger feels of the last inflation of an exercise, and what is written of it: the pulse that comes back, and no diastolic. */
export function withFelt(exercise: Exercise, { reader }: Observer, lostMmHg: number | null): Exercise {
  const played = replay(exercise);
  const fall = lastFall(played, MEANT_MMHG);
  if (fall === null) return exercise;
  const back = feltBack(exercise, played, fall.peakSeconds, fall.endSeconds).first;
  if (back === null) return exercise;
  const key = observerKey(exercise.seed);
  const delay = reader.reactionSeconds + reader.reactionSdSeconds * observerNormal(key, 0, 'reactionFirst');
  const at = back.atSeconds + Math.max(0, delay);
  const mmHg = written(
    settledNeedle(played, exercise.instrument, at),
    reader,
    observerUniform(key, 0, 'tenFirst'),
    null,
  );
  const run: Run = {
    method: 'palpation',
    gaugeStepMmHg: 2,
    pulsePerMinute: null,
    palpated: { lostMmHg, backMmHg: null },
    peak: {
      mmHg: roundedMark(traceAt(played.cuffMmHg, played.tracePerSecond, fall.peakSeconds)),
      atSeconds: 0,
    },
    reinflated: false,
    moments: [{ what: 'pulse back', mmHg, atSeconds: at - fall.peakSeconds }],
  };
  return {
    ...exercise,
    evidence: { ...exercise.evidence, run: { startSeconds: fall.peakSeconds, run } },
    entered: { ...exercise.entered, systolic: mmHg },
  };
}
