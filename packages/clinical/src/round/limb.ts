import type { ReadingPlace } from './roundReading.js';

type Limb = Pick<ReadingPlace, 'site' | 'side'>;

/** Whether two cuffs squeeze the same arm, or the same leg: only that limb has to rest between them. */
export function isSameLimb(one: Limb, other: Limb): boolean {
  return one.side === other.side && isOfLeg(one) === isOfLeg(other);
}

function isOfLeg({ site }: Limb): boolean {
  return site === 'thigh' || site === 'calf';
}
