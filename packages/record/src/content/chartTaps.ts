import {
  type Circumstances,
  type Flag,
  TAPS_RULE,
  type TapResult,
  type Taps,
  tapResult,
} from '@evenfall/clinical';
import type { InForce } from './inForce.js';
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
  const { of, source, seconds } = done.taps;
  return {
    evidence: {
      taps: { of, source, seconds: [...seconds] },
      repair: done.repair,
      circumstances: { ...done.circumstances },
    },
    value: copied(tapResult(done.taps, { repair: done.repair })),
    override: done.override,
    computedBy: { program, rule: TAPS_RULE, preset: inForce.preset, presetVersion: inForce.presetVersion },
    note: done.note,
  };
}

function copied(value: TapResult): TapsContent['value'] {
  const copy = ({ code, figures }: Flag) => ({ code, figures: { ...figures } });
  return {
    ...value,
    repairs: value.repairs.map((repair) => ({ ...repair })),
    flags: value.flags.map(copy),
    why: value.why.map(copy),
  };
}
