import { DEFLATION_COMPARISONS as SIDE } from '../deflation/comparisons.js';
import { DEFLATION_FIGURES as F } from '../deflation/figures.js';
import type { InflationRules } from '../deflation/rules.js';
import { type Bounds, numberField } from './fieldShapes.js';
import type { Disagreement, FieldShape, Section } from './shape.js';

/** The schema of protocols that first had this section. */
const SINCE = 3;

/** Pumping up. The margin is a setting from 10 to 40 (bedside handbook 3.5); the other bounds are this project's. */
export const INFLATION_SECTION: Section<InflationRules> = {
  fields: {
    marginMmHg: numberField(F.marginMmHg, [10, 40], null, SINCE),
    smallMarginMmHg: limit('smallMarginMmHg', [0, 40]),
    insideWithinMmHg: limit('insideWithinMmHg', [0, 20]),
    gapAboveBackMmHg: limit('gapAboveBackMmHg', [0, 40]),
    gapAboveLostMmHg: limit('gapAboveLostMmHg', [0, 40]),
    waitAfterEstimateSeconds: limit('waitAfterEstimateSeconds', [0, 120]),
    waitAfterReadingSeconds: limit('waitAfterReadingSeconds', [0, 600]),
  },
  agree,
};

function limit(id: Exclude<keyof InflationRules, 'marginMmHg'>, bounds: Bounds): FieldShape<number> {
  return numberField(F[id], bounds, SIDE[id], SINCE);
}

/** A margin as it is asked for is not flagged as small. */
function agree({ marginMmHg, smallMarginMmHg }: InflationRules): Disagreement[] {
  if (smallMarginMmHg <= marginMmHg) return [];
  return [{ key: 'smallMarginMmHg', expected: 'not-above-margin', figures: { marginMmHg } }];
}
