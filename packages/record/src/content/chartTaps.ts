import {
  type Circumstances,
  type Flag,
  TAPS_RULE,
  type Taps,
  tapAdvice,
  tapResult,
} from '@evenfall/clinical';
import type { InForce } from './inForce.js';
import { keptCircumstances } from './keptCircumstances.js';
import type { Override } from './shared.js';
import type { TapsContent } from './taps.js';

/** What was done, and what was added by hand. */
export type TapsEvidence = {
  readonly taps: Taps;
  readonly repair: boolean;
  readonly circumstances: Circumstances;
  readonly override: Override;
  readonly note: string | null;
};

/** The content of a taps entry, its value made from its evidence. */
export function chartTaps(done: TapsEvidence, inForce: InForce, program: string): TapsContent {
  const circumstances = keptCircumstances(done.circumstances);
  const { of, source, seconds } = done.taps;
  return {
    evidence: {
      taps: { of, source, seconds: [...seconds] },
      repair: done.repair,
      circumstances,
    },
    value: valueOfTaps({ ...done, circumstances }, inForce),
    override: done.override,
    computedBy: {
      program,
      rule: TAPS_RULE,
      preset: inForce.presets.count ?? null,
      presetVersion: inForce.presetVersion,
    },
    note: done.note,
  };
}

function valueOfTaps(
  { taps, repair, circumstances }: TapsEvidence,
  { countRules }: InForce,
): TapsContent['value'] {
  const result = tapResult(taps, { repair });
  const { nextWindowSeconds, nextWhy, flags } = tapAdvice(taps.of, result, circumstances, countRules);
  const copy = ({ code, figures }: Flag) => ({ code, figures: { ...figures } });
  return {
    ...result,
    repairs: result.repairs.map((one) => ({ ...one })),
    flags: [...flags, ...result.flags].map(copy),
    why: result.why.map(copy),
    nextWindowSeconds,
    nextWhy: nextWhy.map(copy),
  };
}
