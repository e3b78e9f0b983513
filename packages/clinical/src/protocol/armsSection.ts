import { type ArmsRules, DEFAULT_ARMS_RULES as RULES } from '../round/armsRules.js';
import { ROUND_COMPARISONS as SIDE } from '../round/comparisons.js';
import { ROUND_FIGURES as F } from '../round/figures.js';
import { numberField } from './fieldShapes.js';
import type { Section } from './shape.js';

/** The schema of protocols that first had this section. */
const SINCE = 3;

/** When the arms differ, and which is used then. The bounds of a local value are this project's. */
export const ARMS_SECTION: Section<ArmsRules> = {
  fields: {
    limitMmHg: {
      kind: 'limit',
      low: 5,
      high: 30,
      comparisons: ['>', '>='],
      orNone: false,
      value: RULES.limitMmHg,
      unit: 'mmHg',
      meaning: 'systolic of one arm this far from that of the other, on a repeat: the higher arm',
      source: F.escArmMmHg.source,
      sure: F.escArmMmHg.sure,
      since: SINCE,
    },
    pairsNeeded: numberField(F.armPairs, [1, 3], null, SINCE),
    lookFurtherMmHg: numberField(F.lookFurtherMmHg, [10, 40], SIDE.lookFurtherMmHg, SINCE),
  },
  agree: () => [],
};
