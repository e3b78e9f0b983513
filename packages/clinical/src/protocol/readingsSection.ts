import { AVERAGING_RULE_IDS, averagingRule } from '../round/averagingRules.js';
import { ROUND_COMPARISONS as SIDE } from '../round/comparisons.js';
import { ROUND_FIGURES as F } from '../round/figures.js';
import { type ReadingsRules, DEFAULT_READINGS_RULES as RULES } from '../round/readingsRules.js';
import { choiceField, numberField } from './fieldShapes.js';
import type { Disagreement, Section } from './shape.js';

/** The schema of protocols that first had this section. */
const SINCE = 3;

/** How many readings, how far apart, which average. The bounds of a local value are this project's. */
export const READINGS_SECTION: Section<ReadingsRules> = {
  fields: {
    rule: choiceField(
      AVERAGING_RULE_IDS,
      RULES.rule,
      {
        meaning: 'the guideline by which readings are taken and averaged',
        source: F.escReadings.source,
        sure: F.escReadings.sure,
      },
      SINCE,
    ),
    gapSeconds: numberField(
      { ...F.escGapSeconds, meaning: 'least time between two readings' },
      [15, 600],
      null,
      SINCE,
    ),
    difference: {
      kind: 'limit',
      low: 2,
      high: 30,
      comparisons: ['>', '>='],
      orNone: true,
      value: RULES.difference,
      unit: 'mmHg',
      // A field is that of whichever guideline is in force, so it names none.
      meaning: 'systolic or diastolic of two readings in a row this far apart: another',
      source: F.escDifferenceMmHg.source,
      sure: F.escDifferenceMmHg.sure,
      since: SINCE,
    },
    irregularReadings: numberField(F.irregularReadings, [2, 10], SIDE.irregularReadings, SINCE),
    irregularAverage: choiceField(
      ['all', 'by-rule'],
      RULES.irregularAverage,
      {
        meaning: 'which readings of an irregular pulse are averaged: all, or those of the guideline',
        source: F.irregularReadings.source,
        sure: F.irregularReadings.sure,
      },
      SINCE,
    ),
    stopAtReadings: numberField(F.stopAtReadings, [3, 10], SIDE.stopAtReadings, SINCE),
  },
  agree,
};

/** No rule asks for more readings than may be taken; two are close only by some difference. */
function agree({ rule, difference, irregularReadings, stopAtReadings }: ReadingsRules): Disagreement[] {
  const faults: Disagreement[] = [];
  if (difference === null && averagingRule(rule).method === 'mean-of-close-pair') {
    faults.push({ key: 'difference', expected: 'difference-for-close-pair', figures: {} });
  }
  if (irregularReadings > stopAtReadings) {
    faults.push({ key: 'irregularReadings', expected: 'at-most-stop', figures: { stopAtReadings } });
  }
  return faults;
}
