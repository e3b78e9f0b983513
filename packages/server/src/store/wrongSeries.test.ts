import { NO_ROUND_FACTS, presetProtocol, protocolVersion } from '@evenfall/clinical';
import {
  type EntryFrame,
  type InForce,
  inForceUnder,
  NOTHING_CHOSEN,
  PROGRAM,
  type SeriesEvidence,
  type SeriesReadingKept,
  seriesMade,
} from '@evenfall/record';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openMemory, type TestDatabase } from '../database/testing.js';
import { TestClinic } from '../testing/clinic.js';

let database: TestDatabase;
let clinic: TestClinic;
let person: string;
beforeAll(async () => {
  database = await openMemory();
  clinic = await TestClinic.open(database);
  person = await clinic.addPerson();
}, 60_000);
afterAll(async () => {
  await database.close();
});

function reading(at: string, systolic: number, diastolic: number): SeriesReadingKept {
  return {
    at: { at, zone: 'Europe/Lisbon', asEntered: null },
    systolic,
    diastolic,
    pulse: null,
    asleep: null,
    part: null,
    site: 'upper-arm',
    arm: null,
    note: null,
    device: null,
    line: null,
    how: 'file',
    irregular: null,
    clock: null,
    mended: null,
    startedByHand: null,
  };
}

/** Three invented readings at home, one of them severe. */
const EVIDENCE: SeriesEvidence = {
  of: 'home',
  status: 'final',
  diary: null,
  readings: [
    reading('2026-07-01T07:30:00+01:00', 142, 90),
    reading('2026-07-02T07:30:00+01:00', 138, 86),
    reading('2026-07-03T07:30:00+01:00', 196, 118),
  ],
  refused: [{ line: 5, got: 'x;y', code: 'not-a-number', systolic: null, diastolic: null }],
  asleep: null,
  nap: null,
  scheduled: null,
  treated: null,
  features: null,
  facts: { ...NO_ROUND_FACTS, arms: [] },
  note: null,
};

let year = 2026;
function series(
  more: Partial<SeriesEvidence> = {},
  inForce: InForce = NOTHING_CHOSEN,
  bent = {},
): EntryFrame {
  // Every series has days of its own: readings are kept once.
  const readings = EVIDENCE.readings.map((one) => ({
    ...one,
    at: { ...one.at, at: one.at.at.replace('2026', String(year)) },
  }));
  year -= 1;
  const content = seriesMade({ ...EVIDENCE, readings, ...more }, inForce, PROGRAM);
  return clinic.frame('series', person, { ...content, ...bent }, { round: v7() });
}
const diary = (of = person) =>
  clinic.frame('diary-handed', of, {
    days: 7,
    readingsInSitting: 2,
    language: 'en',
    from: '2026-11-25',
    dueOn: '2026-12-02',
    note: null,
  });

async function problemsOf(...frames: EntryFrame[]): Promise<unknown> {
  const { status, body } = await clinic.sign(...frames);
  return status === 422
    ? body.problems.map(({ field, code }: { field: string; code: string }) => `${field} ${code}`)
    : status;
}
const rowOf = async () => {
  const { body } = await clinic.send('GET', '/api/books/care/persons');
  return body.persons.find(({ id }: { id: string }) => id === person).latest;
};

