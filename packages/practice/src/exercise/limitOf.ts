import type { Scenario } from '@evenfall/physiology';
import { IRREGULAR_RHYTHMS } from '../counting/rhythmOf.js';
import { FAULT_FIGURES } from '../fault/figures.js';
import { OBSERVER_FIGURES } from '../observer/figures.js';

/** Why a reading of somebody is accepted within more or less than is usual; null: within what is usual. */
export type LimitWhy = 'irregular' | 'faint' | 'own' | null;

/** Within how many mmHg of what was to be had a number of this person is accepted, what is usual, and why it is not that. Source: physiology handbook 14. */
export function limitOf({
  acceptedWithinMmHg,
  rhythm,
  soundDb,
  breathingSwingMmHg,
}: Pick<Scenario, 'acceptedWithinMmHg' | 'rhythm' | 'soundDb' | 'breathingSwingMmHg'>): {
  readonly withinMmHg: number;
  readonly usualMmHg: number;
  readonly why: LimitWhy;
} {
  const usualMmHg = FAULT_FIGURES.outOfAcceptedMmHg.value;
  const isWide = acceptedWithinMmHg > usualMmHg;
  const isFaint =
    (soundDb ?? Infinity) <= OBSERVER_FIGURES.faintDb.value ||
    (breathingSwingMmHg ?? 0) > OBSERVER_FIGURES.paradoxMmHg.value;
  const why =
    isWide && IRREGULAR_RHYTHMS.has(rhythm.kind) ? 'irregular' : isWide && isFaint ? 'faint' : 'own';
  return { withinMmHg: acceptedWithinMmHg, usualMmHg, why: acceptedWithinMmHg === usualMmHg ? null : why };
}
