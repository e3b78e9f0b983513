import type { Sureness } from '../contract/figure.js';
import { ACT_NOW_CONDITIONS, type ActNowCondition, isFromP95 } from './actNowConditions.js';
import {
  type ActNowId,
  type ActNowOrigins,
  type ActNowRules,
  DEFAULT_ACT_NOW_ORIGINS,
  pregnancyLimits,
  severeLimits,
} from './actNowRules.js';
import { EMERGENCY_FEATURES, type EmergencyFeature, type KnownSigns } from './knownSigns.js';
import { isPressureSevere } from './severe.js';
import { isChild, isSoonAfterBirth } from './whoseLimits.js';

/**
 * Something that somebody must act on at once. `confirmLocally` is true where nobody has confirmed the rule for this
 * place and it was not read in a source: the alert says so, and is an alert all the same.
 */
export type ActNowAlert = {
  readonly condition: ActNowId;
  readonly figures: Readonly<Record<string, number>>;
  readonly source: string;
  readonly sure: Sureness;
  readonly confirmLocally: boolean;
};

/** The version of the conditions, as kept beside each alert. */
export const ACT_NOW_RULE = 'act-now-1';

/**
 * Every condition that holds in what is known, in the order in which it is told; empty when none does, which is no
 * reassurance about parts that are not known. A part that is missing never hides an alert from a part that is there.
 *
 * Errors: none. Source: bedside handbook 3.16, 3.17 and 5.2; DESIGN section 2, principle 8.
 */
export function actNow(
  known: KnownSigns,
  rules: ActNowRules,
  origins: ActNowOrigins = DEFAULT_ACT_NOW_ORIGINS,
): ActNowAlert[] {
  return ACT_NOW_CONDITIONS.flatMap((condition): ActNowAlert[] => {
    if (rules.switchedOff.includes(condition.id)) return [];
    const figures = condition.holds(known, rules);
    return figures === null ? [] : [{ condition: condition.id, figures, ...originOf(condition, origins) }];
  });
}

/** Least sure first. */
const BY_SURENESS: readonly Sureness[] = [
  'memory-low',
  'memory',
  'practice',
  'decision',
  'derived',
  'second-hand',
  'found',
];
const TO_CONFIRM: readonly Sureness[] = ['memory-low', 'memory', 'practice', 'decision'];

/** Where a condition comes from: all its sources, and the least sure of them. What the place set itself is confirmed by it. */
function originOf(
  { own, limits }: ActNowCondition,
  origins: ActNowOrigins,
): Pick<ActNowAlert, 'source' | 'sure' | 'confirmLocally'> {
  const all = [...(own === null ? [] : [{ ...own, isLocal: false }]), ...limits.map((id) => origins[id])];
  const published = all.filter(({ isLocal }) => !isLocal);
  const judged = published.length > 0 ? published : all;
  const sure = BY_SURENESS.find((one) => judged.some((origin) => origin.sure === one)) ?? 'memory-low';
  return {
    source: [...new Set(all.map(({ source }) => source))].join('; '),
    sure,
    confirmLocally: published.some((origin) => TO_CONFIRM.includes(origin.sure)),
  };
}

/** What to ask of a person whose pressure is severe, in the order of the list; nothing when it is not. */
export type FeaturesToAsk = {
  readonly features: readonly EmergencyFeature[];
  /** Pregnancy, or a birth in the last weeks, is not known and would change what to do. */
  readonly pregnancy: boolean;
};

/**
 * The questions that a pressure raises. Features are asked once (`features` null), of a child from its 95th centile
 * on; pregnancy when it is not known and the pressure is severe for somebody pregnant. Source: bedside handbook 3.16.
 */
export function featuresToAsk(known: KnownSigns, rules: ActNowRules): FeaturesToAsk {
  const isRaised = isPressureSevere(known, severeLimits(rules)) || (isChild(known) && isFromP95(known));
  const isAsked = known.features === null && isRaised;
  // A birth long ago says nothing of a pregnancy now.
  const isPregnancyOpen = known.pregnant === null && !isSoonAfterBirth(known, rules);
  return {
    features: isAsked ? EMERGENCY_FEATURES : [],
    pregnancy: isPregnancyOpen && isPressureSevere(known, pregnancyLimits(rules)),
  };
}
