import { DEFAULT_SIGNING_RULES as RULES, type SigningRules } from '../round/signingRules.js';
import type { Origin } from './fieldShapes.js';
import type { FieldShape, Section } from './shape.js';

/** The schema of protocols that first had this section. */
const SINCE = 3;

/** What signing asks for, and what is left of a class. */
export const SIGNING_SECTION: Section<SigningRules> = {
  fields: {
    countersignLearners: yes(RULES.countersignLearners, {
      meaning: 'a learner’s round is preliminary until it is countersigned',
      source: 'bedside handbook 7.5',
      sure: 'practice',
    }),
    deleteClassAtEnd: yes(RULES.deleteClassAtEnd, {
      meaning: 'rounds of a class are deleted at the end of its session unless teacher and subject keep them',
      source: 'learners are the subjects of each other: nothing of them is kept without need',
      sure: 'decision',
    }),
  },
  agree: () => [],
};

function yes(value: boolean, { meaning, source, sure }: Origin): FieldShape<boolean> {
  return { kind: 'yes-no', value, unit: null, meaning, source, sure, since: SINCE };
}
