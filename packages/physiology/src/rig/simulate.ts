import type { HeartSound } from '../apex/heartSound.js';
import type { Circumstances } from '../circumstances/circumstances.js';
import type { Instrument } from '../cuff/instrument.js';
import type { Beat } from '../heart/beat.js';
import { beats } from '../heart/beats.js';
import type { Person } from '../person/person.js';
import type { FeltPulse, SoundEvent } from '../sound/soundEvent.js';
import type { Truth } from '../truth/truth.js';
import { truth } from '../truth/truthAt.js';
import type { Action } from './action.js';
import { startRig } from './rig.js';
import { TICKS_PER_SECOND } from './tick.js';

/** A whole visit: what was true, and what eyes, ears and fingers got of it. */
export type Simulation = {
  readonly truth: Truth;
  readonly beats: readonly Beat[];
  readonly sounds: readonly SoundEvent[];
  readonly felt: readonly FeltPulse[];
  /** What was heard at the apex, while the chest piece lay there. */
  readonly heart: readonly HeartSound[];
  /** At each `tracePerSecond`-th of a second from the start: what the gauge showed and what was in the cuff, mmHg. */
  readonly tracePerSecond: number;
  readonly needle: Float64Array;
  readonly cuff: Float64Array;
};

/** Traces have this many points a second. */
const TRACE_PER_SECOND = 50;

/** The visit from the person's origin on, for so many seconds. The truth is that of the middle of it. */
export function simulate(
  person: Person,
  circumstances: Circumstances,
  instrument: Instrument,
  actions: readonly Action[],
  seconds: number,
): Simulation {
  const rig = startRig(person, circumstances, instrument);
  const step = TICKS_PER_SECOND / TRACE_PER_SECOND;
  const points = Math.floor(seconds * TRACE_PER_SECOND) + 1;
  const needle = new Float64Array(points);
  const cuff = new Float64Array(points);
  const sounds: SoundEvent[] = [];
  const felt: FeltPulse[] = [];
  const heart: HeartSound[] = [];
  const inOrder = [...actions].sort((a, b) => a.tick - b.tick);
  const start = rig.tick;
  let next = 0;
  for (let point = 0; point < points; point++) {
    const toTick = start + point * step;
    const due: Action[] = [];
    for (; next < inOrder.length && (inOrder[next] as Action).tick < toTick; next++)
      due.push(inOrder[next] as Action);
    const events = rig.advance(toTick, due);
    sounds.push(...events.sounds);
    felt.push(...events.felt);
    heart.push(...events.heart);
    needle[point] = rig.needleMmHg;
    cuff[point] = rig.cuffMmHg;
  }
  const from = person.originSeconds;
  const asItWas = { ...circumstances, firstInflationSeconds: rig.firstInflationSeconds };
  return {
    truth: truth(person, asItWas, from + seconds / 2, instrument),
    beats: beats(person, asItWas, from, from + seconds),
    sounds,
    felt,
    heart,
    tracePerSecond: TRACE_PER_SECOND,
    needle,
    cuff,
  };
}
