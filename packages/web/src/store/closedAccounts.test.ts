import { expect, test } from 'vitest';
import { accountsKept, type EmptyableShelf, forgetClosed } from './closedAccounts.js';
import { freshKept } from './kept.js';

const SOL = '01950000-0000-7000-8000-000000000501';
const ADA = '01950000-0000-7000-8000-000000000ada';

function shelfOf(texts: Record<string, string>): EmptyableShelf {
  return {
    get length() {
      return Object.keys(texts).length;
    },
    key: (at) => Object.keys(texts)[at] ?? null,
    getItem: (key) => texts[key] ?? null,
    setItem: (key, text) => {
      texts[key] = text;
    },
    removeItem: (key) => {
      delete texts[key];
    },
  };
}
const FORM = { fields: { name: 'typed (invented)' }, adds: null, entry: null };
const kept = (waiting: readonly object[]) =>
  JSON.stringify({ ...freshKept('a device'), sequence: 7, forms: { person: FORM }, waiting });
const WAITING = { round: 'a round', entries: [{ agent: 'sol' }], draft: {} };

test('the accounts of a device are those with a store, once each', () => {
  const shelf = shelfOf({
    evenfall: kept([]),
    [`evenfall.${SOL}`]: kept([]),
    [`evenfall.${SOL}.unread`]: '{',
    [`evenfall.${ADA}`]: kept([]),
    'evenfall.signedIn': '{}',
    'evenfall.preferences': '{}',
  });
  expect(accountsKept(shelf)).toEqual([SOL, ADA]);
  expect(accountsKept(null)).toEqual([]);
});

test('what a closed account kept is gone, and what others keep is not', () => {
  const texts: Record<string, string> = {
    evenfall: kept([]),
    [`evenfall.${SOL}`]: kept([]),
    [`evenfall.${ADA}`]: kept([]),
  };
  forgetClosed(shelfOf(texts), [SOL]);
  expect(Object.keys(texts)).toEqual(['evenfall', `evenfall.${ADA}`]);
});

test('rounds that no server has are kept, and nothing beside them', () => {
  const texts: Record<string, string> = { [`evenfall.${SOL}`]: kept([WAITING]) };
  forgetClosed(shelfOf(texts), [SOL]);
  const left = JSON.parse(texts[`evenfall.${SOL}`] ?? '{}');
  expect(left).toMatchObject({ sequence: 7, waiting: [WAITING], forms: {}, drafts: {} });
  const once = texts[`evenfall.${SOL}`];
  forgetClosed(shelfOf(texts), [SOL]);
  expect(texts[`evenfall.${SOL}`]).toBe(once);
});

test('what this program cannot read may hold such rounds, and a shelf that refuses keeps what it has', () => {
  const texts: Record<string, string> = {
    [`evenfall.${SOL}`]: '{"version":99}',
    [`evenfall.${ADA}`]: kept([]),
  };
  const shelf = shelfOf(texts);
  const refusing: EmptyableShelf = {
    ...shelf,
    removeItem: () => {
      throw new Error('refused');
    },
  };
  forgetClosed(refusing, [SOL, ADA]);
  expect(Object.keys(texts)).toEqual([`evenfall.${SOL}`, `evenfall.${ADA}`]);
  forgetClosed(null, [SOL]);
});
