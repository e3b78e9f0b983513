import type { EntryFrame } from '@evenfall/record';
import { expect, test } from 'vitest';
import type { WaitingRound } from '../store/kept.js';
import { notYetCharted } from './notYetCharted.js';

const waiting = (round: string, person: string, ids: readonly string[]) =>
  ({ round, person, entries: ids.map((id) => ({ id }) as EntryFrame) }) as unknown as WaitingRound;

const rounds = [waiting('r1', 'p', ['a', 'b']), waiting('r2', 'p', ['c']), waiting('r3', 'q', ['d'])];

test('a round that the record holds whole is not shown as waiting as well', () => {
  expect(notYetCharted(rounds, 'p', [{ id: 'a' }, { id: 'b' }]).map(({ round }) => round)).toEqual(['r2']);
});

test('a round of which the record holds a part still waits, and so does one of an empty record', () => {
  expect(notYetCharted(rounds, 'p', [{ id: 'a' }]).map(({ round }) => round)).toEqual(['r1', 'r2']);
  expect(notYetCharted(rounds, 'p', []).map(({ round }) => round)).toEqual(['r1', 'r2']);
});
