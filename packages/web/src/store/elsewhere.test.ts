import { expect, test } from 'vitest';
import { type WholeShelf, waitingElsewhere } from './elsewhere.js';
import { freshKept } from './kept.js';

const SOL = '01950000-0000-7000-8000-000000000501';
const ADA = '01950000-0000-7000-8000-000000000ada';
const kept = (...agents: readonly string[]) =>
  JSON.stringify({
    ...freshKept('a device'),
    waiting: agents.map((agent, at) => ({ round: `${agent} ${at}`, entries: [{ agent }, { agent }] })),
  });
const shelfOf = (texts: Readonly<Record<string, string>>): WholeShelf => ({
  length: Object.keys(texts).length,
  key: (at) => Object.keys(texts)[at] ?? null,
  getItem: (key) => texts[key] ?? null,
});

test('says how many rounds of whom wait in the stores of others, and not one’s own', () => {
  const shelf = shelfOf({
    evenfall: kept('nils', 'sol'),
    [`evenfall.${SOL}`]: kept('sol'),
    [`evenfall.${ADA}`]: kept('ada'),
    [`evenfall.${SOL}.unread`]: kept('sol'),
    'evenfall.signedIn': '{"needed":true,"current":null}',
    'of-another-program': kept('sol'),
  });
  expect(waitingElsewhere(shelf, ADA)).toEqual([
    { agent: 'nils', rounds: 1, isClosed: false },
    { agent: 'sol', rounds: 2, isClosed: false },
  ]);
  // Of a closed account they are told apart: nobody signs in there. With nobody signed in, all are those of others.
  expect(waitingElsewhere(shelf, null, [SOL])).toEqual([
    { agent: 'nils', rounds: 1, isClosed: false },
    { agent: 'sol', rounds: 1, isClosed: false },
    { agent: 'sol', rounds: 1, isClosed: true },
    { agent: 'ada', rounds: 1, isClosed: false },
  ]);
});

test('nothing waits where nothing can be read', () => {
  expect(waitingElsewhere(null, ADA)).toEqual([]);
  expect(waitingElsewhere(shelfOf({ evenfall: '{', [`evenfall.${SOL}`]: kept() }), ADA)).toEqual([]);
});
