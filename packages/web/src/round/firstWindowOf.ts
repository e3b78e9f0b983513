import { type CountOf, type FirstWindow, firstWindow } from '@evenfall/clinical';
import { NOTHING_NOTICED } from './draft.js';
import { circumstancesBefore } from './facts.js';
import type { Round } from './useRound.js';

/** The window to offer for the next count of a sign: what was noticed at the last one is still so. */
export function firstWindowOf(
  { draft, facts, inForce }: Pick<Round, 'draft' | 'facts' | 'inForce'>,
  of: CountOf,
): FirstWindow {
  const before = draft[of].values;
  const noticed = before.at(-1)?.noticed ?? NOTHING_NOTICED;
  const circumstances = circumstancesBefore(before, of, noticed, facts, inForce);
  return firstWindow(of, circumstances, facts.round.hasIrregularRhythm, inForce.countRules);
}
