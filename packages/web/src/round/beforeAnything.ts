import { firstStep, type RoundState, type RoundStep, roundState } from '@evenfall/clinical';
import type { RoundDraft } from './draft.js';
import { eventsWith } from './events.js';
import { roundFactsIn } from './facts.js';
import type { Round } from './useRound.js';

/** Where a round stands in which nothing was taken yet, as `standingOf` tells it, without what readings are judged by. */
export function beforeAnything(
  draft: RoundDraft,
  { facts, inForce }: Pick<Round, 'facts' | 'inForce'>,
): { readonly state: RoundState; readonly step: RoundStep } {
  const state = roundState(eventsWith(draft, []));
  return { state, step: firstStep(state, roundFactsIn(draft, facts), inForce.roundRules).step };
}
