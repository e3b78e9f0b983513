import { useEffect } from 'react';
import { useLocation } from 'wouter';
import type { Reopened } from './measuring.js';
import type { Round } from './useRound.js';

/** Where a value of the review stands on its page. */
export function valueId(entry: string): string {
  return `value-${entry}`;
}

/** Goes back to the review of the round, to the value that was opened there; else stays. */
export function useComeBack(
  { draft }: Pick<Round, 'draft'>,
  reopened: Reopened | null | undefined,
): () => void {
  const [, go] = useLocation();
  return () => {
    if (reopened?.from === 'review')
      go(`/people/${draft.person}/round#${valueId(reopened.entry)}`, { replace: true });
  };
}

/** On the review: the value that was come back to is in sight and has the focus, once the page has begun at its top. */
export function useReturnedTo(): void {
  useEffect(() => {
    const frame = window.requestAnimationFrame(() => {
      const value = document.getElementById(window.location.hash.slice(1));
      value?.scrollIntoView({ block: 'center' });
      value?.focus({ preventScroll: true });
    });
    return () => window.cancelAnimationFrame(frame);
  }, []);
}
