import {
  type CuffChoice,
  cuffChoice,
  type Flag,
  isAveragedSite,
  type PreviousInflation,
  placeFlags,
  RUN_RULE,
  type Run,
  runResult,
} from '@evenfall/clinical';
import type { InForce } from './inForce.js';
import type { PressureOverride, RunCircumstancesKept, RunContent, RunMarkedBy, RunPlace } from './run.js';

/** What else is known of a run; what nobody asked for, how they felt on their feet or how long they had lain, is absent. */
export type RunCircumstancesDone = Omit<RunCircumstancesKept, 'unwellUpright' | 'lyingMinutes' | 'previous'> &
  Partial<Pick<RunCircumstancesKept, 'unwellUpright' | 'lyingMinutes'>> & {
    readonly previous: PreviousInflation | null;
  };

/** What was done and where, and what was added by hand. */
export type RunEvidence = {
  readonly run: Run;
  readonly place: RunPlace;
  readonly circumstances: RunCircumstancesDone;
  /** Which gauge of the place; absent for not said. */
  readonly gauge?: string | null;
  /** Who marked the moments, where a second person did; absent for nobody else. */
  readonly markedBy?: RunMarkedBy | null;
  readonly override: PressureOverride;
  readonly note: string | null;
};

/** The content of a run's entry, its value made from its evidence by the rules in force. */
export function chartRun(done: RunEvidence, inForce: InForce, program: string): RunContent {
  const { run, place, circumstances, gauge = null, markedBy = null, override, note } = done;
  return {
    evidence: {
      run: copiedRun(run),
      place: copiedPlace(place),
      circumstances: copiedAround(circumstances),
      gauge,
      markedBy: markedBy === null ? null : { ...markedBy, moments: [...markedBy.moments] },
    },
    value: valueOfRun(done, inForce),
    override: override === null ? null : { ...override },
    computedBy: {
      program,
      rule: RUN_RULE,
      preset: inForce.presets.deflation ?? null,
      presetVersion: inForce.presetVersion,
    },
    note,
  };
}

function valueOfRun({ run, place, circumstances }: RunEvidence, inForce: InForce): RunContent['value'] {
  const result = runResult(run, circumstances, inForce.runRules);
  const cuff = cuffUsed(place);
  const flags = [...result.flags, ...placeFlags(place.site, place.override !== null), ...(cuff?.flags ?? [])];
  const { systolicRange, diastolicRange, gap } = result;
  return {
    ...result,
    systolicRange: systolicRange === null ? null : [...systolicRange],
    diastolicRange: diastolicRange === null ? null : [...diastolicRange],
    gap: gap === null ? null : { ...gap },
    flags: flags.map(copied),
    why: result.why.map(copied),
    isAveraged: isAveragedSite(place.site),
    biasMmHg: cuff?.biasMmHg == null ? null : { ...cuff.biasMmHg },
  };
}

/** The cuff that was used held against the arm; null where either is not known, or the cuff is of no scheme. */
function cuffUsed({ site, armCm, cuff }: RunPlace): CuffChoice | null {
  if (site !== 'upper-arm' || armCm === null || cuff === null || cuff.scheme === null) return null;
  return cuffChoice({ armCm, scheme: cuff.scheme, atHand: cuff.id });
}

function copiedRun(run: Run): RunContent['evidence']['run'] {
  const { palpated, peak, moments } = run;
  return {
    ...run,
    palpated: { ...palpated },
    peak: peak === null ? null : { ...peak },
    moments: moments.map((moment) => ({ ...moment })),
  };
}

function copiedPlace(place: RunPlace): RunPlace {
  const { cuff, override } = place;
  return {
    ...place,
    cuff: cuff === null ? null : { ...cuff },
    override: override === null ? null : { ...override },
  };
}

function copiedAround({
  previous,
  unwellUpright = null,
  lyingMinutes = null,
  ...circumstances
}: RunCircumstancesDone): RunCircumstancesKept {
  return {
    ...circumstances,
    previous: previous === null ? null : { isNextAtOnce: null, ...previous },
    unwellUpright,
    lyingMinutes,
  };
}

function copied({ code, figures }: Flag) {
  return { code, figures: { ...figures } };
}
