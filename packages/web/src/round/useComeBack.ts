import { useLocation } from 'wouter';
import type { Reopened } from './measuring.js';
import type { Round } from './useRound.js';

/** Goes back to the review of the round, for a value that was opened there; else stays. */
export function useComeBack({ draft }: Pick<Round, 'draft'>, from: Reopened['from'] | undefined): () => void {
  const [, go] = useLocation();
  return () => {
    if (from === 'review') go(`/people/${draft.person}/round`, { replace: true });
  };
}
