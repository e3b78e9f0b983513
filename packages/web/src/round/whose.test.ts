import { expect, test } from 'vitest';
import type { App } from '../app/context.js';
import { createStore } from '../store/store.js';
import type { RoundDraft } from './draft.js';
import { sign } from './sign.js';
import { AT, begun, complete, NO_PROTOCOL, NOTHING_BEFORE, PERSON } from './testing.js';
import { claimedBy, isOfAnother, takenBy } from './whose.js';

// Whose a round is: decision of this project (docs/hazards.md, H13).
test('a round is of whoever first measures in it, and of nobody before', () => {
  expect(isOfAnother(begun(), 'ines')).toBe(false);
  const kits = takenBy(takenBy(takenBy(complete(), null), 'kit'), 'ines');
  expect(kits.by).toBe('kit');
  expect([isOfAnother(kits, 'kit'), isOfAnother(kits, 'ines'), isOfAnother(kits, null)]).toEqual([
    false,
    true,
    true,
  ]);
});

/** Signs a draft that is kept on the device, and answers what waits to be sent. */
function signedBy(agent: string, draft: RoundDraft) {
  const store = createStore(null, () => 'device');
  store.change((state) => ({ ...state, kept: { ...state.kept, drafts: { [PERSON]: draft } } }));
  const app = {
    store,
    clock: { stamp: () => AT(5) },
    program: 'test',
    sending: { now: async () => undefined },
  };
  sign(
    app as unknown as App,
    { draft, facts: NOTHING_BEFORE, inForce: NO_PROTOCOL },
    { agent, role: 'observer', isPreliminary: false },
  );
  return store.get().kept.waiting.map(({ entries }) => entries.at(-1));
}

test('what a learner measured nobody else signs; where the name was wrong it stays preliminary', () => {
  const kits = takenBy(complete(), 'kit');
  expect(signedBy('ines', kits)).toEqual([]);
  expect(signedBy('kit', kits)).toMatchObject([{ agent: 'kit', content: { status: 'final' } }]);
  expect(signedBy('ines', claimedBy(kits, 'ines', ['kit']))).toMatchObject([
    { agent: 'ines', content: { status: 'preliminary' } },
  ]);
  expect(signedBy('ines', claimedBy(kits, 'ines', []))).toMatchObject([
    { agent: 'ines', content: { status: 'final' } },
  ]);
});
