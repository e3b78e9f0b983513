import { createHash } from 'node:crypto';
import type { ReportedContent, StoredEntry } from '@evenfall/record';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Reported, reportedEntries } from './reported.js';

const PERSON = '01a215a4-0000-7000-8000-000000000001';

/** What a source says of one pulse: its number, the minute that it was measured in, and how it says it. */
type Version = { readonly perMinute: number; readonly minute: number; readonly status: Status };
type Status = 'final' | 'corrected' | 'amended' | 'entered-in-error';

const minuteOf = (minute: number) => `2025-03-01T09:${String(minute).padStart(2, '0')}:00.000Z`;

/** The version of a value that its source issued so many hours after the first. */
function said({ perMinute, minute, status }: Version, hour: number): Reported {
  const isInError = status === 'entered-in-error';
  const content: ReportedContent = {
    value: { of: 'pulse', perMinute },
    asSent: null,
    by: null,
    method: null,
    site: null,
    posture: null,
    interpretation: null,
    status: isInError ? 'unknown' : status,
    until: null,
    note: null,
    source: { format: 'fhir', id: 'urn:source|7' },
    saidAt: `2025-03-01T${String(10 + hour).padStart(2, '0')}:00:00.000Z`,
    uprightMinutes: null,
    lyingMinutes: null,
    unwellUpright: null,
  };
  const measuredAt = { at: minuteOf(minute), zone: 'UTC', asEntered: null };
  return { at: `/entry/${hour}/resource`, content, measuredAt, isInError };
}

/** What is kept once these files were brought, one after the other, and what each of them added. */
function brought(
  files: readonly (readonly Reported[])[],
  kept: readonly StoredEntry[] = [],
  isHistory = false,
) {
  let entries = kept;
  const added = files.map((read) => {
    const { placed } = reportedEntries(read, {
      book: 'care',
      person: PERSON,
      agent: PERSON,
      device: PERSON,
      writtenAt: '2026-11-25T10:00:00Z',
      hash: (text) => createHash('sha256').update(text).digest('hex'),
      entries,
      isHistory,
      changedText: 'changed at the source',
      againText: 'said again at the source',
    });
    entries = [...entries, ...placed.map(({ frame }) => frame as unknown as StoredEntry)];
    return placed.length;
  });
  const replaced = new Set(entries.flatMap(({ amends }) => amends?.entry ?? []));
  const standing = entries
    .filter(({ id, kind }) => kind === 'reported' && !replaced.has(id))
    .map(({ content, measuredAt }) => {
      const { value } = content as { value: { perMinute: number } };
      return `${value.perMinute} at ${measuredAt.at}`;
    });
  return { entries, added, standing };
}

/** Every order of things. */
function ordersOf<One>(things: readonly One[]): One[][] {
  if (things.length === 0) return [[]];
  return things.flatMap((one, at) => ordersOf(things.toSpliced(at, 1)).map((others) => [one, ...others]));
}

/**
 * What a source may say of one value, one version after the other: corrected in number or time, withdrawn as it was
 * said last, said again as it is (FHIR R4, Observation.status: `amended`, `corrected`, `entered-in-error`).
 */
const historiesOf = (most: number) =>
  fc
    .array(
      fc.record({
        step: fc.constantFrom('number', 'time', 'both', 'withdrawn', 'again'),
        perMinute: fc.constantFrom(70, 71, 72),
        minute: fc.constantFrom(0, 1, 2),
        status: fc.constantFrom('corrected', 'amended'),
      }),
      { minLength: 1, maxLength: most },
    )
    .map((steps) => {
      const versions: Version[] = [{ perMinute: 70, minute: 0, status: 'final' }];
      for (const { step, perMinute, minute, status } of steps) {
        const last = versions.at(-1) as Version;
        if (step === 'withdrawn') versions.push({ ...last, status: 'entered-in-error' });
        else if (step === 'again')
          versions.push(last.status === 'entered-in-error' ? { ...last, status } : last);
        else
          versions.push({
            perMinute: step === 'time' ? last.perMinute : perMinute,
            minute: step === 'number' ? last.minute : minute,
            status,
          });
      }
      return versions;
    });

const lastOf = (versions: readonly Version[]) => {
  const { perMinute, minute, status } = versions.at(-1) as Version;
  return status === 'entered-in-error' ? [] : [`${perMinute} at ${minuteOf(minute)}`];
};

/** Once more files can tell of a move that nobody could place before: what stands stays, and a third time nothing is added. */
function expectSettled(
  files: readonly (readonly Reported[])[],
  entries: readonly StoredEntry[],
  standing: readonly string[],
) {
  const again = brought(files, entries);
  expect(again.standing).toEqual(standing);
  expect(brought(files, again.entries).added).toEqual(files.map(() => 0));
  expect(new Set(again.entries.map(({ id }) => id)).size).toBe(again.entries.length);
}

