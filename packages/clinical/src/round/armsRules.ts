import type { Difference } from './averagingRules.js';
import { ROUND_COMPARISONS as SIDE } from './comparisons.js';
import { ROUND_FIGURES as F } from './figures.js';

/** When the two arms differ: the values of a protocol's `arms` section. */
export type ArmsRules = {
  /** So far apart the higher arm is used. */
  readonly limitMmHg: Difference;
  /** Pairs before a difference counts: two, unless the place repeats none. */
  readonly pairsNeeded: number;
  readonly lookFurtherMmHg: number;
};

export const DEFAULT_ARMS_RULES: ArmsRules = {
  limitMmHg: { comparison: SIDE.escArmMmHg, limit: F.escArmMmHg.value },
  pairsNeeded: F.armPairs.value,
  lookFurtherMmHg: F.lookFurtherMmHg.value,
};
