import { createHash } from 'node:crypto';
import type { StoredEntry } from '@evenfall/record';
import { expect, test } from 'vitest';
import { PATIENT_URL, sketches } from '../../testing/sketches.js';
import { readBundle } from '../fhir/read/readBundle.js';
import { reportedEntries } from './reported.js';

const PERSON = '01a215a4-0000-7000-8000-000000000001';

/** What a file adds to what is kept: each new entry's rate, and the rate of what it amends. */
function brought(entries: readonly StoredEntry[], ...resources: object[]) {
  const read = readBundle({
    resourceType: 'Bundle',
    type: 'collection',
    entry: resources.map((resource) => ({ resource })),
  });
  if (!read.ok) throw new Error('no bundle');
  expect(read.value.refused).toEqual([]);
  const { placed } = reportedEntries(read.value.reported, {
    book: 'care',
    person: PERSON,
    agent: PERSON,
    device: PERSON,
    writtenAt: '2026-11-25T10:00:00Z',
    hash: (text) => createHash('sha256').update(text).digest('hex'),
    entries,
    changedText: 'changed at the source',
  });
  const frames = placed.map(({ frame }) => frame as unknown as StoredEntry);
  const all = [...entries, ...frames];
  const rate = (id: string | undefined) => {
    const content = all.find((one) => one.id === id)?.content as { value: { perMinute: number } } | undefined;
    return content?.value.perMinute ?? null;
  };
  return { all, said: frames.map(({ id, amends }) => [rate(id), rate(amends?.entry)]) };
}

/** A pulse of an order: some systems give every measurement of one order the name of the order. */
const pulse = (perMinute: number, minute: number, more: object = {}) => ({
  ...sketches.pulse,
  subject: { reference: PATIENT_URL },
  identifier: [{ system: 'urn:orders', value: '7' }],
  effectiveDateTime: `2025-03-01T09:${minute}:00+00:00`,
  valueQuantity: { ...sketches.pulse.valueQuantity, value: perMinute },
  ...more,
});

// FHIR R4, Observation.status: what is changed after it was final has the status `amended` or `corrected`.
test('two measurements of one name stand beside each other, in one file and in two', () => {
  const one = brought([], pulse(72, 30), pulse(76, 40));
  expect(one.said).toEqual([
    [72, null],
    [76, null],
  ]);
  expect(brought(one.all, pulse(80, 50)).said).toEqual([[80, null]]);
});

test('another number at the same instant, or a correction at another, amends what was said before', () => {
  const { all } = brought([], pulse(72, 30));
  expect(brought(all, pulse(74, 30)).said).toEqual([[74, 72]]);
  expect(brought(all, pulse(74, 31, { status: 'corrected' })).said).toEqual([[74, 72]]);
  expect(brought(all, pulse(74, 31, { status: 'amended' })).said).toEqual([[74, 72]]);
  expect(brought(all, pulse(72, 30)).said).toEqual([]);
});