describe('a series', () => {
  test('is kept with its value, alerts in the list of people, is closed, and check finds nothing', async () => {
    const kept = series();
    expect(await problemsOf(kept)).toBe(201);
    expect(await rowOf()).toMatchObject({ actNow: 1, actNowFirst: 'severe-away', diary: null });
    const { findings, values } = (await clinic.send('GET', '/control/check')).body;
    expect([findings, values]).toEqual([[], 1]);
    const told = {
      conditions: ['severe-away'],
      toldWhom: 'Dr Larch (invented)',
      toldAt: { at: '2026-11-25T09:40:00+00:00', zone: 'Europe/Lisbon', asEntered: null },
      saidBack: 'calls today',
    };
    const elsewhere = clinic.frame('act-now-closed', person, told, { round: v7() });
    expect(await problemsOf(elsewhere)).toEqual(['/entries/0/round unknown-id']);
    expect(await problemsOf(clinic.frame('act-now-closed', person, told, { round: kept.round }))).toBe(201);
    expect(await rowOf()).toMatchObject({ actNow: 0 });
  });

  test('with another value than its readings give is refused, and one under a protocol that is not kept', async () => {
    const { value, computedBy } = series().content as ReturnType<typeof seriesMade>;
    const bent = { value: { ...value, used: 7 } };
    expect(await problemsOf(series({}, NOTHING_CHOSEN, bent))).toEqual([
      '/entries/0/content/value/used contradicts',
    ]);
    const own = { computedBy: { ...computedBy, rule: 'home-99' } };
    expect(await problemsOf(series({}, NOTHING_CHOSEN, own))).toEqual([
      '/entries/0/content/computedBy/rule unknown-id',
    ]);
    const protocol = presetProtocol({ home: 'ish-2020' });
    if (!protocol.ok) throw new Error('a preset');
    const ish = inForceUnder(protocol.value, protocolVersion(protocol.value));
    expect(await problemsOf(series({}, ish))).toEqual([
      '/entries/0/content/computedBy/presetVersion unknown-id',
    ]);
    await clinic.send('POST', '/api/protocols', { content: protocol.value });
    expect(await problemsOf(series({}, ish))).toBe(201);
    const preset = { computedBy: { ...computedBy, presetVersion: ish.presetVersion, preset: 'jsh-2019' } };
    expect(await problemsOf(series({}, ish, preset))).toEqual([
      '/entries/0/content/computedBy/preset contradicts',
    ]);
  });

  test('names a diary of its own person, which is then due no more', async () => {
    const handed = diary();
    expect(await problemsOf(handed)).toBe(201);
    expect(await rowOf()).toMatchObject({ diary: { entry: handed.id, dueOn: '2026-12-02' } });
    const other = diary(await clinic.addPerson());
    expect(await problemsOf(other)).toBe(201);
    for (const wrong of [v7(), other.id])
      expect(await problemsOf(series({ diary: wrong }))).toEqual(['/entries/0/content/diary unknown-id']);
    expect(await problemsOf(series({ diary: handed.id }))).toBe(201);
    expect(await rowOf()).toMatchObject({ diary: null });
  });

  test('is amended by one of its kind in its own round alone, and can be entered in error', async () => {
    const kept = series();
    expect(await problemsOf(kept)).toBe(201);
    const amends = { entry: kept.id, reason: 'typing-slip' as const, text: null };
    const again = series();
    expect(await problemsOf({ ...again, amends })).toEqual(['/entries/0/round contradicts']);
    const day = { ...series({ of: 'ambulatory' }), round: kept.round, amends };
    expect(await problemsOf(day)).toEqual(['/entries/0/amends/entry contradicts']);
    expect(await problemsOf({ ...again, round: kept.round, amends })).toBe(201);
    const mark = clinic.frame(
      'entered-in-error',
      person,
      { note: null },
      { amends: { ...amends, entry: again.id } },
    );
    expect(await problemsOf(mark)).toBe(201);
  });
});

