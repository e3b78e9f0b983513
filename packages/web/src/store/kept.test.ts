import { expect, test } from 'vitest';
import { NOTHING_TAKEN } from '../round/draft.js';
import { begun, PERSON } from '../round/testing.js';
import { freshKept, readKept } from './kept.js';
import { createStore, shelfKeyOf } from './store.js';

test('a round begun or signed by the program before reads with the parts it did not have', () => {
  const {
    exceptions: _1,
    features: _2,
    unwell: _3,
    isPregnant: _9,
    wanted: _4,
    note: _5,
    ...older
  } = begun();
  const { pressure: _6, measures: _7, measuresNotDone: _8, book: _10, session: _11, ...first } = older;
  const waiting = { round: first.round, person: PERSON, entries: [], draft: first, tries: 1, refused: null };
  const kept = { ...freshKept('device'), version: 1, drafts: { [PERSON]: first }, waiting: [waiting] };
  const read = readKept(JSON.stringify(kept));
  expect(read?.version).toBe(3);
  expect(read?.drafts[PERSON]).toEqual(begun());
  expect(read?.waiting[0]?.draft).toMatchObject(NOTHING_TAKEN);
});

test('a round begun before there was a rest, a beginning or a slip to put back has none', () => {
  const { begun: _1, rest: _2, slip: _3, ...third } = begun();
  const kept = { ...freshKept('device'), drafts: { [PERSON]: third } };
  expect(readKept(JSON.stringify(kept))?.drafts[PERSON]).toEqual(begun());
});

test('a round of before there was a class is one of the charts, signed or not', () => {
  const { book: _1, session: _2, ...second } = begun();
  const waiting = {
    round: second.round,
    person: PERSON,
    entries: [],
    draft: second,
    tries: 0,
    refused: null,
  };
  const kept = { ...freshKept('device'), version: 2, drafts: { [PERSON]: second }, waiting: [waiting] };
  const read = readKept(JSON.stringify(kept));
  expect(read?.drafts[PERSON]).toEqual(begun());
  expect(read?.waiting[0]?.draft).toMatchObject({ book: 'care', session: null });
});

test('a round begun before it was known whose it is is of whoever measured last on the device', () => {
  const { by: _1, isOfLearner: _2, ...older } = begun();
  const kept = { ...freshKept('device'), agent: 'kit', drafts: { [PERSON]: older } };
  expect(readKept(JSON.stringify(kept))?.drafts[PERSON]).toEqual({ ...begun(), by: 'kit' });
  // One that is of nobody yet stays so.
  const now = { ...kept, drafts: { [PERSON]: begun() } };
  expect(readKept(JSON.stringify(now))?.drafts[PERSON]?.by).toBeNull();
});

test("of an account's own, a round of before is of a name chosen in a class where it is of that class alone", () => {
  const { by: _1, isOfLearner: _2, ...older } = begun();
  const drafts = { [PERSON]: older, nils: { ...older, book: 'class' } };
  const text = JSON.stringify({ ...freshKept('device'), agent: 'kit', drafts });
  expect(readKept(text, true)?.drafts).toMatchObject({ [PERSON]: { by: null }, nils: { by: 'kit' } });
  const shelf = { getItem: () => text, setItem: () => undefined };
  const keptOn = (account: string | null) =>
    createStore(shelf, () => 'device', undefined, shelfKeyOf(account)).get().kept.drafts[PERSON];
  expect(keptOn('account')?.by).toBeNull();
  expect(keptOn(null)?.by).toBe('kit');
});
