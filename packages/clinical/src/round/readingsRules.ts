import { type AveragingRuleId, averagingRule, type Difference } from './averagingRules.js';
import { ROUND_FIGURES as F } from './figures.js';

/** Which readings of an irregular pulse are averaged: all of them, or those that the guideline's rule takes. */
export type IrregularAverage = 'all' | 'by-rule';

/** How many readings, how far apart, which average: the values of a protocol's `readings` section. */
export type ReadingsRules = {
  readonly rule: AveragingRuleId;
  readonly gapSeconds: number;
  /** Null: the guideline asks for no other reading when two differ. */
  readonly difference: Difference | null;
  readonly irregularReadings: number;
  readonly irregularAverage: IrregularAverage;
  readonly stopAtReadings: number;
  /** Whether they stand because no protocol was chosen: then they are the general rule and no guideline of the place. */
  readonly isGeneral?: boolean;
};

/** The rules of a guideline, with what no guideline says as everywhere. */
export function readingsRulesOf(rule: AveragingRuleId): ReadingsRules {
  const { gapSeconds, difference } = averagingRule(rule);
  return {
    rule,
    gapSeconds,
    difference,
    irregularReadings: F.irregularReadings.value,
    irregularAverage: 'all',
    stopAtReadings: F.stopAtReadings.value,
  };
}

export const DEFAULT_READINGS_RULES: ReadingsRules = readingsRulesOf('esc-2024');