describe('readings that are in the record already', () => {
  const readingsOf = (frame: EntryFrame) => (frame.content as unknown as SeriesEvidence).readings;

  test('are refused by their place, whatever a browser says; sent again with its id a series is not', async () => {
    const kept = series();
    expect(await problemsOf(kept)).toBe(201);
    expect(await problemsOf(kept)).toBe(200);
    const fresh = reading('2011-03-01T07:00:00+00:00', 131, 80);
    const again = series({ readings: [fresh, readingsOf(kept)[1] as SeriesReadingKept] });
    expect(await problemsOf(again)).toEqual(['/entries/0/content/readings/1 repeated']);
    const { body } = await clinic.sign(again);
    expect(body.problems[0].expected).toBe('a reading that no other series of this person has');
    // Two of one request, and another person with the same numbers.
    const both = [series({ readings: [fresh] }), series({ readings: [fresh] })];
    expect(await problemsOf(...both)).toEqual(['/entries/1/content/readings/0 repeated']);
    const stranger = await clinic.addPerson();
    expect(await problemsOf({ ...series({ readings: readingsOf(kept) }), person: stranger })).toBe(201);
  });

  test('of two browsers at once are kept by the first alone', async () => {
    const readings = [reading('2012-03-01T07:00:00+00:00', 131, 80)];
    const came = await Promise.all([problemsOf(series({ readings })), problemsOf(series({ readings }))]);
    expect(came.filter((one) => one === 201)).toHaveLength(1);
  });

  test('of a series in error can come in again', async () => {
    const kept = series();
    expect(await problemsOf(kept)).toBe(201);
    const amends = { entry: kept.id, reason: 'wrong-person' as const, text: null };
    expect(await problemsOf(clinic.frame('entered-in-error', person, { note: null }, { amends }))).toBe(201);
    expect(await problemsOf(series({ readings: readingsOf(kept) }))).toBe(201);
  });

  test('stay with the series that goes on with them, and a hand decides of what was added too', async () => {
    const kept = series();
    expect(await problemsOf(kept)).toBe(201);
    const added = [...readingsOf(kept), reading('2013-03-01T07:00:00+00:00', 131, 80)];
    const amends = { entry: kept.id, reason: 'other' as const, text: 'more days' };
    expect(await problemsOf({ ...series({ readings: added }), round: kept.round, amends })).toBe(201);
    const decide = (index: number) => {
      const content = { series: kept.id, decision: 'out', indexes: [index], reason: 'talked' };
      return clinic.frame('series-decided', person, content);
    };
    expect(await problemsOf(decide(4))).toBe(201);
    expect(await problemsOf(decide(5))).toEqual(['/entries/0/content/indexes/0 out-of-range']);
    expect(await problemsOf(series({ readings: added.slice(3) }))).toEqual([
      '/entries/0/content/readings/0 repeated',
    ]);
  });
});

test("a learner's series waits for a supervisor, who is somebody else, names it, and then it waits no more", async () => {
  const kept = series({ status: 'preliminary' });
  expect(await problemsOf(kept)).toBe(201);
  expect(await rowOf()).toMatchObject({ toCountersign: 1 });
  const supervisor = v7();
  await clinic.send('POST', '/api/agents', { id: supervisor, name: 'Bram (invented)' });
  const agreed = (more = {}, bent = {}) => {
    const content = { signing: kept.id, agrees: true, ownRound: null, note: null, ...bent };
    const as = { round: kept.round, role: 'supervisor' as const, agent: supervisor, ...more };
    return clinic.frame('countersigned', person, content, as);
  };
  expect(await problemsOf(agreed({ agent: clinic.agent }))).toEqual(['/entries/0/agent contradicts']);
  expect(await problemsOf(agreed({ round: v7() }))).toEqual(['/entries/0/content/signing unknown-id']);
  expect(await problemsOf(agreed({}, { signing: v7() }))).toEqual(['/entries/0/content/signing unknown-id']);
  expect(await problemsOf(agreed({ role: 'observer' }))).toEqual(['/entries/0/role contradicts']);
  // Whoever signed as a learner last, be it another series, countersigns none.
  const learner = v7();
  await clinic.send('POST', '/api/agents', { id: learner, name: 'Tansy (invented)' });
  const own = { ...series({ status: 'preliminary' }), agent: learner };
  expect(await problemsOf(own)).toBe(201);
  expect(await problemsOf(agreed({ agent: learner }))).toEqual(['/entries/0/agent contradicts']);
  expect(await problemsOf(agreed())).toBe(201);
  expect(await rowOf()).toMatchObject({ toCountersign: 1 });
  expect(await problemsOf(agreed({ round: own.round }, { signing: own.id }))).toBe(201);
  expect(await rowOf()).toMatchObject({ toCountersign: 0 });
});

test("to a learner's series nobody else adds while it waits; once it is countersigned they do, and are answered again as ever", async () => {
  const kept = series({ status: 'preliminary' });
  expect(await problemsOf(kept)).toBe(201);
  const supervisor = v7();
  await clinic.send('POST', '/api/agents', { id: supervisor, name: 'Sedge (invented)' });
  const amends = { entry: kept.id, reason: 'other' as const, text: 'more days' };
  const readings = [reading('2015-03-01T07:00:00+00:00', 131, 80)];
  const more = { ...series({ readings }), agent: supervisor, round: kept.round, amends };
  expect(await problemsOf(more)).toEqual(['/entries/0/amends/entry contradicts']);
  const asLearner = { ...series({ status: 'preliminary', readings }), agent: supervisor };
  expect(await problemsOf({ ...asLearner, round: kept.round, amends })).toEqual([
    '/entries/0/amends/entry contradicts',
  ]);
  const { body } = await clinic.sign(more);
  expect(body.problems[0]).toMatchObject({ rule: 'series-countersigned', field: '/entries/0/amends/entry' });
  const content = { signing: kept.id, agrees: true, ownRound: null, note: null };
  const as = { round: kept.round, role: 'supervisor' as const, agent: supervisor };
  const agreed = clinic.frame('countersigned', person, content, as);
  expect(await problemsOf(agreed)).toBe(201);
  expect(await problemsOf(more)).toBe(201);
  expect(await problemsOf(more)).toBe(200);
});

