import type { Answer } from '@evenfall/api';
import { expect, test } from 'vitest';
import { begun, PERSON } from '../round/testing.js';
import { createStore } from '../store/store.js';
import { loadPeople, loadRecord, reloadRecord } from './load.js';
import { loadClass, loadClassSessions } from './loadClass.js';
import type { Server } from './server.js';

/** A server that answers each question when it is told to, in whatever order. */
function slowServer() {
  const open: ((answer: Answer<unknown>) => void)[] = [];
  const call = () => new Promise<Answer<unknown>>((resolve) => open.push(resolve));
  const answer = (at: number, value: unknown) => open[at]?.({ ok: true, status: 200, value });
  const fail = (at: number, status = 0) =>
    open[at]?.({ ok: false, status, offline: status === 0, problem: null });
  return { server: { call } as unknown as Server, answer, fail };
}

const NEVER_MIND = { entries: [], unreadable: 0 };

test('an older answer that comes late does not take a round off the chart again', async () => {
  const store = createStore(null, () => 'device');
  const { server, answer } = slowServer();
  const opened = loadRecord({ store, server }, 'somebody');
  const afterSigning = loadRecord({ store, server }, 'somebody');
  answer(1, { entries: ['the round'], unreadable: 0 });
  await afterSigning;
  answer(0, NEVER_MIND);
  await opened;
  expect(store.get().known.records['care somebody']?.value).toMatchObject({ entries: ['the round'] });
});

test('answers in the order of the questions: each is known', async () => {
  const store = createStore(null, () => 'device');
  const { server, answer } = slowServer();
  const [first, second] = [loadPeople({ store, server }), loadPeople({ store, server })];
  answer(0, { persons: ['one'], unreadable: 0 });
  await first;
  expect(store.get().known.people.value).toEqual(['one']);
  answer(1, { persons: ['one', 'two'], unreadable: 0 });
  await second;
  expect(store.get().known.people.value).toEqual(['one', 'two']);
});

test('a later question that was not answered holds nothing up; another person’s neither', async () => {
  const store = createStore(null, () => 'device');
  const { server, answer, fail } = slowServer();
  const [first, second] = ['somebody', 'somebody'].map((id) => loadRecord({ store, server }, id));
  const other = loadRecord({ store, server }, 'another');
  fail(1);
  await second;
  answer(2, { entries: ['theirs'], unreadable: 0 });
  await other;
  answer(0, { entries: ['the round'], unreadable: 0 });
  await first;
  const { records } = store.get().known;
  expect(records['care somebody']).toMatchObject({ is: 'here', value: { entries: ['the round'] } });
  expect(records['care another']?.value).toMatchObject({ entries: ['theirs'] });
});

test('what was asked before a change is past, though the question after it was not answered', async () => {
  const store = createStore(null, () => 'device');
  const { server, answer, fail } = slowServer();
  const opened = loadRecord({ store, server }, 'somebody');
  const afterSigning = reloadRecord({ store, server }, 'somebody');
  fail(1);
  expect(await afterSigning).toMatchObject({ ok: false });
  answer(0, NEVER_MIND);
  await opened;
  // Not reached is said, and not that there is no round.
  expect(store.get().known.records['care somebody']).toEqual({ is: 'unreachable', value: null });
  const again = loadRecord({ store, server }, 'somebody');
  answer(2, { entries: ['the round'], unreadable: 0 });
  await again;
  expect(store.get().known.records['care somebody']?.value).toMatchObject({ entries: ['the round'] });
});

test('that nothing is there is an answer: people of a class that ended do not come back', async () => {
  const store = createStore(null, () => 'device');
  const { server, answer, fail } = slowServer();
  const first = loadClass({ store, server }, 'class-1');
  const second = loadClass({ store, server }, 'class-1');
  fail(2, 404);
  answer(3, { persons: [], unreadable: 0 });
  await second;
  answer(0, { session: { id: 'class-1' }, persons: [{ id: 'p', classIdentity: { pseudonym: 'Lark' } }] });
  answer(1, { persons: [], unreadable: 0 });
  await first;
  expect(store.get().known.classes['class-1']).toEqual({ is: 'missing', value: null });
});

test('an older list of classes takes nothing of one that was begun since off the device', async () => {
  const store = createStore(null, () => 'device');
  const { server, answer } = slowServer();
  const first = loadClassSessions({ store, server });
  const second = loadClassSessions({ store, server });
  answer(1, { sessions: [{ id: 'class-1' }] });
  await second;
  const draft = { ...begun(), book: 'class' as const, session: 'class-1' };
  store.change((state) => ({ ...state, kept: { ...state.kept, drafts: { [PERSON]: draft } } }));
  answer(0, { sessions: [] });
  await first;
  expect(store.get().kept.drafts).toEqual({ [PERSON]: draft });
});
