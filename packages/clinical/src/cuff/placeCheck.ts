import type { Flag } from '../contract/flag.js';
import { armState } from './arms.js';
import type { ArmFactKind, PlaceFacts } from './facts.js';
import { CUFF_FIGURES as F } from './figures.js';
import type { CuffSite, Side } from './places.js';
import type { CuffRules } from './rules.js';

/** Who takes an arm that is better left alone, and why. */
export type ArmOverride = { readonly by: string; readonly reason: string };

export type PlaceFlagCode = 'other-site' | 'thigh-reads-higher' | 'arm-overridden';

/**
 * Whether the cuff may go there. `never` cannot be overridden; `needs-reason` needs a named person and a reason.
 * `isAveraged` is whether the reading joins averages, categories and scores: only the upper arm's does.
 */
export type PlaceCheck = {
  readonly allowed: 'yes' | 'needs-reason' | 'never';
  readonly because: readonly ArmFactKind[];
  readonly isAveraged: boolean;
  readonly flags: readonly Flag<PlaceFlagCode>[];
};

const ARM_SITES: readonly CuffSite[] = ['upper-arm', 'forearm', 'wrist'];

/** Whether a reading from this site joins averages, categories and scores. Source: docs/conventions.md section 6. */
export function isAveragedSite(site: CuffSite): boolean {
  return site === 'upper-arm';
}

/**
 * A chosen place held against the facts of the day (`YYYY-MM-DD`, local). What bars an arm bars its wrist too.
 * Source: bedside handbook 3.15; docs/conventions.md section 6.
 */
export function placeCheck(
  { site, side }: { readonly site: CuffSite; readonly side: Side },
  facts: PlaceFacts,
  day: string,
  override: ArmOverride | null,
  rules: CuffRules,
): PlaceCheck {
  const { level, because } = ARM_SITES.includes(site)
    ? armState(side, facts, day, rules)
    : { level: 'free' as const, because: [] };
  const isNamed = override !== null && override.by.trim() !== '' && override.reason.trim() !== '';
  const isOverridden = level === 'prefer-other' && isNamed;
  const allowed = level === 'never' ? 'never' : level === 'free' || isOverridden ? 'yes' : 'needs-reason';
  return { allowed, because, isAveraged: isAveragedSite(site), flags: placeFlags(site, isOverridden) };
}

/** What a place says of a reading taken there. Source: bedside handbook 3.15. */
export function placeFlags(site: CuffSite, isOverridden: boolean): Flag<PlaceFlagCode>[] {
  const flags: Flag<PlaceFlagCode>[] = [];
  if (isOverridden) flags.push({ code: 'arm-overridden', figures: {} });
  if (!isAveragedSite(site)) flags.push({ code: 'other-site', figures: {} });
  if (site === 'thigh') {
    const figures = {
      higherByPercentLow: F.thighHigherLowPercent.value,
      higherByPercentHigh: F.thighHigherHighPercent.value,
    };
    flags.push({ code: 'thigh-reads-higher', figures });
  }
  return flags;
}
