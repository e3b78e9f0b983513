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
  const { placed, already, older } = reportedEntries(read.value.reported, {
    book: 'care',
    person: PERSON,
    agent: PERSON,
    device: PERSON,
    writtenAt: '2026-11-25T10:00:00Z',
    hash: (text) => createHash('sha256').update(text).digest('hex'),
    entries,
    changedText: 'changed at the source',
    againText: 'said again at the source',
  });
  const frames = placed.map(({ frame }) => frame as unknown as StoredEntry);
  const all = [...entries, ...frames];
  const rate = (id: string | undefined) => {
    const content = all.find((one) => one.id === id)?.content as
      | { value?: { perMinute: number } }
      | undefined;
    return content?.value?.perMinute ?? null;
  };
  return { all, already, older, said: frames.map(({ id, amends }) => [rate(id), rate(amends?.entry)]) };
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

test('another number at the same instant amends what was said before; a correction at another stands beside it', () => {
  const { all } = brought([], pulse(72, 30));
  expect(brought(all, pulse(74, 30)).said).toEqual([[74, 72]]);
  expect(brought(all, pulse(74, 30, { status: 'corrected' })).said).toEqual([[74, 72]]);
  expect(brought(all, pulse(74, 31, { status: 'corrected' })).said).toEqual([[74, null]]);
  expect(brought(all, pulse(74, 31, { status: 'amended' })).said).toEqual([[74, null]]);
  expect(brought(all, pulse(72, 30)).said).toEqual([]);
});

/** What stands after these bundles, one after the other, and what each of them left as older. */
function standingAfter(resources: readonly object[]) {
  let all: readonly StoredEntry[] = [];
  const left: number[] = [];
  for (const one of resources) {
    const answer = brought(all, one);
    all = answer.all;
    left.push(answer.older);
    // The same file once more adds nothing.
    expect(brought(all, one).said).toEqual([]);
  }
  const replaced = new Set(all.flatMap(({ amends }) => amends?.entry ?? []));
  const rates = all
    .filter(({ id, kind }) => kind === 'reported' && !replaced.has(id))
    .map(({ content }) => (content as { value: { perMinute: number } }).value.perMinute);
  return { all, left, rates };
}

/** Every order of things. */
function ordersOf<One>(things: readonly One[]): One[][] {
  if (things.length === 0) return [[]];
  return things.flatMap((one, at) => ordersOf(things.toSpliced(at, 1)).map((others) => [one, ...others]));
}

const saidAt = (hour: string, perMinute: number, status: string) =>
  pulse(perMinute, 30, { status, issued: `2025-03-01T${hour}:00+00:00` });

// FHIR R4, Observation.issued: when this version was made available; entered-in-error: withdrawn.
test.each([
  [
    'put right and put back',
    [
      [72, 'final'],
      [27, 'corrected'],
      [72, 'corrected'],
    ],
    [72],
  ],
  [
    'put right twice',
    [
      [72, 'final'],
      [27, 'corrected'],
      [74, 'corrected'],
    ],
    [74],
  ],
  [
    'put right and said again',
    [
      [72, 'final'],
      [74, 'corrected'],
      [74, 'corrected'],
    ],
    [74],
  ],
  [
    'said again and put right',
    [
      [72, 'preliminary'],
      [72, 'final'],
      [74, 'corrected'],
    ],
    [74],
  ],
  [
    'put right and taken back',
    [
      [72, 'final'],
      [27, 'corrected'],
      [27, 'entered-in-error'],
    ],
    [],
  ],
  [
    'taken back under its first value',
    [
      [72, 'final'],
      [27, 'corrected'],
      [72, 'entered-in-error'],
    ],
    [],
  ],
  [
    'taken back and put back',
    [
      [72, 'final'],
      [72, 'entered-in-error'],
      [72, 'final'],
    ],
    [72],
  ],
  [
    'taken back and put back as another',
    [
      [72, 'final'],
      [72, 'entered-in-error'],
      [74, 'corrected'],
    ],
    [74],
  ],
  [
    'taken back twice',
    [
      [72, 'final'],
      [72, 'entered-in-error'],
      [72, 'entered-in-error'],
    ],
    [],
  ],
  [
    'said again and taken back',
    [
      [72, 'final'],
      [72, 'final'],
      [72, 'entered-in-error'],
    ],
    [],
  ],
] as const)(
  'a value that was %s: what its source said last stands, in whatever order files come',
  (_, said, last) => {
    const files = said.map(([rate, status], at) =>
      saidAt(['09:35', '10:00', '11:00'][at] as string, rate, status),
    );
    for (const order of ordersOf(files)) {
      const { all, rates } = standingAfter(order);
      expect(rates).toEqual(last);
      // Any of them once more changes nothing.
      for (const one of files) expect(brought(all, one).said).toEqual([]);
    }
  },
);

test('what is left as it is says so: of an older file, unless what it says stands', () => {
  const [first, second, third] = [saidAt('09:35', 72, 'final'), saidAt('10:00', 27, 'corrected'), saidAt('11:00', 72, 'corrected')]; // biome-ignore format: one thought
  expect(standingAfter([first, second, first]).left).toEqual([0, 0, 1]);
  expect(standingAfter([first, second, third, first, second]).left).toEqual([0, 0, 0, 0, 1]);
  expect(brought(standingAfter([first, second, third]).all, first).already).toBe(1);
});

test('a value that somebody here marked as wrong stays so, however often its source says it', () => {
  const { all } = brought([], saidAt('09:35', 72, 'final'));
  const [value] = all as [StoredEntry];
  const amends = { entry: value.id, reason: 'wrong-person', text: null };
  const mark = {
    ...value,
    id: PERSON,
    kind: 'entered-in-error',
    role: 'observer',
    content: { note: null },
    amends,
  };
  const marked = [value, mark as unknown as StoredEntry];
  expect(brought(marked, saidAt('11:00', 72, 'final')).said).toEqual([]);
  expect(brought(marked, saidAt('11:00', 74, 'corrected')).said).toEqual([[74, null]]);
});
