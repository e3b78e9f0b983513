import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import type { App } from '../app/context.js';
import { createStore } from '../store/store.js';
import { chooseVersion } from './chooseVersion.js';

/** A place whose server takes entries when it is there, and keeps what reached it also when its answer is lost. */
function place() {
  const store = createStore(null, () => 'device');
  const came: { id: string; content: { version: string | null } }[] = [];
  let answers = true;
  let made = 0;
  const call = async (name: string, { body }: { body?: { entries: typeof came } }) => {
    if (name === 'addEntries') came.push(...(body?.entries ?? []));
    return answers && name === 'addEntries'
      ? { ok: true, status: 201, value: { entries: [] } }
      : { ok: false, status: 0, offline: true, problem: null };
  };
  const app = {
    store,
    server: { call },
    words: wordsFor('en'),
    ids: () => {
      made += 1;
      return `id-${made}`;
    },
    clock: { stamp: () => ({ at: '2026-11-25T10:00:00Z', zone: 'UTC', asEntered: null }) },
  } as unknown as App;
  const by = (agent: string | null) =>
    store.change((state) => ({ ...state, kept: { ...state.kept, agent } }));
  return { app, came, by, answering: (is: boolean) => (answers = is) };
}

test('nobody puts a protocol in force without a name', async () => {
  const { app, came } = place();
  expect(await chooseVersion(app, 'aa')).toMatch(/who is measuring/);
  expect(came).toEqual([]);
});

test('an answer that was lost makes no second choice; another version, or the same later, is a new one', async () => {
  const { app, came, by, answering } = place();
  by('wren');
  answering(false);
  expect(await chooseVersion(app, 'aa')).not.toBeNull();
  answering(true);
  expect(await chooseVersion(app, 'aa')).toBeNull();
  expect(await chooseVersion(app, null)).toBeNull();
  expect(await chooseVersion(app, 'aa')).toBeNull();
  expect(came.map(({ content }) => content.version)).toEqual(['aa', 'aa', null, 'aa']);
  expect(came.map(({ id }) => id)).toEqual(['id-1', 'id-1', 'id-2', 'id-3']);
});

test('one that failed does not take the place of another', async () => {
  const { app, came, by, answering } = place();
  by('wren');
  answering(false);
  await chooseVersion(app, 'aa');
  answering(true);
  expect(await chooseVersion(app, 'bb')).toBeNull();
  expect(new Set(came.map(({ id }) => id)).size).toBe(2);
});
