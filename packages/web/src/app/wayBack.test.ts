import { afterEach, expect, test } from 'vitest';
import { type Gone, goUnlessHeld, holdOwnWay } from './wayBack.js';

const went: string[] = [];
const go = (to: string) => goUnlessHeld((there) => void went.push(String(there)), to, undefined);
let letGo = () => {};
afterEach(() => {
  letGo();
  went.length = 0;
});

test('a button leads on while nothing holds it', () => {
  go('/people');
  expect(went).toEqual(['/people']);
});

test('what holds a way hears where it led, and nothing is gone to; what it lets pass is', () => {
  const asked: Gone[] = [];
  letGo = holdOwnWay((gone) => {
    asked.push(gone);
    return gone.to !== '/here';
  });
  go('/people');
  go('/here');
  expect(asked.map(({ to }) => to)).toEqual(['/people', '/here']);
  expect(went).toEqual(['/here']);
});

test('once it is let go of, it is free; a later hold is not undone by an earlier one', () => {
  const first = holdOwnWay(() => true);
  letGo = holdOwnWay(() => true);
  first();
  go('/people');
  expect(went).toEqual([]);
  letGo();
  go('/people');
  expect(went).toEqual(['/people']);
});
