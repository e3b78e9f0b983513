import type { Answer } from '@evenfall/api';
import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { complete, ID, PERSON } from '../round/testing.js';
import { signed } from '../round/waiting.js';
import { createStore } from '../store/store.js';
import { keepSending, sendWaiting } from './sendWaiting.js';
import type { Server } from './server.js';

const OFFLINE: Answer<never> = { ok: false, status: 0, offline: true, problem: null };
const TAKEN = { ok: true, status: 201, value: { entries: [] } } as const;

/** A server that answers as it is told, and remembers what it was sent. */
function serverThat(answers: Answer<unknown>[]) {
  const sent: unknown[] = [];
  const server = {
    call: async (name: string, takes: { body?: unknown }) => {
      if (name !== 'addEntries') return { ok: false, status: 404, offline: false, problem: null };
      sent.push(takes.body);
      return answers.shift() ?? OFFLINE;
    },
  } as unknown as Server;
  return { server, sent };
}

function deviceWith(rounds: number[]) {
  const store = createStore(null, () => ID(3));
  for (const id of rounds) {
    const waiting = {
      round: ID(id),
      person: PERSON,
      entries: [],
      draft: complete(),
      tries: 0,
      refused: null,
    };
    store.change((state) => ({ ...state, kept: signed(state.kept, waiting) }));
  }
  return store;
}
const words = wordsFor('en');
const waitingIn = (store: ReturnType<typeof deviceWith>) =>
  store.get().kept.waiting.map(({ round, tries, refused }) => [round, tries, refused]);

test('rounds go out oldest first and leave the device once they are taken', async () => {
  const store = deviceWith([50, 51]);
  const { server, sent } = serverThat([TAKEN, TAKEN]);
  await sendWaiting({ store, server, words });
  expect(sent).toHaveLength(2);
  expect(waitingIn(store)).toEqual([]);
});

test('with no answer everything stays, and later rounds are not tried before earlier ones', async () => {
  const store = deviceWith([50, 51]);
  const { server, sent } = serverThat([OFFLINE]);
  await sendWaiting({ store, server, words });
  expect(sent).toHaveLength(1);
  expect(waitingIn(store)).toEqual([
    [ID(50), 1, null],
    [ID(51), 0, null],
  ]);
});

test('a refused round says why and does not hold up the next', async () => {
  const store = deviceWith([50, 51]);
  const problem = {
    type: 'about:blank',
    title: 'Not found',
    status: 404,
    code: null,
    detail: 'Not there',
    problems: [],
  };
  const { server } = serverThat([{ ok: false, status: 404, offline: false, problem }, TAKEN]);
  await sendWaiting({ store, server, words });
  expect(waitingIn(store)).toEqual([[ID(50), 1, 'Not there']]);
});

/** A device with one signed round of a class session, refused as told by a server with these sessions open. */
async function afterRefusal(status: number, open: string[]) {
  const store = createStore(null, () => ID(3));
  const draft = { ...complete(), book: 'class' as const, session: ID(70) };
  const waiting = { round: draft.round, person: PERSON, entries: [], draft, tries: 0, refused: null };
  store.change((state) => ({ ...state, kept: signed(state.kept, waiting) }));
  const refused = { ok: false, status, offline: false, problem: null };
  const listed = { ok: true, status: 200, value: { sessions: open.map((id) => ({ id })) } };
  const server = {
    call: async (name: string) => (name === 'listClassSessions' ? listed : refused),
  } as unknown as Server;
  await sendWaiting({ store, server, words });
  return waitingIn(store);
}

test('a round of a class that was ended leaves the device; of one that is open it says why it was refused', async () => {
  expect(await afterRefusal(422, [])).toEqual([]);
  expect(await afterRefusal(422, [ID(70)])).toEqual([[ID(10), 1, words.sentence('app.failed')]]);
});

test('a round of somebody who was taken out of a class leaves the device', async () => {
  expect(await afterRefusal(404, [ID(70)])).toEqual([]);
});

test('what was sent once is sent again the same, until it is taken', async () => {
  const store = deviceWith([50]);
  const { server, sent } = serverThat([OFFLINE, OFFLINE, TAKEN]);
  const planned: (() => void)[] = [];
  const pauses: number[] = [];
  const sending = keepSending(
    { store, server, words },
    {
      after: (ms, then) => {
        pauses.push(ms);
        planned.push(then);
        return () => {};
      },
    },
  );
  await sending.now();
  for (let at = 0; at < 2; at += 1) {
    planned.shift()?.();
    await sending.now();
  }
  expect(pauses).toEqual([2_000, 4_000]);
  expect(sent).toEqual([sent[0], sent[0], sent[0]]);
  expect(waitingIn(store)).toEqual([]);
});
