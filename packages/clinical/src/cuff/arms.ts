import type { Flag } from '../contract/flag.js';
import { passes } from '../contract/threshold.js';
import { CUFF_COMPARISONS as SIDE } from './comparisons.js';
import { type ArmFactKind, holdsOn, NEVER_FACTS, type PlaceFacts } from './facts.js';
import { CUFF_FIGURES as F } from './figures.js';
import { type CuffSite, SIDES, type Side } from './places.js';
import type { CuffRules } from './rules.js';

/** Whether an arm may be used: freely, with a named person and a reason, or never. */
export type ArmLevel = 'free' | 'prefer-other' | 'never';

/** One arm on one day: its level and the facts that make it so, in the order given. */
export type ArmState = { readonly level: ArmLevel; readonly because: readonly ArmFactKind[] };

/**
 * The level of an arm on a day (`YYYY-MM-DD`, local). The strongest fact that holds then decides; a rule of the
 * place cannot free an arm that is barred by a fistula, graft, shunt, drip or amputation.
 * Source: bedside handbook 3.15.
 */
export function armState(side: Side, facts: PlaceFacts, day: string, rules: CuffRules): ArmState {
  const kinds = facts.arms.filter((fact) => fact.side === side && holdsOn(fact, day)).map(({ kind }) => kind);
  const never = kinds.filter(
    (kind) => rules.neverFor.includes(kind) || NEVER_FACTS.some((one) => one === kind),
  );
  if (never.length > 0) return { level: 'never', because: never };
  const prefer = kinds.filter((kind) => rules.preferOtherFor.includes(kind));
  return prefer.length > 0 ? { level: 'prefer-other', because: prefer } : { level: 'free', because: [] };
}

export type PlaceReasonCode = 'arm-barred' | 'prefer-other-arm' | 'both-arms-barred' | 'child-right-arm';

/** Where to put the cuff: the arms that may be used, the better first; none if both are barred, then a thigh. */
export type ArmChoice = {
  readonly sides: readonly Side[];
  readonly site: CuffSite;
  readonly why: readonly Flag<PlaceReasonCode>[];
};

/**
 * Which arm to take: a free one before one that is better left alone, the right before the left where nothing
 * else decides (for a child by its reference tables, for an adult only so that there is an order). Both barred:
 * the thigh. Source: bedside handbook 3.1, 3.12 and 3.15.
 */
export function armChoice(facts: PlaceFacts, day: string, rules: CuffRules): ArmChoice {
  const levels = SIDES.map((side) => ({ side, ...armState(side, facts, day, rules) }));
  const usable = levels.filter(({ level }) => level !== 'never');
  const sides = [
    ...usable.filter(({ level }) => level === 'free'),
    ...usable.filter(({ level }) => level === 'prefer-other'),
  ].map(({ side }) => side);
  if (sides.length === 0) {
    const figures = {
      higherByPercentLow: F.thighHigherLowPercent.value,
      higherByPercentHigh: F.thighHigherHighPercent.value,
    };
    return { sides, site: 'thigh', why: [{ code: 'both-arms-barred', figures }] };
  }
  const isRightFree = levels.some(({ side, level }) => side === 'right' && level === 'free');
  const isChild =
    facts.ageMonths !== null && passes(facts.ageMonths, SIDE.childUnderMonths, rules.childUnderMonths);
  const why: Flag<PlaceReasonCode>[] = [];
  if (levels.some(({ level }) => level === 'never')) why.push({ code: 'arm-barred', figures: {} });
  if (levels.some(({ level }) => level === 'prefer-other')) {
    why.push({ code: 'prefer-other-arm', figures: {} });
  }
  if (isChild && isRightFree) {
    why.push({ code: 'child-right-arm', figures: { childUnderMonths: rules.childUnderMonths } });
  }
  return { sides, site: 'upper-arm', why };
}
