import { type Scenario, scenarioOf } from '@evenfall/physiology';
import { type EntryFrame, NOTHING_CHOSEN } from '@evenfall/record';
import { expect, test } from 'vitest';
import { afterSending, exerciseGivenUp, type Sent, signed } from '../round/waiting.js';
import { createStore, SHELF_KEY } from '../store/store.js';
import { begunPractice } from './begin.js';
import { NO_AIDS } from './ears.js';
import { exerciseOf } from './exerciseOf.js';
import type { PracticeDraft } from './keptPractice.js';
import { isHandedOver, onceHandedOver, practisedOf, waitingExercise } from './waitingExercise.js';

const ID = '00000000-0000-7000-8000-000000000001';
const ROUND = '00000000-0000-7000-8000-000000000002';
const STAMP = { at: '2026-11-26T08:00:00+00:00', zone: 'UTC', asEntered: null };
const fresh = begunPractice(
  scenarioOf('quiet-morning') as Scenario,
  3,
  { exercise: ID, round: ROUND, sequence: 1, begunAt: STAMP },
  { aids: NO_AIDS, thresholdDb: null },
);
const draft: PracticeDraft = {
  ...fresh,
  visit: {
    ...fresh.visit,
    tick: 4000,
    actions: Array.from({ length: 500 }, (_, n) => ({ tick: n, kind: 'squeeze' as const, share: 1 })),
  },
};
const entry = {
  id: ID,
  book: 'simulated',
  kind: 'exercise',
  content: exerciseOf(draft, NOTHING_CHOSEN) as unknown as Record<string, unknown>,
} as unknown as EntryFrame;
const waiting = waitingExercise(draft, entry);

test('what hands did waits once, and is whole again in what goes back to the room', () => {
  expect(JSON.stringify(waiting).split('"squeeze"')).toHaveLength(500 + 1);
  expect(practisedOf(waiting)).toEqual(draft);
  // One that an earlier program handed over has it in both.
  expect(practisedOf({ ...waiting, practised: draft })).toEqual(draft);
  const { practised: _, ...round } = waiting;
  expect(practisedOf(round)).toBeNull();
});

/** A device whose shelf takes texts up to so many characters, with the exercise handed over to it. */
function device(most: number) {
  const texts: Record<string, string> = {};
  const room = { most };
  const store = createStore(
    {
      getItem: (key) => texts[key] ?? null,
      setItem: (key, text) => {
        if (text.length > room.most) throw new Error('QuotaExceededError');
        texts[key] = text;
      },
    },
    () => 'device-1',
  );
  store.change((state) => ({ ...state, kept: signed(state.kept, waiting) }));
  let forgotten = 0;
  onceHandedOver(store, ID, () => {
    forgotten += 1;
  });
  const sent = (what: Sent) =>
    store.change((state) => ({ ...state, kept: afterSending(state.kept, ID, what) }));
  const giveUp = () => store.change((state) => ({ ...state, kept: exerciseGivenUp(state.kept, ID) }));
  return { store, texts, room, sent, giveUp, forgotten: () => forgotten };
}

test('the room forgets at once what is on the shelf', () => {
  const { forgotten, texts } = device(Number.POSITIVE_INFINITY);
  expect(forgotten()).toBe(1);
  expect(texts[SHELF_KEY]).toContain(ID);
});

test('a full shelf did not take it: the room forgets once the server has it, and only once', () => {
  const { forgotten, sent, store, texts } = device(1000);
  expect(texts[SHELF_KEY]).not.toContain(ID);
  expect(isHandedOver(store.get(), ID)).toBe(false);
  expect(forgotten()).toBe(0);
  sent({ is: 'unanswered' });
  expect(forgotten()).toBe(0);
  sent({ is: 'taken' });
  expect(isHandedOver(store.get(), ID)).toBe(true);
  expect(forgotten()).toBe(1);
  store.change((state) => ({ ...state, kept: { ...state.kept, sequence: 9 } }));
  expect(forgotten()).toBe(1);
});

test('a shelf that was full and has room again takes it, and the room forgets', () => {
  const { forgotten, sent, room, texts } = device(1000);
  room.most = Number.POSITIVE_INFINITY;
  sent({ is: 'unanswered' });
  expect(texts[SHELF_KEY]).toContain(ID);
  expect(forgotten()).toBe(1);
});

test('what was refused and taken back is the room’s again, and stays there', () => {
  const { forgotten, sent, giveUp } = device(1000);
  sent({ is: 'refused', why: 'no' });
  expect(forgotten()).toBe(0);
  giveUp();
  expect(forgotten()).toBe(0);
});
