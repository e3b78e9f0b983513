import type { Answer } from '@evenfall/api';
import type { EntryFrame } from '@evenfall/record';
import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { complete, ID, PERSON } from '../round/testing.js';
import { signed } from '../round/waiting.js';
import type { WaitingRound } from '../store/kept.js';
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

test('a round that was taken stays until its chart could be read, and is sent once more under its id', async () => {
  const store = deviceWith([50]);
  const { server, sent } = serverThat([TAKEN, TAKEN]);
  const reads = [OFFLINE, { ok: true, status: 200, value: { entries: [], unreadable: 0 } } as const];
  const call = async (...asked: Parameters<Server['call']>) =>
    asked[0] === 'readPerson' ? reads.shift() : await server.call(...asked);
  const slow = { call } as unknown as Server;
  await sendWaiting({ store, server: slow, words });
  expect(waitingIn(store)).toEqual([[ID(50), 1, null]]);
  await sendWaiting({ store, server: slow, words });
  expect(waitingIn(store)).toEqual([]);
  expect(sent[0]).toEqual(sent[1]);
});

test('an exercise goes out like a round, about nobody; without a network it stays', async () => {
  const store = createStore(null, () => ID(3));
  const exercise = { round: ID(70), person: null, entries: [], draft: null, tries: 0, refused: null };
  store.change((state) => ({ ...state, kept: signed(state.kept, exercise) }));
  const { server, sent } = serverThat([OFFLINE, TAKEN]);
  await sendWaiting({ store, server, words });
  expect(waitingIn(store)).toEqual([[ID(70), 1, null]]);
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

/** A server that keeps what it is sent as the real one does (an amendment of nothing is refused), and fails at the calls told. */
function keepingServer(failing: readonly number[]) {
  const keeps: string[] = [];
  let calls = 0;
  const failed = { ok: false, status: 500, offline: false, problem: null } as const;
  const server = {
    call: async (name: string, { body }: { body?: { entries: EntryFrame[] } }) => {
      if (name !== 'addEntries') return { ok: false, status: 404, offline: false, problem: null };
      calls += 1;
      if (failing.includes(calls)) return failed;
      const entries = body?.entries ?? [];
      const isKnown = ({ amends }: EntryFrame) => amends === null || keeps.includes(amends.entry);
      if (!entries.every(isKnown)) return { ok: false, status: 422, offline: false, problem: null };
      keeps.push(...entries.map(({ id }) => id));
      return TAKEN;
    },
  } as unknown as Server;
  return { server, keeps };
}

/** Something signed that waits: an entry of a round, which may amend another. */
function waitingEntry(id: number, round: number, amends: number | null = null): WaitingRound {
  const old = amends === null ? null : { entry: ID(amends), reason: 'other', text: 'more days' };
  const entry = { id: ID(id), kind: 'series', person: PERSON, round: ID(round), amends: old };
  const form = { name: `away ${id}`, was: { fields: {}, adds: null, entry: null } };
  const entries = [entry as unknown as EntryFrame];
  return { round: ID(id), person: PERSON, entries, draft: null, form, tries: 0, refused: null };
}

// Source of what the server refuses: server/store/wrongEntries (an amendment names an entry that is kept).
test.each([
  [[1], [80, 60, 61, 62]],
  [[2], [60, 80, 61, 62]],
  [
    [1, 3],
    [80, 60, 61, 62],
  ],
  [[], [60, 61, 62, 80]],
])(
  'after a failure of the server at %j what goes on with a series never overtakes it, and other things do',
  async (failing, wanted) => {
    const store = createStore(null, () => ID(3));
    const all = [
      waitingEntry(60, 50),
      waitingEntry(61, 50, 60),
      waitingEntry(62, 50, 61),
      waitingEntry(80, 55),
    ];
    for (const one of all) store.change((state) => ({ ...state, kept: signed(state.kept, one) }));
    const { server, keeps } = keepingServer(failing);
    for (let at = 0; at < 4; at += 1) await sendWaiting({ store, server, words });
    expect(keeps).toEqual(wanted.map(ID));
    expect(waitingIn(store)).toEqual([]);
  },
);

test('what goes on with something that was refused is asked of the server, which says why', async () => {
  const store = createStore(null, () => ID(3));
  for (const one of [waitingEntry(60, 50, 99), waitingEntry(61, 50, 60)])
    store.change((state) => ({ ...state, kept: signed(state.kept, one) }));
  await sendWaiting({ store, server: keepingServer([]).server, words });
  expect(waitingIn(store)).toEqual([
    [ID(60), 1, words.sentence('app.failed')],
    [ID(61), 1, words.sentence('app.failed')],
  ]);
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
