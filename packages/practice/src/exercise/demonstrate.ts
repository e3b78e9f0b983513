import type { Moment, Run } from '@evenfall/clinical';
import {
  backgroundThresholdDb,
  type Circumstances,
  type Instrument,
  MODEL,
  makePerson,
  noiseOf,
  type SoundEvent,
} from '@evenfall/physiology';
import { observerKey, observerNormal, observerUniform } from '../observer/chance.js';
import type { Observer } from '../observer/observer.js';
import { firstOfTwo } from '../reading/firstOfTwo.js';
import { written } from '../reading/written.js';
import { EXERCISE_SCHEMA, type Exercise, NO_EVIDENCE, NOTHING_ENTERED } from './exercise.js';
import { lastFall, MEANT_MMHG } from './fall.js';
import type { Manner } from './manner.js';
import { circumstancesAt, replay, settledNeedle, traceAt } from './replay.js';
import { roundedMark } from './roundedMark.js';
import { type Before, type HandStep, NOTHING_BEFORE, show } from './show.js';
import { withFelt } from './withFelt.js';

export { show } from './show.js';

/** What an observer with these habits does and marks, as an exercise like a learner's own: to show how, and to test. */
export function demonstrate(
  observer: Observer,
  scenario: Exercise['scenario'],
  seed: number,
  circumstances: Circumstances,
  instrument: Instrument,
): Exercise {
  return demonstrated(observer, scenario, seed, circumstances, instrument, 'by-ear').exercise;
}

/** A demonstration as an exercise, and what the hands came to on the way. */
export type Demonstrated = { readonly exercise: Exercise; readonly steps: readonly HandStep[] };

/** The same in a manner of its own, with what comes before the cuff. By feel no diastolic is written. */
export function demonstrated(
  observer: Observer,
  scenario: Exercise['scenario'],
  seed: number,
  circumstances: Circumstances,
  instrument: Instrument,
  manner: Manner,
  before: Before = NOTHING_BEFORE,
): Demonstrated {
  const person = makePerson(scenario, seed);
  const shown = show(observer, person, circumstances, instrument, manner, before);
  const exercise: Exercise = {
    schema: EXERCISE_SCHEMA,
    model: MODEL,
    scenario,
    seed,
    circumstances,
    instrument,
    actions: shown.actions,
    seconds: shown.endSeconds,
    earlier: [],
    evidence: NO_EVIDENCE,
    entered: NOTHING_ENTERED,
  };
  const read = manner === 'by-feel' ? withFelt : withReading;
  return { exercise: read(exercise, observer, shown.lostMmHg), steps: shown.steps };
}

/** What the observer hears, marks and writes of the last inflation of an exercise, whoever's hands it was. */
export function withReading(exercise: Exercise, { reader }: Observer, lostMmHg: number | null): Exercise {
  const played = replay(exercise);
  const { person, cuffMmHg, tracePerSecond } = played;
  const fall = lastFall(played, MEANT_MMHG);
  if (fall === null) return exercise;
  const { peakSeconds } = fall;
  const then = circumstancesAt(exercise, peakSeconds, played.firstInflationSeconds);
  const thresholdDb = reader.thresholdDb + backgroundThresholdDb(noiseOf(person.scenario, then));
  const heard = played.sounds.filter((one) => one.atSeconds > peakSeconds && one.levelDb >= thresholdDb);
  const first = reader.firstSound === 'any' ? heard[0] : firstOfTwo(heard);
  const last = heard.at(-1);
  if (first === undefined || last === undefined || last.atSeconds <= first.atSeconds) return exercise;
  const key = observerKey(exercise.seed);
  const muffledFrom = heard.findLastIndex(({ isMuffled }) => !isMuffled) + 1;
  const muffled = muffledFrom > 0 && muffledFrom < heard.length - 1 ? heard[muffledFrom] : undefined;
  const mark = (sound: SoundEvent, what: Moment['what'], lane: 'First' | 'Last' | 'Muffled'): Moment => {
    const delay = Math.max(
      0,
      reader.reactionSeconds + reader.reactionSdSeconds * observerNormal(key, 0, `reaction${lane}`),
    );
    const at = sound.atSeconds + delay;
    const chance = observerUniform(key, 0, `ten${lane}`);
    return {
      what,
      mmHg: written(settledNeedle(played, exercise.instrument, at), reader, chance, null),
      atSeconds: at - peakSeconds,
    };
  };
  const moments: Moment[] = [mark(first, 'first sound', 'First')];
  if (muffled !== undefined) moments.push(mark(muffled, 'muffled', 'Muffled'));
  moments.push(mark(last, 'last sound', 'Last'));
  const span = last.atSeconds - first.atSeconds;
  const beatsBetween = last.beat - first.beat;
  const run: Run = {
    method: 'auscultation',
    gaugeStepMmHg: 2,
    pulsePerMinute: (60 * beatsBetween) / span,
    palpated: { lostMmHg, backMmHg: null },
    peak: { mmHg: roundedMark(traceAt(cuffMmHg, tracePerSecond, peakSeconds)), atSeconds: 0 },
    reinflated: false,
    moments,
  };
  return {
    ...exercise,
    evidence: {
      ...exercise.evidence,
      run: { startSeconds: peakSeconds, run },
      thresholdDb: reader.thresholdDb,
    },
    entered: {
      ...exercise.entered,
      systolic: moments[0]?.mmHg ?? null,
      muffled: muffled === undefined ? null : (moments[1]?.mmHg ?? null),
      diastolic: moments.at(-1)?.mmHg ?? null,
      pulsePerMinute: run.pulsePerMinute,
    },
  };
}
