import { bladderFor } from '../circumstances/cuffSize.js';
import type { Scenario } from '../scenario/scenario.js';
import { type Instrument, SOUND_INSTRUMENT } from './instrument.js';

/** The gauge that comes with a scenario, with the bladder that fits its arm. */
export function instrumentFor(scenario: Scenario): Instrument {
  return { ...SOUND_INSTRUMENT, bladder: bladderFor(scenario.armCm), ...scenario.instrument };
}
