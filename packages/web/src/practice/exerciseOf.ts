import type { Run } from '@evenfall/clinical';
import { MODEL } from '@evenfall/physiology';
import { ACTION_LIMITS, type Counted, type Entered } from '@evenfall/practice';
import type { ExerciseContent, InForce } from '@evenfall/record';
import { chartedRate } from '../round/chartedRate.js';
import { isVoidValue, type SignDraft } from '../round/draft.js';
import type { PracticeDraft } from './keptPractice.js';

/** What is kept of an exercise that is over: what was done and written, and nothing that can be worked out from it. */
export function exerciseOf(draft: PracticeDraft, inForce: InForce): ExerciseContent {
  const { visit, round } = draft;
  const { tick, ...played } = visit;
  const run = round.pressure.values.at(-1)?.run ?? null;
  const apex = draft.apex === undefined ? null : countedIn(draft.apex, draft.countedFrom.apex ?? null);
  return {
    schema: 1,
    model: MODEL,
    ...played,
    seconds: Math.min(LONGEST_SECONDS, Math.max(SHORTEST_SECONDS, tick / TICKS_A_SECOND)),
    evidence: {
      run: run === null ? null : { startSeconds: draft.runFrom ?? draft.peakSeconds ?? 0, run },
      pulse: countedIn(round.pulse, draft.countedFrom.pulse),
      breaths: countedIn(round.breaths, draft.countedFrom.breaths),
      ...(apex === null ? {} : { apex }),
      saysActNow: draft.saysActNow,
      wasShown: draft.wasShown,
      thresholdDb: draft.thresholdDb,
    },
    entered: { ...pressureOf(run), ...ratesOf(draft, inForce) },
    aids: draft.aids,
  };
}

const TICKS_A_SECOND = 200;
/** A visit that is left at once is kept as one of a second; at the longest that can be kept, the room ends it. */
export const [SHORTEST_SECONDS, LONGEST_SECONDS] = ACTION_LIMITS.seconds;

function pressureOf(run: Run | null): Pick<Entered, 'systolic' | 'muffled' | 'diastolic'> {
  const at = (...what: Run['moments'][number]['what'][]) =>
    run?.moments.find((one) => what.includes(one.what))?.mmHg ?? null;
  return {
    systolic: at('first sound', 'pulse back'),
    muffled: at('muffled'),
    diastolic: run?.moments.findLast(({ what }) => what === 'last sound')?.mmHg ?? null,
  };
}

function ratesOf({ round, apex }: PracticeDraft, inForce: InForce) {
  const rate = (sign: SignDraft) => {
    const last = sign.values.findLast((value) => !isVoidValue(value));
    return last === undefined ? null : chartedRate(last, inForce);
  };
  const apexPerMinute = apex === undefined ? null : rate(apex);
  return {
    pulsePerMinute: rate(round.pulse),
    breathsPerMinute: rate(round.breaths),
    ...(apexPerMinute === null ? {} : { apexPerMinute }),
  };
}

/** The last count that was not broken off, with when it began; null for none. */
function countedIn({ values }: SignDraft, startSeconds: number | null): Counted | null {
  const last = values.findLast((value) => !isVoidValue(value));
  if (last?.kind !== 'count' || 'interrupted' in last.count || startSeconds === null) return null;
  return { startSeconds, count: last.count };
}
