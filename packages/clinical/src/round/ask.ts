import type { Flag } from '../contract/flag.js';
import { type FeaturesToAsk, featuresToAsk } from './actNow.js';
import { ACT_NOW_CONDITIONS } from './actNowConditions.js';
import { type ActNowRules, severeLimits } from './actNowRules.js';
import type { KnownSigns } from './knownSigns.js';
import type { RoundFacts } from './roundFacts.js';
import { isPressureSevere } from './severe.js';
import { mayBePregnant } from './whoseLimits.js';

/** What a reading is that raises the questions: severe, or of a child from its 95th centile (or a short child's) on. */
export type AskCode = 'severe-asks' | 'child-high-asks' | 'short-child-high-asks';

/** What to ask of the person, with the reading that raises it: `systolic` and `diastolic`, as far as it has them. */
export type Asked = FeaturesToAsk & { readonly why: readonly Flag<AskCode>[] };

const CHILD_CRISIS = ACT_NOW_CONDITIONS.filter(({ id }) => id === 'child-crisis');

/**
 * The questions that the readings of a round raise. A lower reading after it takes none of them back; the reading that
 * is named is the last one of the most serious kind.
 *
 * @param isChildKnown whether sex, age and height of a child are known, so that the centiles are its own
 *
 * Source: bedside handbook 3.16.
 */
export function askOf(
  each: readonly KnownSigns[],
  facts: RoundFacts,
  isChildKnown: boolean,
  rules: ActNowRules,
): Asked {
  const asked = each.map((known) => ({ known, ...featuresToAsk(known, rules) }));
  const raising = asked.filter(({ features }) => features.length > 0).map(({ known }) => known);
  const named = raising.findLast((known) => isSevere(known, rules)) ?? raising.at(-1);
  return {
    features: asked.find(({ features }) => features.length > 0)?.features ?? [],
    pregnancy: mayBePregnant(facts) && asked.some(({ pregnancy }) => pregnancy),
    why: named === undefined ? [] : [whyOf(named, isChildKnown, rules)],
  };
}

function whyOf(known: KnownSigns, isChildKnown: boolean, rules: ActNowRules): Flag<AskCode> {
  const { systolic, diastolic } = known;
  const figures = {
    ...(systolic === null ? {} : { systolic }),
    ...(diastolic === null ? {} : { diastolic }),
  };
  if (isSevere(known, rules)) return { code: 'severe-asks', figures };
  return { code: isChildKnown ? 'child-high-asks' : 'short-child-high-asks', figures };
}

function isSevere(known: KnownSigns, rules: ActNowRules): boolean {
  return (
    isPressureSevere(known, severeLimits(rules)) ||
    CHILD_CRISIS.some((condition) => condition.holds(known, rules) !== null)
  );
}
