import { Air } from './air.js';
import { CUFF_FIGURES as F } from './figures.js';
import type { Bladder } from './instrument.js';

/** What an ordinary hand gives at most, of a full stroke. */
const ORDINARY_SHARE = F.ordinaryEfficiency.value / F.bulbEfficiency.value;

/**
 * What share of a full stroke a hand gives that watches the needle, with an effort of 1 for an ordinary squeeze: the
 * fuller the cuff the less of the bulb, so that the needle goes up in even steps.
 *
 * @param mmHg what is in the cuff
 * @param effort 0 to 2: half an ordinary squeeze is 0.5, all that the hand has 2
 */
export function strokeOf(bladder: Bladder, isLoose: boolean, mmHg: number, effort: number): number {
  const air = new Air(bladder, isLoose);
  const ml = air.amountAt(mmHg + F.stepMmHg.value * effort) - air.amountAt(mmHg);
  const drawn = (ml * (F.airMmHg.value + mmHg)) / F.airMmHg.value / F.bulbEfficiency.value;
  return Math.max(0, Math.min(1, ORDINARY_SHARE * effort, drawn / F.bulbMl.value));
}
