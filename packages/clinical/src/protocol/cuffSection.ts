import { CUFF_COMPARISONS as SIDE } from '../cuff/comparisons.js';
import { ARM_FACTS, NEVER_FACTS } from '../cuff/facts.js';
import { CUFF_FIGURES as F } from '../cuff/figures.js';
import { type CuffRules, DEFAULT_CUFF_RULES as RULES } from '../cuff/rules.js';
import { CUFF_SCHEME_IDS } from '../cuff/schemes.js';
import { choiceField, choicesField, numberField } from './fieldShapes.js';
import type { Disagreement, Section } from './shape.js';

/** The schema of protocols that first had this section. */
const SINCE = 3;

/** Choosing a cuff and a place for it. The bounds of a local value are this project's. */
export const CUFF_SECTION: Section<CuffRules> = {
  fields: {
    scheme: choiceField(
      CUFF_SCHEME_IDS,
      RULES.scheme,
      {
        meaning: 'the table by which a cuff is chosen for an arm',
        source: F.ahaSmallAdultArm.source,
        sure: F.ahaSmallAdultArm.sure,
      },
      SINCE,
    ),
    neverFor: choicesField(
      ARM_FACTS,
      RULES.neverFor,
      {
        meaning: 'what bars an arm altogether; a fistula, graft, shunt, drip or amputation always does',
        source: 'bedside handbook 3.15',
        sure: 'practice',
      },
      SINCE,
    ),
    preferOtherFor: choicesField(
      ARM_FACTS,
      RULES.preferOtherFor,
      {
        meaning: 'what makes the other arm better; this one then needs a name and a reason',
        source: 'bedside handbook 3.15',
        sure: 'practice',
      },
      SINCE,
    ),
    childUnderMonths: numberField(F.childUnderMonths, [144, 252], SIDE.childUnderMonths, SINCE),
    latePregnancyFromWeeks: numberField(
      F.latePregnancyFromWeeks,
      [12, 42],
      SIDE.latePregnancyFromWeeks,
      SINCE,
    ),
  },
  agree,
};

/** No place may free an arm with a fistula, graft, shunt, drip or amputation. */
function agree({ neverFor }: CuffRules): Disagreement[] {
  if (NEVER_FACTS.every((fact) => neverFor.includes(fact))) return [];
  return [{ key: 'neverFor', expected: 'never-facts-kept', figures: {} }];
}
