import { isSameLimb, type PreviousInflation } from '@evenfall/clinical';
import type { InForce } from '@evenfall/record';
import { chartedRate } from '../round/chartedRate.js';
import type { RoundDraft } from '../round/draft.js';
import { type DraftRun, type PressureDraft, secondsBetween } from './pressureDraft.js';
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

/**
 * What the cuff was inflated for on this limb before a reading, and how long before; null where nothing was, or where it
 * is not known when the cuff went up. The other arm has rested meanwhile: the blood is held in the one that was squeezed.
 */
export function previousInflation(pressure: PressureDraft, value: DraftRun): PreviousInflation | null {
  const before = [
    ...pressure.felt.map(({ place, sequence, at }) => ({ was: 'estimate' as const, place, sequence, at })),
    ...pressure.values.map(({ place, sequence, keptAt }) => ({
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
  return { was: before.was, secondsSinceRelease };
}
