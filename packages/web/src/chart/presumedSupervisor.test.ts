import type { StoredEntry } from '@evenfall/record';
import { expect, test } from 'vitest';
import { entriesOf } from '../round/entries.js';
import { AGENT, complete, ID, SIGNED } from '../round/testing.js';
import { presumedSupervisor } from './presumedSupervisor.js';

const SUPERVISOR = ID(7);
const frame = entriesOf(complete(), SIGNED).at(-1);

/** A signing by whoever measures now, recorded at a minute. */
function signed(status: 'final' | 'preliminary', minute: number): StoredEntry {
  const content = { ...(frame?.content as object), status };
  const recordedAt = `2026-03-05T09:${String(minute).padStart(2, '0')}:00Z`;
  return { ...frame, agent: SUPERVISOR, content, recordedAt } as unknown as StoredEntry;
}
const presumed = (
  learners: readonly string[],
  entries: readonly StoredEntry[] = [],
  measuring = SUPERVISOR,
) => presumedSupervisor(measuring, [SUPERVISOR], learners, entries);

test('a countersigning opens with whoever is measuring, where they can sign for it', () => {
  expect(presumed([])).toBe(SUPERVISOR);
  // Whoever signed in its story is no choice.
  expect(presumed([], [], AGENT)).toBeNull();
  expect(presumedSupervisor(null, [SUPERVISOR], [], [])).toBeNull();
});

// Docs/conventions.md: whose own newest round is a learner's countersigns nothing; without accounts a device knows who is learning.
test('it never opens with a learner: two who share a phone choose who signs for the other', () => {
  expect(presumed([SUPERVISOR])).toBeNull();
  expect(presumed([AGENT])).toBe(SUPERVISOR);
  expect(presumed([], [signed('preliminary', 6)])).toBeNull();
  expect(presumed([], [signed('final', 6), signed('preliminary', 7)])).toBeNull();
  expect(presumed([], [signed('final', 7), signed('preliminary', 6)])).toBe(SUPERVISOR);
  expect(presumed([], [{ ...signed('preliminary', 6), agent: AGENT }])).toBe(SUPERVISOR);
});
