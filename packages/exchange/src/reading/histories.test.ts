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
function said({ perMinute, minute, status }: Version, hour: number, resource?: string): Reported {
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
  return { at: `/entry/${hour}/resource`, content, measuredAt, isInError, resource: resource ?? null };
}

/** What is kept once these files were brought, one after the other, and what each of them added. */
function brought(
  files: readonly (readonly Reported[])[],
  kept: readonly StoredEntry[] = [],
  isHistory = false,
) {
  let entries = kept;
  const said: string[][] = [];
  const added = files.map((read) => {
    const { placed, unclear } = reportedEntries(read, {
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
    said.push(unclear.map(({ at, what }) => `${what.is} ${at}`));
    return placed.length;
  });
  const replaced = new Set(entries.flatMap(({ amends }) => amends?.entry ?? []));
  const standing = entries
    .filter(({ id, kind }) => kind === 'reported' && !replaced.has(id))
    .map(({ content, measuredAt }) => {
      const { value } = content as { value: { perMinute: number } };
      return `${value.perMinute} at ${measuredAt.at}`;
    });
  return { entries, added, standing, said };
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
const histories = fc
  .array(
    fc.record({
      step: fc.constantFrom('number', 'time', 'both', 'withdrawn', 'again'),
      perMinute: fc.constantFrom(70, 71, 72),
      minute: fc.constantFrom(0, 1, 2),
      status: fc.constantFrom('corrected', 'amended'),
    }),
    { minLength: 1, maxLength: 3 },
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

/** What was said last of each instant, but for what was withdrawn. */
const lastOfEach = (versions: readonly Version[]) =>
  [...new Map(versions.map((version) => [version.minute, version])).values()]
    .filter(({ status }) => status !== 'entered-in-error')
    .map(({ perMinute, minute }) => `${perMinute} at ${minuteOf(minute)}`)
    .toSorted();

test('of one name what was said last of each instant stands, in whatever order files come', () => {
  fc.assert(
    fc.property(histories, (versions) => {
      const files = versions.map((version, hour) => [said(version, hour)]);
      for (const order of ordersOf(files)) {
        const { entries, standing } = brought(order);
        expect(standing.toSorted()).toEqual(lastOfEach(versions));
        // Each of them once more adds nothing.
        expect(brought(files, entries).added).toEqual(files.map(() => 0));
      }
    }),
    { numRuns: 150 },
  );
}, 60_000);

/**
 * Two measurements of one order, ten minutes apart and so never at one instant, each corrected, moved or withdrawn: what
 * was said of them, mixed as time may have mixed it, each version of its resource.
 */
const orders = fc
  .tuple(histories, histories, fc.array(fc.boolean(), { minLength: 8, maxLength: 8 }))
  .map(([one, other, turns]) => {
    const left = {
      one: one.slice(0, 2),
      other: other.slice(0, 3).map((it) => ({ ...it, minute: it.minute + 10 })),
    };
    const all: (Version & { readonly resource: string })[] = [];
    for (const turn of [...turns, ...turns.map((it) => !it)]) {
      const resource = turn ? 'one' : 'other';
      const next = left[resource].shift();
      if (next !== undefined) all.push({ ...next, resource });
    }
    return all;
  });

test('of several measurements under one name none is lost and none depends on a guess, in whatever order files come', () => {
  fc.assert(
    fc.property(orders, (versions) => {
      const files = versions.map((version, hour) => [said(version, hour, version.resource)]);
      for (const order of ordersOf(files))
        expect(brought(order).standing.toSorted()).toEqual(lastOfEach(versions));
    }),
    { numRuns: 50 },
  );
}, 60_000);

// FHIR R4, Resource.id: the id stays the same in all versions; Bundle.type: a history has the earlier ones too.
test('of several measurements under one name a history tells what stands, however the files before it came', () => {
  fc.assert(
    fc.property(orders, fc.array(fc.nat(4), { maxLength: 3 }), (versions, before) => {
      const read = versions.map((version, hour) => said(version, hour, version.resource));
      const files = before.flatMap((at) => (read[at] === undefined ? [] : [[read[at]]]));
      const last = new Map(versions.map((version) => [version.resource, version]));
      const standing = [...last.values()]
        .filter(({ status }) => status !== 'entered-in-error')
        .map(({ perMinute, minute }) => `${perMinute} at ${minuteOf(minute)}`);
      const kept = brought(files).entries;
      for (const history of [read, read.toReversed()]) {
        const told = brought([history], kept, true);
        expect(told.standing.toSorted()).toEqual(standing.toSorted());
        expect(brought([history], told.entries, true).added).toEqual([0]);
        // What the history told to be superseded does not come back with an older file.
        for (const one of read)
          expect(brought([[one]], told.entries).standing.toSorted()).toEqual(standing.toSorted());
      }
    }),
    { numRuns: 150 },
  );
}, 60_000);

const first: Version = { perMinute: 70, minute: 0, status: 'final' };
const moved: Version = { perMinute: 70, minute: 1, status: 'amended' };

test('of a value whose time was put right a history has both versions, whichever it names first', () => {
  const versions = [said(first, 0, 'a'), said(moved, 1, 'a')];
  for (const file of ordersOf(versions))
    expect(brought([file], [], true).standing).toEqual([`70 at ${minuteOf(1)}`]);
  // Two resources of one name are two measurements.
  expect(brought([[said(first, 0, 'a'), said(moved, 1, 'b')]], [], true).standing).toHaveLength(2);
});

test('what one file says side by side under one name stands side by side', () => {
  const values = [said(first, 0), said(moved, 1)];
  const both = [`70 at ${minuteOf(0)}`, `70 at ${minuteOf(1)}`];
  for (const file of ordersOf(values)) {
    expect(brought([file]).standing.toSorted()).toEqual(both);
    for (const one of values) expect(brought([[one], file]).standing.toSorted()).toEqual(both);
  }
});

test('a correction that could be of several measurements is kept beside them, and both are said', () => {
  const wrong = said({ perMinute: 150, minute: 0, status: 'final' }, 0);
  const other = said({ perMinute: 80, minute: 30, status: 'final' }, 1);
  const right = said({ perMinute: 75, minute: 5, status: 'corrected' }, 2);
  const all = [`150 at ${minuteOf(0)}`, `75 at ${minuteOf(5)}`, `80 at ${minuteOf(30)}`];
  for (const order of ordersOf([wrong, other, right])) {
    const { standing, said } = brought(order.map((one) => [one]));
    expect(standing.toSorted()).toEqual(all);
    // Whatever comes where the correction is, and the correction itself, is said by its place.
    const seen = order.slice(0, order.indexOf(right) + 1).length;
    expect(said).toEqual(
      order.map((one, at) =>
        one === right
          ? at === 0
            ? []
            : [`correction ${one.at}`]
          : at < seen
            ? []
            : [`may-be-corrected ${one.at}`],
      ),
    );
  }
});

test('the only measurement of a name need not be the one that a correction of another instant is of', () => {
  const other = said({ perMinute: 80, minute: 30, status: 'final' }, 1);
  const right = said({ perMinute: 75, minute: 5, status: 'corrected' }, 2);
  for (const order of ordersOf([other, right]))
    expect(brought(order.map((one) => [one])).standing).toHaveLength(2);
});

test('a correction of an instant of which something was said is of that, and nothing is asked', () => {
  const other = said({ perMinute: 76, minute: 10, status: 'final' }, 1);
  const corrected = said({ perMinute: 71, minute: 0, status: 'corrected' }, 4);
  const { standing, said: told } = brought([[said(first, 0)], [corrected], [other]]);
  expect(standing).toEqual([`71 at ${minuteOf(0)}`, `76 at ${minuteOf(10)}`]);
  expect(told).toEqual([[], [], []]);
});

test('what somebody here took back stays so, and another instant of its name stands beside it', () => {
  const { entries } = brought([[said(moved, 1)]]);
  const [value] = entries as [StoredEntry];
  const amends = { entry: value.id, reason: 'wrong-person', text: null };
  const mark = { ...value, id: PERSON, kind: 'entered-in-error', role: 'observer', content: {}, amends };
  const kept = [value, mark as unknown as StoredEntry];
  expect(brought([[said(moved, 1)], [said(first, 0)]], kept).added).toEqual([0, 1]);
});

test('what an earlier program took for corrected at another instant stays replaced, and nothing else goes with it', () => {
  const [wrong, right] = [said(first, 0), said({ ...moved, perMinute: 75 }, 2)];
  const { entries } = brought([[wrong], [right]]);
  const [one, other] = entries as [StoredEntry, StoredEntry];
  const amends = { entry: one.id, reason: 'other', text: null } as const;
  const kept = [one, { ...other, amends }];
  expect(brought([[wrong]], kept)).toMatchObject({ added: [0], standing: [`75 at ${minuteOf(1)}`] });
  const again = said(first, 3);
  const both = [`75 at ${minuteOf(1)}`, `70 at ${minuteOf(0)}`];
  expect(brought([[again], [again]], kept)).toMatchObject({ added: [1, 0], standing: both });
});
