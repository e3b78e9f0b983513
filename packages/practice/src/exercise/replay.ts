import {
  type Action,
  type BeatStream,
  type Circumstances,
  circumstancesAfter,
  type FeltPulse,
  gaugeFor,
  gaugeLagSeconds,
  type HeartSound,
  type Instrument,
  makePerson,
  type Person,
  type SoundEvent,
  startRig,
  TICKS_PER_SECOND,
  withAnotherGauge,
} from '@evenfall/physiology';
import type { Exercise } from './exercise.js';

type ReplayBeat = { readonly index: number; readonly systolic: number; readonly diastolic: number };

/** A visit played again: every sound and pulse, and traces with `tracePerSecond` points a second from 0. */
export type Replay = {
  readonly person: Person;
  readonly seconds: number;
  readonly tracePerSecond: number;
  readonly cuffMmHg: Float64Array;
  readonly needleMmHg: Float64Array;
  readonly arterialMmHg: Float64Array;
  readonly chestMm: Float64Array;
  readonly sounds: readonly SoundEvent[];
  readonly felt: readonly FeltPulse[];
  /** What was heard at the apex, while the chest piece lay there. */
  readonly heart: readonly HeartSound[];
  /** What a perfect listener would have got on each beat of this visit, whatever the person did meanwhile. */
  readonly beats: readonly ReplayBeat[];
  readonly firstInflationSeconds: number | null;
  /** When the cuff was pumped up from flat, each time, in order. */
  readonly inflations: readonly number[];
};

export const TRACE_PER_SECOND = 50;

/** Plays an exercise from its scenario, seed and actions alone. */
export function replay(
  exercise: Pick<Exercise, 'scenario' | 'seed' | 'circumstances' | 'instrument' | 'actions' | 'seconds'>,
): Replay {
  const person = makePerson(exercise.scenario, exercise.seed);
  const rig = startRig(person, exercise.circumstances, exercise.instrument);
  const step = TICKS_PER_SECOND / TRACE_PER_SECOND;
  const points = Math.floor(exercise.seconds * TRACE_PER_SECOND) + 1;
  const traces = {
    cuffMmHg: new Float64Array(points),
    needleMmHg: new Float64Array(points),
    arterialMmHg: new Float64Array(points),
    chestMm: new Float64Array(points),
  };
  const sounds: SoundEvent[] = [];
  const felt: FeltPulse[] = [];
  const heart: HeartSound[] = [];
  const beats: ReplayBeat[] = [];
  const inflations: number[] = [];
  let next = 0;
  for (let point = 0; point < points; point++) {
    const due: Action[] = [];
    for (; next < exercise.actions.length; next++) {
      const action = exercise.actions[next] as Action;
      if (action.tick >= point * step) break;
      due.push(action);
    }
    const events = rig.advance(point * step, due);
    sounds.push(...events.sounds);
    felt.push(...events.felt);
    heart.push(...events.heart);
    // Beats are further apart than two points of a trace: none is passed over.
    const { beat } = rig;
    if (beat !== null && beat.index !== beats.at(-1)?.index)
      beats.push({ index: beat.index, systolic: beat.systolic, diastolic: beat.diastolic });
    if (rig.inflations > inflations.length) inflations.push(point / TRACE_PER_SECOND);
    const seen = rig.snapshot();
    traces.cuffMmHg[point] = seen.cuffMmHg;
    traces.needleMmHg[point] = seen.needleMmHg;
    traces.arterialMmHg[point] = seen.arterialMmHg;
    traces.chestMm[point] = seen.chestMm;
  }
  return {
    person,
    seconds: exercise.seconds,
    tracePerSecond: TRACE_PER_SECOND,
    ...traces,
    sounds,
    felt,
    heart,
    beats,
    firstInflationSeconds: rig.firstInflationSeconds,
    inflations,
  };
}

/** A trace at an instant, between its points on a straight line; at its ends the end. */
export function traceAt(trace: Float64Array, perSecond: number, seconds: number): number {
  const at = Math.max(0, Math.min(trace.length - 1, seconds * perSecond));
  const below = Math.floor(at);
  const before = trace[below] as number;
  const after = trace[Math.min(below + 1, trace.length - 1)] as number;
  return before + (at - below) * (after - before);
}

/** The circumstances at a second of the visit: those at its start and what hands have changed since. */
export function circumstancesAt(
  exercise: Pick<Exercise, 'circumstances' | 'actions'>,
  seconds: number,
  firstInflationSeconds: number | null,
): Circumstances {
  let now: Circumstances = { ...exercise.circumstances, firstInflationSeconds };
  for (const action of exercise.actions) {
    if (action.tick > seconds * TICKS_PER_SECOND) break;
    now = circumstancesAfter(now, action);
  }
  return now;
}

/** The cuff, hose and gauge at a second of the visit: another cuff may have been put on. */
export function instrumentAt(
  { instrument, actions }: Pick<Exercise, 'instrument' | 'actions'>,
  seconds: number,
): Instrument {
  let now = instrument;
  for (const action of actions) {
    if (action.tick > seconds * TICKS_PER_SECOND) break;
    if (action.kind === 'cuff') now = { ...now, bladder: action.bladder };
    if (action.kind === 'gauge') now = withAnotherGauge(now);
  }
  return now;
}

/** The beats of a visit as they stand at a second of it: from there the same heart goes on beating, whatever is done to the cuff. */
export function beatsAt(
  exercise: Pick<Exercise, 'scenario' | 'seed' | 'circumstances' | 'instrument' | 'actions'>,
  seconds: number,
): BeatStream {
  const rig = startRig(
    makePerson(exercise.scenario, exercise.seed),
    exercise.circumstances,
    exercise.instrument,
  );
  rig.advance(Math.max(rig.tick, Math.floor(seconds * TICKS_PER_SECOND)), exercise.actions);
  return rig.beatsNow();
}

/** What the gauge shows at an instant but for the swing of the pulse and its friction: what an eye that follows the fall reads. */
export function settledNeedle(
  { cuffMmHg, tracePerSecond }: Replay,
  instrument: Instrument,
  seconds: number,
): number {
  return gaugeFor(instrument, traceAt(cuffMmHg, tracePerSecond, seconds - gaugeLagSeconds(instrument)));
}
