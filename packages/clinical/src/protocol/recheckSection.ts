import { ROUND_FIGURES as F } from '../round/figures.js';
import type { RecheckRules } from '../round/recheckRules.js';
import { numberField } from './fieldShapes.js';
import type { Disagreement, Section } from './shape.js';

/** The schema of protocols that first had this section. */
const SINCE = 3;

/** When a pressure is looked at again. The bounds of a local value are this project's. */
export const RECHECK_SECTION: Section<RecheckRules> = {
  fields: {
    atOnceWithinSeconds: numberField(F.atOnceWithinSeconds, [15, 300], null, SINCE),
    pregnancyWithinSeconds: numberField(F.pregnancyWithinSeconds, [60, 900], null, SINCE),
    severeRestSeconds: numberField(F.severeRestSeconds, [60, 900], null, SINCE),
    abnormalSoonSeconds: numberField(F.abnormalSoonSeconds, [30, 600], null, SINCE),
    abnormalSoonWithinSeconds: numberField(F.abnormalSoonWithinSeconds, [30, 900], null, SINCE),
    abnormalLaterSeconds: numberField(F.abnormalLaterSeconds, [60, 3600], null, SINCE),
    abnormalLaterWithinSeconds: numberField(F.abnormalLaterWithinSeconds, [60, 7200], null, SINCE),
  },
  agree,
};

/** A repeat is not due before it may be taken, and the second one comes after the first. */
function agree(rules: RecheckRules): Disagreement[] {
  const pairs = [
    ['abnormalSoonSeconds', 'abnormalSoonWithinSeconds'],
    ['abnormalSoonWithinSeconds', 'abnormalLaterSeconds'],
    ['abnormalLaterSeconds', 'abnormalLaterWithinSeconds'],
  ] as const;
  return pairs.flatMap(([earlier, later]): Disagreement[] =>
    rules[earlier] <= rules[later]
      ? []
      : [{ key: earlier, expected: 'not-after', figures: { laterSeconds: rules[later] } }],
  );
}
