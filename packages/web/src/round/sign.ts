import type { Role } from '@evenfall/record';
import type { App } from '../app/context.js';
import { withoutFormsOf } from '../app/forms.js';
import { entriesOf } from './entries.js';
import type { Round } from './useRound.js';
import { signed } from './waiting.js';

/** Signs a round: from now on it is never changed. It waits on this device until the server has it. */
export function sign(
  app: App,
  { draft, facts, inForce }: Pick<Round, 'draft' | 'facts' | 'inForce'>,
  {
    agent,
    role,
    isPreliminary,
  }: { readonly agent: string; readonly role: Role; readonly isPreliminary: boolean },
): void {
  const { store, clock, program } = app;
  store.change((state) => {
    const { kept } = state;
    if (kept.drafts[draft.person] !== draft) return state;
    const asSigned = { ...draft, isPreliminary };
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
    return {
      ...state,
      kept: signed({ ...withoutFormsOf(kept, draft.round), sequence: kept.sequence + 1 }, waiting),
    };
  });
  void app.sending.now();
}
