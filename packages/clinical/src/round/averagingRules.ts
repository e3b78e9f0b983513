import type { Comparison } from '../contract/threshold.js';
import { ROUND_COMPARISONS as SIDE } from './comparisons.js';
import { ROUND_FIGURES as F } from './figures.js';

/** Which readings make the value: see `averageReadings`. */
export type AveragingMethod =
  /** Mean of every reading. */
  | 'mean-of-all'
  /** Mean of the last two: of three readings the second and the third. */
  | 'mean-of-last-two'
  /** Mean of the last two in a row that do not differ. */
  | 'mean-of-close-pair'
  /** The lower of the last two as a pair, by systolic, then diastolic. */
  | 'lower-of-last-two';

/** How far apart two readings may be, and whether that distance itself is already too far. */
export type Difference = { readonly comparison: Comparison; readonly limit: number };

/** When the first reading alone is enough: never, both numbers below a limit, or below the limits given for a child. */
export type OneEnough =
  | { readonly when: 'never' }
  | { readonly when: 'below'; readonly systolic: number; readonly diastolic: number }
  | { readonly when: 'not-raised' };

/**
 * A guideline's rule: how many readings, how far apart, which average. Numbers in readings, s and mmHg. Where it comes
 * from is in `averagingOrigins`.
 */
export type AveragingRule = {
  readonly id: AveragingRuleId;
  readonly method: AveragingMethod;
  /** Fewest readings for a value, where the first alone is not enough. */
  readonly least: number;
  readonly oneEnough: OneEnough;
  /** Two in a row that differ by this ask for another; null where the guideline has no such rule. */
  readonly difference: Difference | null;
  /** Least time between two readings. */
  readonly gapSeconds: number;
};

/** A guideline has one id everywhere; the table of a journal without a guideline's name has one of our own. */
export const AVERAGING_RULE_IDS = [
  'esc-2024',
  'esc-esh-2018',
  'esh-2023',
  'ish-2020',
  'acc-aha-2017',
  'acc-aha-2025',
  'aha-2005',
  'two-within-10',
  'jsh-2019',
  'nice-ng136',
  'hypertension-canada',
  'korea-2013',
  'aap-2017',
  'who-2021',
] as const;
export type AveragingRuleId = (typeof AVERAGING_RULE_IDS)[number];

/**
 * In the order of the handbook. "Mean of the second and third" is the mean of the last two where more were taken,
 * since another is taken only because the earlier ones would not do (our reading; no guideline says).
 * Source: bedside handbook 3.10.
 */
export const AVERAGING_RULES: readonly AveragingRule[] = [
  rule(
    'esc-2024',
    'mean-of-last-two',
    F.escReadings.value,
    F.escGapSeconds.value,
    differ('escDifferenceMmHg'),
  ),
  rule(
    'esc-esh-2018',
    'mean-of-last-two',
    F.escEshReadings.value,
    F.escEshGapSeconds.value,
    differ('escEshDifferenceMmHg'),
  ),
  rule(
    'esh-2023',
    'mean-of-last-two',
    F.eshReadings.value,
    F.eshGapSeconds.value,
    differ('eshDifferenceMmHg'),
  ),
  rule('ish-2020', 'mean-of-last-two', F.ishReadings.value, F.ishGapSeconds.value, {
    oneEnough: {
      when: 'below',
      systolic: F.ishOneEnoughSystolic.value,
      diastolic: F.ishOneEnoughDiastolic.value,
    },
  }),
  rule('acc-aha-2017', 'mean-of-all', F.acc2017Readings.value, F.acc2017GapSeconds.value),
  rule('acc-aha-2025', 'mean-of-all', F.acc2025Readings.value, F.acc2025GapSeconds.value),
  rule('aha-2005', 'mean-of-all', F.ahaReadings.value, F.ahaGapSeconds.value, differ('ahaDifferenceMmHg')),
  rule(
    'two-within-10',
    'mean-of-close-pair',
    F.jaccReadings.value,
    F.gapSeconds.value,
    differ('jaccDifferenceMmHg'),
  ),
  rule(
    'jsh-2019',
    'mean-of-close-pair',
    F.jshReadings.value,
    F.jshGapSeconds.value,
    differ('jshDifferenceMmHg'),
  ),
  rule('nice-ng136', 'lower-of-last-two', F.niceReadings.value, F.gapSeconds.value, {
    oneEnough: {
      when: 'below',
      systolic: F.niceOneEnoughSystolic.value,
      diastolic: F.niceOneEnoughDiastolic.value,
    },
    ...differ('niceDifferenceMmHg'),
  }),
  rule('hypertension-canada', 'mean-of-all', F.canadaReadings.value, F.canadaGapSeconds.value),
  rule('korea-2013', 'mean-of-all', F.koreaReadings.value, F.koreaGapSeconds.value),
  rule('aap-2017', 'mean-of-all', F.aapReadings.value, F.gapSeconds.value, {
    oneEnough: { when: 'not-raised' },
  }),
  rule('who-2021', 'mean-of-all', F.whoReadings.value, F.whoGapSeconds.value),
];

export function averagingRule(id: AveragingRuleId): AveragingRule {
  return AVERAGING_RULES.find((one) => one.id === id) as AveragingRule;
}

function rule(
  id: AveragingRuleId,
  method: AveragingMethod,
  least: number,
  gapSeconds: number,
  more: Partial<Pick<AveragingRule, 'oneEnough' | 'difference'>> = {},
): AveragingRule {
  return { id, method, least, gapSeconds, oneEnough: { when: 'never' }, difference: null, ...more };
}

function differ(key: keyof typeof F & keyof typeof SIDE): Pick<AveragingRule, 'difference'> {
  return { difference: { comparison: SIDE[key], limit: F[key].value } };
}
