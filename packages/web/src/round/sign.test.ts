import { expect, test } from 'vitest';
import type { App } from '../app/context.js';
import { createStore } from '../store/store.js';
import { sign } from './sign.js';
import { AT, complete, NO_PROTOCOL, NOTHING_BEFORE, PERSON } from './testing.js';

test('what was shown is what is signed: another page changed the round, and nothing is signed', () => {
  const store = createStore(null, () => 'device');
  let sendings = 0;
  const sending = {
    now: async () => {
      sendings += 1;
    },
  };
  const app = { store, clock: { stamp: () => AT(5) }, program: 'test', sending } as unknown as App;
  const shown = complete();
  const now = { ...shown, note: 'from another page' };
  const keepDraft = (draft: typeof shown) =>
    store.change((state) => ({ ...state, kept: { ...state.kept, drafts: { [PERSON]: draft } } }));
  const signShown = () =>
    sign(
      app,
      { draft: shown, facts: NOTHING_BEFORE, inForce: NO_PROTOCOL },
      { agent: 'ines', role: 'observer', isPreliminary: false },
    );

  keepDraft(now);
  expect(signShown()).toBe(false);
  expect(store.get().kept).toMatchObject({ waiting: [], drafts: { [PERSON]: now } });
  expect(sendings).toBe(0);

  keepDraft(shown);
  expect(signShown()).toBe(true);
  expect(store.get().kept).toMatchObject({ waiting: [{ person: PERSON }], drafts: {} });
  expect(sendings).toBe(1);
});
