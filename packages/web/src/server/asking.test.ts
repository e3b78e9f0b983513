import type { Answer } from '@evenfall/api';
import { expect, test } from 'vitest';
import { createStore } from '../store/store.js';
import { loadPeople, loadRecord } from './load.js';
import type { Server } from './server.js';

/** A server that answers each question when it is told to, in whatever order. */
function slowServer() {
  const open: ((answer: Answer<unknown>) => void)[] = [];
  const call = () => new Promise<Answer<unknown>>((resolve) => open.push(resolve));
  const answer = (at: number, value: unknown) => open[at]?.({ ok: true, status: 200, value });
  const fail = (at: number) => open[at]?.({ ok: false, status: 0, offline: true, problem: null });
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
