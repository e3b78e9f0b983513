import { expect, test } from 'vitest';
import type { StoredEntry } from '../entry/entry.js';
import { unclearCorrections } from './unclearCorrections.js';

/** A pulse under the name of an order: of which minute, said at which hour, as what; what of it is else. */
const pulse = (id: string, minute: string, hour: string | null, status: string, more: object = {}) =>
  ({
    id,
    kind: 'reported',
    amends: null,
    measuredAt: { at: `2025-03-01T09:${minute}:00Z` },
    content: {
      value: { of: 'pulse', perMinute: 70 },
      status,
      source: { format: 'fhir', id: 'urn:orders|7' },
      saidAt: hour === null ? null : `2025-03-01T${hour}:00:00Z`,
    },
    ...more,
  }) as unknown as StoredEntry;

const told = (...entries: StoredEntry[]) =>
  [...unclearCorrections(entries)].map(([id, { is, others }]) => `${id} ${is} ${others.join()}`).toSorted();

// FHIR R4, Observation.status: `corrected` and `amended` change what was said before; nothing says what.
test('a correction of an instant of its own and what was said before it say so of each other', () => {
  const all = [
    pulse('a', '00', '10', 'final'),
    pulse('b', '30', '11', 'final'),
    pulse('c', '05', '12', 'corrected'),
  ];
  const both = '2025-03-01T09:00:00Z,2025-03-01T09:30:00Z';
  expect(told(...all)).toEqual([
    'a may-be-corrected 2025-03-01T09:05:00Z',
    'b may-be-corrected 2025-03-01T09:05:00Z',
    `c correction ${both}`,
  ]);
  expect(told(...all.toReversed())).toHaveLength(3);
  expect(told(pulse('a', '00', null, 'final'), pulse('c', '05', '12', 'amended'))).toHaveLength(2);
});

test('nothing is asked of a correction that was said first, of an instant known before, or of another name', () => {
  const other = pulse('b', '30', '11', 'final');
  expect(told(other, pulse('c', '05', '10', 'corrected'))).toEqual([]);
  const amends = { entry: 'a', reason: 'other', text: null };
  expect(
    told(other, pulse('a', '05', '10', 'final'), pulse('c', '05', '12', 'corrected', { amends })),
  ).toEqual([]);
  expect(told(pulse('c', '05', '12', 'corrected'))).toEqual([]);
  const elsewhere = pulse('c', '05', '12', 'corrected');
  if (elsewhere.kind !== 'reported') throw new Error('not reported');
  const source = { format: 'fhir', id: 'urn:orders|8' } as const;
  expect(told(other, { ...elsewhere, content: { ...elsewhere.content, source } })).toEqual([]);
});

test('what was marked as wrong is not asked about any more', () => {
  const all = [pulse('a', '00', '10', 'final'), pulse('c', '05', '12', 'corrected')];
  const mark = { ...pulse('m', '00', null, 'final'), kind: 'entered-in-error', content: {} };
  const amends = { entry: 'a', reason: 'other', text: null };
  expect(told(...all, { ...mark, amends } as unknown as StoredEntry)).toEqual([]);
});
