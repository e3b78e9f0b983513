import { type CategoryRules, NO_CATEGORIES } from '../category/rules.js';
import { type CuffRules, DEFAULT_CUFF_RULES } from '../cuff/rules.js';
import { DEFAULT_SCORE_RULES, type ScoreRules } from '../score/rules.js';
import {
  type ActNowOrigins,
  type ActNowRules,
  DEFAULT_ACT_NOW_ORIGINS,
  DEFAULT_ACT_NOW_RULES,
} from './actNowRules.js';
import { type ArmsRules, DEFAULT_ARMS_RULES } from './armsRules.js';
import { DEFAULT_PLAN_RULES, type PlanRules } from './planRules.js';
import { DEFAULT_READINGS_RULES, type ReadingsRules } from './readingsRules.js';
import { DEFAULT_RECHECK_RULES, type RecheckRules } from './recheckRules.js';
import { DEFAULT_SIGNING_RULES, type SigningRules } from './signingRules.js';

/** All rules that bear on a round as a whole. */
export type RoundRules = {
  readonly plan: PlanRules;
  readonly cuff: CuffRules;
  readonly readings: ReadingsRules;
  readonly arms: ArmsRules;
  readonly recheck: RecheckRules;
  readonly actNow: ActNowRules;
  readonly actNowOrigins: ActNowOrigins;
  /** Without a protocol there is none: values are charted and no category is shown. */
  readonly category: CategoryRules;
  readonly score: ScoreRules;
  readonly signing: SigningRules;
};

/** What stands where no protocol was chosen. Alerts are on: a place that chose nothing is warned all the same. */
export const DEFAULT_ROUND_RULES: RoundRules = {
  plan: DEFAULT_PLAN_RULES,
  cuff: DEFAULT_CUFF_RULES,
  readings: { ...DEFAULT_READINGS_RULES, isGeneral: true },
  arms: DEFAULT_ARMS_RULES,
  recheck: DEFAULT_RECHECK_RULES,
  actNow: DEFAULT_ACT_NOW_RULES,
  actNowOrigins: DEFAULT_ACT_NOW_ORIGINS,
  category: NO_CATEGORIES,
  score: DEFAULT_SCORE_RULES,
  signing: DEFAULT_SIGNING_RULES,
};
