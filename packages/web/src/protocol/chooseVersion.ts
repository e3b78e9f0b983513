import type { App } from '../app/context.js';
import { withEntry } from '../app/forms.js';
import { WRITTEN_SCHEMA } from '../round/entries.js';
import { BOOK, loadAbout } from '../server/load.js';
import { loadPlaceProtocols } from '../server/loadProtocols.js';
import { refusedBecause } from '../server/server.js';
import type { Kept } from '../store/kept.js';

const FORM = 'protocol ';

/**
 * Puts a version that is kept in force for the whole place, or none. A choice sent again is the same entry, so an answer
 * that was lost makes no second one; another version is another entry.
 *
 * @returns why it was not, in words; null once it is in force
 */
export async function chooseVersion(app: App, version: string | null): Promise<string | null> {
  const { store, server, words, ids, clock } = app;
  const { agent, device } = store.get().kept;
  if (agent === null) return words.sentence('review.needsAgent');
  const form = `${FORM}${version ?? ''}`;
  store.change((state) => ({ ...state, kept: withEntry(state.kept, form, ids, clock.stamp) }));
  const start = store.get().kept.forms[form]?.entry;
  if (start == null) throw new Error('The choice has no entry');
  const entry = {
    ...start,
    book: BOOK,
    kind: 'protocol-chosen' as const,
    schema: WRITTEN_SCHEMA,
    person: null,
    round: null,
    agent,
    role: 'observer' as const,
    device,
    amends: null,
    content: { version },
  };
  const answer = await server.call('addEntries', { body: { entries: [entry] } });
  if (!answer.ok) {
    if (answer.offline) return words.sentence('app.unreachable');
    return refusedBecause(answer, words);
  }
  store.change((state) => ({ ...state, kept: withoutChoices(state.kept) }));
  await Promise.all([loadAbout(app), loadPlaceProtocols(app)]);
  return null;
}

/** A choice that is in force ends every other that was begun: the next of the same version is a new one. */
function withoutChoices(kept: Kept): Kept {
  const left = Object.entries(kept.forms).filter(([form]) => !form.startsWith(FORM));
  return { ...kept, forms: Object.fromEntries(left) };
}
