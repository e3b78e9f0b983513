import type { Role } from '@evenfall/record';
import type { App } from '../app/context.js';
import { withoutFormsOf } from '../app/forms.js';
import { entriesOf } from './entries.js';
import type { Round } from './useRound.js';
import { signed } from './waiting.js';
import { isOfAnother } from './whose.js';

/**
 * Signs a round: from now on it is never changed. It waits on this device until the server has it.
 *
 * @returns false, with nothing signed, where the round on this device is not the one that was shown (another tab went on
 * with it) or is another's
 */
export function sign(
  app: App,
  { draft, facts, inForce }: Pick<Round, 'draft' | 'facts' | 'inForce'>,
  {
    agent,
    role,
    isPreliminary,
  }: { readonly agent: string; readonly role: Role; readonly isPreliminary: boolean },
): boolean {
  const { store, clock, program } = app;
  let isSigned = false;
  store.change((state) => {
    const { kept } = state;
    // What another measured is not theirs to sign, whatever a page shows.
    if (kept.drafts[draft.person] !== draft || isOfAnother(draft, agent)) return state;
    const asSigned = { ...draft, by: agent, isPreliminary: isPreliminary || draft.isOfLearner };
    const entries = entriesOf(asSigned, {
      agent,
      role,
      device: kept.device,
      signedAt: clock.stamp(),
      sequence: kept.sequence,
      facts,
      inForce,
      program,
    });
    const { round, person } = draft;
    const waiting = { round, person, entries, draft: asSigned, tries: 0, refused: null };
    isSigned = true;
    return {
      ...state,
      kept: signed({ ...withoutFormsOf(kept, draft.round), sequence: kept.sequence + 1 }, waiting),
    };
  });
  if (isSigned) void app.sending.now();
  return isSigned;
}
