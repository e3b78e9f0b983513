import type { Moment, Run } from '@evenfall/clinical';
import {
  type Action,
  backgroundThresholdDb,
  type Circumstances,
  type Instrument,
  MODEL,
  makePerson,
  type Person,
  type SoundEvent,
  startRig,
  TICKS_PER_SECOND,
  truth,
} from '@evenfall/physiology';
import { observerKey, observerNormal, observerUniform } from '../observer/chance.js';
import { OBSERVER_FIGURES as F } from '../observer/figures.js';
import type { Observer } from '../observer/observer.js';
import { firstOfTwo } from '../reading/firstOfTwo.js';
import { written } from '../reading/written.js';
import { type Exercise, NO_EVIDENCE, NOTHING_ENTERED } from './exercise.js';
import { lastFall, MEANT_MMHG } from './fall.js';
import { replay, settledNeedle, traceAt } from './replay.js';

/** How long the observer looks on before the first hand movement, seconds. */
const LEAD_SECONDS = 5;
/** While a finger feels for the loss of the pulse the cuff is pumped no faster. Source: no source, decision of this project. */
const FEELING_MMHG_PER_SECOND = 10;
/** Beats without a pulse until it is sure that it is gone: in some rhythms every second or third one is not felt. */
const SURE_BEATS = 4;
const MOST_MMHG = 280;
/** Further than any gap is wide. Source: physiology handbook 8.5. */
const LISTENS_ON_MMHG = 45;
const STEP_TICKS = 4;
const TAIL_SECONDS = 3;

/** What an observer with these habits does and marks, as an exercise like a learner's own: to show how, and to test. */
export function demonstrate(
  observer: Observer,
  scenario: Exercise['scenario'],
  seed: number,
  circumstances: Circumstances,
  instrument: Instrument,
): Exercise {
  const person = makePerson(scenario, seed);
  const shown = show(observer, person, circumstances, instrument);
  const exercise: Exercise = {
    schema: 1,
    model: MODEL,
    scenario,
    seed,
    circumstances,
    instrument,
    actions: shown.actions,
    seconds: shown.endSeconds,
    evidence: NO_EVIDENCE,
    entered: NOTHING_ENTERED,
  };
  return withReading(exercise, observer, shown.lostMmHg);
}

type Shown = { readonly actions: Action[]; readonly endSeconds: number; readonly lostMmHg: number | null };

/** The list of hand movements with their ticks, found on a rig as it goes. */
export function show(
  observer: Observer,
  person: Person,
  circumstances: Circumstances,
  instrument: Instrument,
): Shown {
  const { hand, reader } = observer;
  const rig = startRig(person, circumstances, instrument);
  const actions: Action[] = [];
  const act = (action: Action) => {
    actions.push(action);
    return rig.advance(rig.tick + STEP_TICKS, [action]);
  };
  const wait = (seconds: number) => rig.advance(rig.tick + Math.round(seconds * TICKS_PER_SECOND));
  wait(LEAD_SECONDS);
  let lostMmHg: number | null = null;
  if (hand.palpatesFirst) {
    act({ tick: rig.tick, kind: 'finger', isOn: true });
    act({ tick: rig.tick, kind: 'steady-rise', mmHgPerSecond: FEELING_MMHG_PER_SECOND, toMmHg: MOST_MMHG });
    let missed = 0;
    while (rig.cuffMmHg < MOST_MMHG && missed < SURE_BEATS) {
      const beatBefore = rig.snapshot().beat;
      const { felt } = rig.advance(rig.tick + STEP_TICKS);
      if (felt.some(({ isFelt }) => isFelt)) {
        missed = 0;
        lostMmHg = null;
      } else if (rig.snapshot().beat !== beatBefore) {
        missed += 1;
        lostMmHg ??= rig.needleMmHg;
      }
    }
    act({ tick: rig.tick, kind: 'quick-release' });
    act({ tick: rig.tick, kind: 'finger', isOn: false });
    wait(F.waitSeconds.value);
  }
  const pulse = truth(person, circumstances, rig.seconds, instrument).pulsePerMinute;
  const rate =
    hand.mostPerBeatMmHg === null
      ? hand.rateMmHgPerSecond
      : Math.min(hand.rateMmHgPerSecond, (hand.mostPerBeatMmHg * pulse) / 60);
  const peak = Math.min(MOST_MMHG, lostMmHg === null ? hand.peakMmHg : roundedUp(lostMmHg + hand.marginMmHg));
  act({ tick: rig.tick, kind: 'steady-rise', mmHgPerSecond: F.pumpMmHgPerSecond.value, toMmHg: peak });
  while (rig.cuffMmHg < peak - 0.001) wait(STEP_TICKS / TICKS_PER_SECOND);
  act({ tick: rig.tick, kind: 'steady-fall', mmHgPerSecond: rate, toMmHg: 0 });
  const thresholdDb = reader.thresholdDb + backgroundThresholdDb(person.scenario.noiseDbA);
  let lastMmHg = Number.NaN;
  while (rig.cuffMmHg > 0 && !(rig.cuffMmHg < lastMmHg - LISTENS_ON_MMHG)) {
    const { sounds } = rig.advance(rig.tick + STEP_TICKS);
    for (const sound of sounds) if (sound.levelDb >= thresholdDb) lastMmHg = sound.cuffMmHg;
  }
  act({ tick: rig.tick, kind: 'quick-release' });
  wait(TAIL_SECONDS);
  return { actions, endSeconds: rig.seconds, lostMmHg: lostMmHg === null ? null : roundedMark(lostMmHg) };
}

/** What the observer hears, marks and writes of the last inflation of an exercise, whoever's hands it was. */
export function withReading(exercise: Exercise, { reader }: Observer, lostMmHg: number | null): Exercise {
  const played = replay(exercise);
  const { person, cuffMmHg, tracePerSecond } = played;
  const thresholdDb = reader.thresholdDb + backgroundThresholdDb(person.scenario.noiseDbA);
  const fall = lastFall(played, MEANT_MMHG);
  if (fall === null) return exercise;
  const { peakSeconds } = fall;
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

function roundedMark(mmHg: number): number {
  return 2 * Math.round(mmHg / 2);
}

function roundedUp(mmHg: number): number {
  return 10 * Math.ceil(mmHg / 10);
}
