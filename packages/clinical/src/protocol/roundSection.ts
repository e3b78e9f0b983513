import { ROUND_FIGURES as F } from '../round/figures.js';
import { type PlanRules, DEFAULT_PLAN_RULES as RULES } from '../round/planRules.js';
import { ROUND_SIGNS } from '../round/step.js';
import { choicesField, numberField } from './fieldShapes.js';
import type { FieldShape, Section } from './shape.js';

/** The schema of protocols that first had this section. */
const SINCE = 3;
/** The schema that first had the rest. */
const REST_SINCE = 4;

/** What a round takes as a matter of course, and in which order the pressure is found. */
export const ROUND_SECTION: Section<PlanRules> = {
  fields: {
    wantedSigns: choicesField(
      ROUND_SIGNS,
      RULES.wantedSigns,
      {
        meaning: 'signs that need a value, or a reason for having none, before a round is signed',
        source: 'bedside handbook 7.1',
        sure: 'practice',
      },
      SINCE,
    ),
    prepareFirst: yes(
      RULES.prepareFirst,
      'a round begins with making the person ready',
      'bedside handbook 3.1 and 3.8',
      'second-hand',
    ),
    palpateFirst: yes(
      RULES.palpateFirst,
      'the systolic is felt before the sounds are listened for, so that no gap is missed',
      'bedside handbook 3.4 and 3.5',
      'second-hand',
    ),
    bothArmsFirstTime: yes(
      RULES.bothArmsFirstTime,
      'the first pressure of a person is taken on both arms',
      'bedside handbook 3.12 (ISH 2020, NICE NG136)',
      'found',
    ),
    restSeconds: numberField(F.restSeconds, [0, 900], null, REST_SINCE),
  },
  agree: () => [],
};

function yes(value: boolean, meaning: string, source: string, sure: FieldShape['sure']): FieldShape<boolean> {
  return { kind: 'yes-no', value, unit: null, meaning, source, sure, since: SINCE };
}
