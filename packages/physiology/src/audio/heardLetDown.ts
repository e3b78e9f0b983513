import { PROPER } from '../circumstances/circumstances.js';
import { CUFF_FIGURES } from '../cuff/figures.js';
import { instrumentFor } from '../cuff/instrumentFor.js';
import { makePerson } from '../person/makePerson.js';
import type { Action } from '../rig/action.js';
import { type Simulation, simulate } from '../rig/simulate.js';
import { TICKS_PER_SECOND } from '../rig/tick.js';
import type { Scenario } from '../scenario/scenario.js';
import { truth } from '../truth/truthAt.js';
import type { Contact } from './contact.js';
import { AUDIO_FIGURES as F } from './figures.js';

/** A cuff under this is as good as empty. */
const LOWEST_MMHG = 5;
const PUT_ON_SECONDS = 0.6;
const PUMP_FROM_SECONDS = 2;
const HOLD_SECONDS = 1;
const AFTER_SECONDS = 1.2;
const END_SECONDS = 2.2;

/** One inflation and let-down as a listener at the elbow has it, with what the hands do. */
export type HeardLetDown = {
  readonly simulation: Simulation;
  readonly contacts: readonly Contact[];
  readonly seconds: number;
  readonly peakMmHg: number;
  /** When the valve is opened. */
  readonly letDownFromSeconds: number;
};

/**
 * A let-down done as it should be (right cuff, rested, chest piece on the artery, pumped up high enough) at an even rate,
 * from pumping up to the end of the sounds.
 */
export function heardLetDown(scenario: Scenario, seed: number, mmHgPerSecond: number): HeardLetDown {
  const person = makePerson(scenario, seed);
  const instrument = instrumentFor(scenario);
  const begun = { ...PROPER, firstInflationSeconds: PUMP_FROM_SECONDS };
  const { systolic, diastolic } = truth(person, begun, PUMP_FROM_SECONDS, instrument).longRun;
  const peakMmHg = Math.min(
    CUFF_FIGURES.scaleEndMmHg.value,
    Math.ceil((systolic + F.overSystolicMmHg.value) / 10) * 10,
  );
  const goesOn = scenario.soundsToMmHg !== null;
  const endMmHg = goesOn ? LOWEST_MMHG : Math.max(LOWEST_MMHG, diastolic - F.underDiastolicMmHg.value);
  const letDownFromSeconds = PUMP_FROM_SECONDS + peakMmHg / F.pumpedMmHgPerSecond.value + HOLD_SECONDS;
  const emptiedSeconds = letDownFromSeconds + (peakMmHg - endMmHg) / mmHgPerSecond;
  const tick = (seconds: number) => Math.ceil(seconds * TICKS_PER_SECOND);
  const actions: readonly Action[] = [
    {
      tick: tick(PUMP_FROM_SECONDS),
      kind: 'steady-rise',
      mmHgPerSecond: F.pumpedMmHgPerSecond.value,
      toMmHg: peakMmHg,
    },
    { tick: tick(letDownFromSeconds), kind: 'steady-fall', mmHgPerSecond, toMmHg: endMmHg },
    { tick: tick(emptiedSeconds), kind: 'quick-release' },
  ];
  const seconds = emptiedSeconds + END_SECONDS;
  return {
    simulation: simulate(person, PROPER, instrument, actions, seconds),
    contacts: [
      { atSeconds: PUT_ON_SECONDS, kind: 'put-on' },
      { atSeconds: letDownFromSeconds - HOLD_SECONDS / 3, kind: 'tube-knock' },
      { atSeconds: emptiedSeconds + AFTER_SECONDS, kind: 'taken-off' },
    ],
    seconds,
    peakMmHg,
    letDownFromSeconds,
  };
}
