import { type RoundNotes, roundNotes } from '@evenfall/clinical';
import type { RoundDraft } from '../round/draft.js';

/** What is said beside what a round under way comes to, from its readings in the order of the work. */
export function notesOf({ pressure }: Pick<RoundDraft, 'pressure'>): RoundNotes {
  return roundNotes(pressure.values.map(({ run, place }) => ({ ...place, method: run.method })));
}