test('a learner adds to no series of somebody else, and nobody who signed one countersigns it', async () => {
  const kept = series();
  expect(await problemsOf(kept)).toBe(201);
  const named = async (name: string) => {
    const id = v7();
    await clinic.send('POST', '/api/agents', { id, name: `${name} (invented)` });
    return id;
  };
  const [adder, third] = [await named('Sorrel'), await named('Quill')];
  const amends = { entry: kept.id, reason: 'other' as const, text: 'more days' };
  const readings = [reading('2014-03-01T07:00:00+00:00', 131, 80)];
  const adding = { ...series({ status: 'preliminary', readings }), round: kept.round, amends };
  expect(await problemsOf({ ...adding, agent: adder })).toEqual(['/entries/0/amends/entry contradicts']);
  const more = { ...adding, id: v7() };
  expect(await problemsOf(more)).toBe(201);
  const by = (agent: string) => {
    const content = { signing: more.id, agrees: true, ownRound: null, note: null };
    return clinic.frame('countersigned', person, content, { round: kept.round, role: 'supervisor', agent });
  };
  expect(await problemsOf(by(clinic.agent))).toEqual(['/entries/0/agent contradicts']);
  expect(await problemsOf(by(third))).toBe(201);
});

describe('a decision about readings', () => {
  test('names a series of the person and readings that it has, to the last one', async () => {
    const kept = series();
    expect(await problemsOf(kept)).toBe(201);
    const decide = (indexes: number[], of: string = kept.id, whose = person) =>
      clinic.frame('series-decided', whose, { series: of, decision: 'out', indexes, reason: 'talked' });
    expect(await problemsOf(decide([1, 3]))).toBe(201);
    expect(await problemsOf(decide([1, 4]))).toEqual(['/entries/0/content/indexes/1 out-of-range']);
    expect(await problemsOf(decide([1], v7()))).toEqual(['/entries/0/content/series unknown-id']);
    const stranger = await clinic.addPerson();
    expect(await problemsOf(decide([1], kept.id, stranger))).toEqual([
      '/entries/0/content/series unknown-id',
    ]);
  });
});

test('series, decisions and diaries stand in a backup, and a restored record gives the same', async () => {
  const backup = (await clinic.send('GET', '/control/backup')).text;
  const target = await openMemory();
  try {
    const empty = await TestClinic.open(target, { agent: false });
    expect((await empty.send('POST', '/control/restore', backup)).status).toBe(200);
    const lines = (text: string) => text.trim().split('\n').slice(1, -1);
    expect(lines((await empty.send('GET', '/control/backup')).text)).toEqual(lines(backup));
    const path = `/api/books/care/persons/${person}`;
    const kinds = (await empty.send('GET', path)).body.entries.map(({ kind }: { kind: string }) => kind);
    expect(kinds).toEqual(expect.arrayContaining(['series', 'series-decided', 'diary-handed']));
    expect((await empty.send('GET', '/control/check')).body.findings).toEqual([]);
  } finally {
    await target.close();
  }
});

describe('a diary', () => {
  test('that will not come back is ended with a reason, and only one of the same person', async () => {
    const handed = diary();
    expect(await problemsOf(handed)).toBe(201);
    const ended = (of: string, reason: string) => clinic.frame('diary-ended', person, { diary: of, reason });
    expect(await problemsOf(ended(handed.id, ' '))).toEqual(['/entries/0/content/reason missing']);
    expect(await problemsOf(ended(v7(), 'lost'))).toEqual(['/entries/0/content/diary unknown-id']);
    expect(await problemsOf(ended(handed.id, 'lost'))).toBe(201);
    expect(await rowOf()).toMatchObject({ diary: null });
  });
});
