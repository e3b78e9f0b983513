import { readEntry } from '@evenfall/record';
import { expect, test } from 'vitest';
import { stampAt, stampOfLocal } from '../ports/stampAt.js';
import { AGENT, DEVICE, ID } from '../round/testing.js';
import { endOfDay, readSession } from './sessionForm.js';

const stampOf = (typed: string) => stampOfLocal(typed, 'Europe/Lisbon', () => 0);
const NOW = stampAt(Date.parse('2026-11-25T10:00:00Z'), 0, 'Europe/Lisbon');
const read = (title: string, endsBy: string) => readSession({ title, endsBy }, { now: NOW, stampOf });

/** The entry that begins a session, for the record to read. */
const begins = (content: object | null) => ({
  id: ID(1),
  book: 'class',
  kind: 'class-session',
  schema: 1,
  person: null,
  round: null,
  session: ID(1),
  agent: AGENT,
  role: 'teacher',
  device: DEVICE,
  sequence: 0,
  measuredAt: NOW,
  writtenAt: NOW.at,
  amends: null,
  content,
});

test.each([
  ['2026-11-25', '2026-11-26T00:00'],
  ['2026-12-31', '2027-01-01T00:00'],
  ['2028-02-28', '2028-02-29T00:00'],
])('%s ends at %s', (today, ends) => {
  expect(endOfDay(today)).toBe(ends);
});

test('a session has a title and an end that is still to come, a day away at most', () => {
  const { session } = read(' Tuesday group ', '2026-11-26T00:00');
  expect(session).toEqual({ title: 'Tuesday group', endsBy: '2026-11-26T00:00:00.000+00:00' });
  expect(readEntry(begins(session))).toMatchObject({ ok: true });
  expect(read('', '2026-11-26T00:00').wrong).toEqual({ title: 'nameMissing' });
  expect(read('x'.repeat(200), '2026-11-26T00:00').wrong).toEqual({});
  expect(read('x'.repeat(201), '2026-11-26T00:00').wrong).toEqual({ title: 'nameLong' });
});

test.each([
  ['2026-11-25T09:59', false],
  ['2026-11-25T10:00', false],
  ['2026-11-25T10:01', true],
  ['2026-11-26T10:00', true],
  ['2026-11-26T10:01', false],
  ['', false],
])('over by %s is taken: %s', (endsBy, isTaken) => {
  expect(read('Group', endsBy).session !== null).toBe(isTaken);
});

test('the end of a day of 25 hours is still today', () => {
  // Lisbon, 25 October 2026: the clocks go back from UTC+1 to UTC+0 at 01:00 UTC.
  const offsetAt = (ms: number) => (ms < Date.parse('2026-10-25T01:00:00Z') ? 60 : 0);
  const now = stampAt(Date.parse('2026-10-24T23:05:00Z'), 60, 'Europe/Lisbon');
  const of = (typed: string) => stampOfLocal(typed, 'Europe/Lisbon', offsetAt);
  const typed = { title: 'Group', endsBy: endOfDay('2026-10-25') };
  expect(readSession(typed, { now, stampOf: of }).session?.endsBy).toBe('2026-10-26T00:00:00.000+00:00');
});
