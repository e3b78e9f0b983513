import {
  bladderFor,
  type Circumstances,
  type Instrument,
  type Person,
  PROPER,
  SOUND_INSTRUMENT,
} from '@evenfall/physiology';

/** Minutes of sitting at the start of a visit with which there were five of them `seconds` into it; what was longer stays. */
export function restedBy(seconds: number, restMinutes: number): number {
  return Math.max(PROPER.restMinutes - seconds / 60, restMinutes);
}

/**
 * The same visit as the textbook has it for a cuff pumped up at a second of it: everything that is in the observer's hands
 * put right. Who measures, the posture, the arm and when the cuff was first pumped up stay as they were.
 */
export function properOf(circumstances: Circumstances, seconds: number): Circumstances {
  return {
    ...PROPER,
    restMinutes: restedBy(seconds, circumstances.restMinutes),
    measuredBy: circumstances.measuredBy,
    observerMinutes: circumstances.observerMinutes,
    firstInflationSeconds: circumstances.firstInflationSeconds,
    posture: circumstances.posture,
    standingMinutes: circumstances.standingMinutes,
    arm: circumstances.arm,
  };
}

/** A sound gauge and hose with the bladder that the arm asks for. */
export function properInstrument(person: Person, instrument: Instrument): Instrument {
  return { ...SOUND_INSTRUMENT, gauge: instrument.gauge, bladder: bladderFor(person.scenario.armCm) };
}
