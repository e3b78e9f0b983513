import type { StoredEntry } from '@evenfall/record';
import { expect, test } from 'vitest';
import { entriesOf } from '../round/entries.js';
import { AGENT, complete, ID, SIGNED } from '../round/testing.js';
import { BESIDE_HOURS, ownRounds } from './ownRounds.js';

const SUPERVISOR = ID(7);
const signed = entriesOf(complete(), SIGNED).at(-1);
const learnt = { ...signed, recordedAt: '2026-03-05T09:06:00Z' } as unknown as StoredEntry;

/** The same signing by somebody else in a round of their own, so many seconds later. */
function own(seconds: number, agent = SUPERVISOR): StoredEntry {
  const at = new Date(Date.parse(learnt.measuredAt.at) + seconds * 1000).toISOString();
  const measuredAt = { ...learnt.measuredAt, at };
  return { ...learnt, id: ID(60), round: ID(61), agent, measuredAt };
}
const beside = (other: StoredEntry) => ownRounds([learnt, other], SUPERVISOR, learnt).map(({ id }) => id);

test('a reading of one’s own may be set beside a learner’s within hours of it, before or after', () => {
  const limit = BESIDE_HOURS * 3600;
  for (const seconds of [0, limit - 1, limit, -limit]) expect(beside(own(seconds))).toEqual([ID(61)]);
  for (const seconds of [limit + 1, -limit - 1]) expect(beside(own(seconds))).toEqual([]);
});

test('neither somebody else’s nor the learner’s round itself is one’s own', () => {
  expect(beside(own(60, AGENT))).toEqual([]);
  expect(ownRounds([learnt], AGENT, learnt)).toEqual([]);
});
