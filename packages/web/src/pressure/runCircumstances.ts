import {
  isAtOnceAfter,
  isSameLimb,
  type NextStep,
  type PreviousInflation,
  runResult,
  UNKNOWN_RUN_CIRCUMSTANCES,
} from '@evenfall/clinical';
import type { InForce } from '@evenfall/record';
import { chartedRate } from '../round/chartedRate.js';
import type { RoundDraft } from '../round/draft.js';
import { type Facts, roundFactsIn } from '../round/facts.js';
import { type DraftRun, secondsBetween } from './pressureDraft.js';
import { pulseOfRound } from './pulseOfRuns.js';

/** What the fingers said of the rhythm in this round; null where nobody said. */
export function rhythmFelt({ pulse }: RoundDraft): 'regular' | 'irregular' | null {
  return pulse.values.map(({ noticed }) => noticed.rhythmFelt).findLast((felt) => felt !== null) ?? null;
}

/** The pulse of this round as it was counted, per minute; null where there is none. */
export function feltPulse(draft: RoundDraft, inForce: InForce): number | null {
  const last = pulseOfRound(draft);
  return last === undefined ? null : chartedRate(last, inForce);
}

type Under = { readonly facts: Facts; readonly inForce: InForce };

/** Whether the reading after one is asked for without a wait: it is very low, or the person unwell. */
export function isNextAtOnce(
  draft: RoundDraft,
  { run, place, unwellUpright = null }: DraftRun,
  { facts, inForce }: Under,
): boolean {
  const { features, unwell } = draft;
  const { systolic, diastolicUsed: diastolic } = runResult(run, UNKNOWN_RUN_CIRCUMSTANCES, inForce.runRules);
  const known = { features, unwell, facts: roundFactsIn(draft, facts) };
  const isUnwellUpright = place.posture === 'stand' && unwellUpright;
  return isAtOnceAfter({ systolic, diastolic, isUnwellUpright }, known, inForce.roundRules.actNow);
}

/**
 * Whether a reading that is begun now is asked for at once: by what comes next, or because the last one was very low or the
 * person is unwell.
 */
export function isAskedAtOnce(draft: RoundDraft, next: NextStep | null, under: Under): boolean {
  const last = draft.pressure.values.at(-1);
  if (last === undefined) return false;
  return next?.why.some(({ code }) => code === 'again-at-once') === true || isNextAtOnce(draft, last, under);
}

/**
 * What the cuff was inflated for on this limb before a reading, how long before, and whether this one was asked for at once
 * after it, as it stood when it was begun; null where nothing was, or where it is not known when the cuff went up. The other arm has rested meanwhile: the
 * blood is held in the one that was squeezed.
 */
export function previousInflation({ pressure }: RoundDraft, value: DraftRun): PreviousInflation | null {
  const { felt, values } = pressure;
  const before = [
    ...felt.map(({ place, sequence, at }) => ({ was: 'estimate' as const, place, sequence, at })),
    ...values.map(({ place, sequence, keptAt }) => ({
      was: 'reading' as const,
      place,
      sequence,
      at: keptAt,
    })),
  ]
    .filter(({ place, sequence }) => sequence < value.sequence && isSameLimb(place, value.place))
    .sort((a, b) => a.sequence - b.sequence)
    .at(-1);
  const secondsSinceRelease = secondsBetween(before?.at ?? null, value.inflatedAt);
  if (before === undefined || secondsSinceRelease === null) return null;
  return { was: before.was, secondsSinceRelease, isNextAtOnce: value.inflatedAt?.isAtOnce ?? null };
}
