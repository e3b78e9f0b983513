import {
  type Circumstances,
  COUNT_RULE,
  type Count,
  countResult,
  isVoid,
  type VoidCount,
  voidResult,
} from '@evenfall/clinical';
import type { CountContent, RateTyped } from './count.js';
import type { InForce } from './inForce.js';
import { keptCircumstances } from './keptCircumstances.js';
import type { Override } from './shared.js';

/** What was done, and what was added by hand. */
export type CountEvidence = {
  readonly count: Count | VoidCount;
  readonly circumstances: Circumstances;
  /** Whether a rate was typed, and how far its window is known; absent for a number that was counted. */
  readonly rateTyped?: RateTyped | null;
  readonly override: Override;
  readonly note: string | null;
};

/** The content of a count's entry, its value made from its evidence by the rules in force. */
export function chartCount(done: CountEvidence, inForce: InForce, program: string): CountContent {
  const { count } = done;
  const circumstances = keptCircumstances(done.circumstances);
  const value = isVoid(count) ? voidResult(count) : countResult(count, circumstances, inForce.countRules);
  return {
    evidence: { count: { ...count }, circumstances, rateTyped: done.rateTyped ?? null },
    value: copied(value),
    override: done.override,
    computedBy: {
      program,
      rule: COUNT_RULE,
      preset: inForce.presets.count ?? null,
      presetVersion: inForce.presetVersion,
    },
    note: done.note,
  };
}

function copied(
  value: ReturnType<typeof countResult> | ReturnType<typeof voidResult>,
): CountContent['value'] {
  const flags = value.flags.map(({ code, figures }) => ({ code, figures: { ...figures } }));
  const why = value.why.map(({ code, figures }) => ({ code, figures: { ...figures } }));
  return {
    perMinute: value.perMinute,
    stepPerMinute: value.stepPerMinute,
    lowPerMinute: value.lowPerMinute,
    highPerMinute: value.highPerMinute,
    lowIncluded: value.lowIncluded,
    highIncluded: value.highIncluded,
    flags,
    nextWindowSeconds: value.nextWindowSeconds,
    why,
  };
}