test('whatever a source did to a value and its time, what it said last stands, in whatever order files come', () => {
  fc.assert(
    fc.property(historiesOf(3), (versions) => {
      const files = versions.map((version, hour) => [said(version, hour)]);
      for (const order of ordersOf(files)) {
        const { entries, standing } = brought(order);
        expect(standing).toEqual(lastOf(versions));
        expectSettled(files, entries, standing);
      }
    }),
    { numRuns: 300 },
  );
}, 60_000);

/** Histories and orders that once left two standing, or what had been moved away: hours of the files, and versions. */
const FOUND = (
  [
    ['034512', '70 0 final, 72 0 amended, 70 2 corrected, 70 2 entered-in-error, 72 2 amended, 72 0 amended'],
    [
      '25364170',
      '70 0 final, 70 2 amended, 70 2 entered-in-error, 70 1 amended, 70 1 amended, 70 2 corrected, 70 1 corrected, 70 1 corrected',
    ],
    [
      '74516320',
      '70 0 final, 72 2 amended, 72 0 amended, 72 1 corrected, 72 1 entered-in-error, 71 1 amended, 71 2 corrected, 71 2 entered-in-error',
    ],
  ] as const
).map(([hours, text]) => {
  const versions = text.split(', ').map((one) => {
    const [perMinute, minute, status] = one.split(' ');
    return { perMinute: Number(perMinute), minute: Number(minute), status: status as Status };
  });
  const files = versions.map((version, hour) => [said(version, hour)]);
  const order = [...hours].map((hour) => files[Number(hour)] as Reported[]);
  return [{ versions, files, order }] as [{ versions: Version[]; files: Reported[][]; order: Reported[][] }];
});

test('the same of longer histories, withdrawn at times that were put right, their files in an order by chance', () => {
  const ordered = historiesOf(7).chain((versions) => {
    const files = versions.map((version, hour) => [said(version, hour)]);
    return fc
      .shuffledSubarray(files, { minLength: files.length })
      .map((order) => ({ versions, files, order }));
  });
  fc.assert(
    fc.property(ordered, ({ versions, files, order }) => {
      const { entries, standing } = brought(order);
      expect(standing).toEqual(lastOf(versions));
      expectSettled(files, entries, standing);
    }),
    { numRuns: 3000, examples: FOUND },
  );
}, 60_000);

const first: Version = { perMinute: 70, minute: 0, status: 'final' };
const moved: Version = { perMinute: 70, minute: 1, status: 'amended' };

// FHIR R4, Bundle.type: a history has the earlier versions too, any other kind what is said now.
test('of a value whose time was put right a history has both versions, whichever it names first', () => {
  const versions = [said(first, 0), said(moved, 1)];
  for (const file of ordersOf(versions))
    expect(brought([file], [], true).standing).toEqual([`70 at ${minuteOf(1)}`]);
});

test('what one file says side by side under one name stands side by side', () => {
  const values = [said(first, 0), said(moved, 1)];
  const both = [`70 at ${minuteOf(0)}`, `70 at ${minuteOf(1)}`];
  for (const file of ordersOf(values)) {
    expect(brought([file]).standing.toSorted()).toEqual(both);
    for (const one of values) expect(brought([[one], file]).standing.toSorted()).toEqual(both);
  }
});

test('of several measurements under one name an older file leaves none away', () => {
  const second: Version = { perMinute: 76, minute: 10, status: 'final' };
  const third: Version = { perMinute: 78, minute: 20, status: 'final' };
  const order = [said(second, 1), said({ ...third, status: 'corrected' }, 3)];
  expect(brought([order, [said(first, 0)]]).standing).toHaveLength(3);
  // A correction of a value that is known at its own instant has moved nothing.
  const corrected = said({ ...first, perMinute: 71, status: 'corrected' }, 4);
  expect(brought([[said(first, 0)], [corrected], [said(second, 1)]]).standing).toEqual([
    `71 at ${minuteOf(0)}`,
    `76 at ${minuteOf(10)}`,
  ]);
});

test('an older file leaves a value alone that somebody here took back after its time was put right', () => {
  const { entries } = brought([[said(moved, 1)]]);
  const [value] = entries as [StoredEntry];
  const amends = { entry: value.id, reason: 'wrong-person', text: null };
  const mark = { ...value, id: PERSON, kind: 'entered-in-error', role: 'observer', content: {}, amends };
  const kept = [value, mark as unknown as StoredEntry];
  expect(brought([[said(first, 0)]], kept).added).toEqual([0]);
});

test('a correction of which it is known what it corrected takes away no other measurement under its name', () => {
  const other: Version = { perMinute: 80, minute: 30, status: 'final' };
  const files = [
    [said(other, 1)],
    [said({ ...other, minute: 35, status: 'corrected' }, 2)],
    [said(first, 0)],
  ];
  const both = [`70 at ${minuteOf(0)}`, `80 at ${minuteOf(35)}`];
  expect(brought(files).standing.toSorted()).toEqual(both);
  const [one, its, older] = files as [Reported[], Reported[], Reported[]];
  expect(brought([older, one, its]).standing.toSorted()).toEqual(both);
});
