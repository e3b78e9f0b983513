import { expect, test } from 'vitest';
import { takeOn } from './beforeAccounts.js';
import { freshKept, type Kept, type WaitingRound } from './kept.js';
import { createStore, SHELF_KEY, type Shelf, shelfKeyOf } from './store.js';

// What is right for whom: decision of this project (docs/hazards.md, H12).
const waitingOf = (round: string, agent: string) =>
  ({
    round,
    person: `person of ${round}`,
    entries: [{ agent }],
    tries: 3,
    refused: null,
  }) as unknown as WaitingRound;
const draft = (round: string) => ({ round }) as unknown as Kept['drafts'][string];

function device(before: Partial<Kept>, own: Partial<Kept> | null = null) {
  const texts: Record<string, string> = {
    [SHELF_KEY]: JSON.stringify({ ...freshKept('device before'), ...before }),
  };
  if (own !== null) texts[shelfKeyOf('ada')] = JSON.stringify({ ...freshKept('device of ada'), ...own });
  const shelf: Shelf = {
    getItem: (key) => texts[key] ?? null,
    setItem: (key, text) => {
      texts[key] = text;
    },
  };
  const signsIn = (agent: string) => {
    const store = createStore(shelf, () => 'device of ada', undefined, shelfKeyOf('ada'));
    takeOn(shelf, store, agent);
    return store.get().kept;
  };
  const left = () => JSON.parse(texts[SHELF_KEY] ?? '') as Kept;
  return { shelf, signsIn, left };
}
const rounds = ({ waiting }: Kept) => waiting.map(({ round }) => round);

test('rounds that wait from before there were accounts go with whoever signed them, and with nobody else', () => {
  const { signsIn, left } = device({ waiting: [waitingOf('one', 'ada'), waitingOf('two', 'sol')] });
  expect(rounds(signsIn('ada'))).toEqual(['one']);
  expect(rounds(left())).toEqual(['two']);
  expect(rounds(signsIn('ada'))).toEqual(['one']);
});

test('what was begun goes with whoever measured last, and takes no place of what the account began', () => {
  const before = { agent: 'ada', sequence: 7, drafts: { hester: draft('old'), nils: draft('begun') } };
  const { signsIn, left } = device(before, { sequence: 2, drafts: { hester: draft('own') } });
  const kept = signsIn('ada');
  expect([kept.drafts, kept.sequence, kept.device]).toMatchObject([
    { hester: draft('own'), nils: draft('begun') },
    7,
    'device of ada',
  ]);
  expect(Object.keys(left().drafts)).toEqual(['hester']);
  expect(left().drafts).toMatchObject({ hester: draft('old') });
  const others = device({ ...before, agent: 'sol' });
  expect(others.signsIn('ada').drafts).toEqual({});
  expect(Object.keys(others.left().drafts)).toEqual(['hester', 'nils']);
});

test('a page that was closed in between sends the same round once, not twice', () => {
  const both = { waiting: [waitingOf('one', 'ada')] };
  const { signsIn, left } = device(both, both);
  expect(rounds(signsIn('ada'))).toEqual(['one']);
  expect(rounds(left())).toEqual([]);
});

test('a device that refuses to keep the account’s rounds keeps them where they were', () => {
  const { shelf, left } = device({ waiting: [waitingOf('one', 'ada')] });
  const full: Shelf = {
    getItem: shelf.getItem,
    setItem: (key, text) => {
      if (key !== SHELF_KEY) throw new Error('full');
      shelf.setItem(key, text);
    },
  };
  const store = createStore(full, () => 'device of ada', undefined, shelfKeyOf('ada'));
  takeOn(full, store, 'ada');
  expect(rounds(left())).toEqual(['one']);
});

test('a round begun goes with whoever began it, whoever measured last', () => {
  const drafts = { hester: { ...draft('of ada'), by: 'ada' }, nils: { ...draft('of sol'), by: 'sol' } };
  const { signsIn, left } = device({ agent: 'sol', drafts });
  expect(Object.keys(signsIn('ada').drafts)).toEqual(['hester']);
  expect(Object.keys(left().drafts)).toEqual(['nils']);
});
