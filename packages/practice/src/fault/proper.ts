import {
  bladderFor,
  type Circumstances,
  type Instrument,
  type Person,
  PROPER,
  SOUND_INSTRUMENT,
} from '@evenfall/physiology';

/**
 * The same visit as the textbook has it: everything that is in the observer's hands put right. Who measures, the
 * posture, the arm and when the cuff was first pumped up stay as they were.
 */
export function properOf(circumstances: Circumstances): Circumstances {
  return {
    ...PROPER,
    restMinutes: Math.max(PROPER.restMinutes, circumstances.restMinutes),
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
