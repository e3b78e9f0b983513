import { NOTHING_CHOSEN, type SeriesReadingKept } from '@evenfall/record';
import type { Observation } from 'fhir/r4.js';
import { Kysely } from 'kysely';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { PATIENT_URL, sketches } from '../../../exchange/testing/sketches.js';
import { H1, homeEvidence, keptReading, seriesContentOf } from '../../../record/src/testing/series.js';
import { controlRoutes } from '../control/controlRoutes.js';
import { migrate } from '../database/migrations/index.js';
import type { Tables } from '../database/schema.js';
import { openMemory, type TestDatabase } from '../database/testing.js';
import { fillDemo } from '../demo/fillDemo.js';
import { createApi } from '../http/app.js';
import type { World } from '../http/world.js';
import { listPersons } from '../store/listPersons.js';
import { readPerson } from '../store/persons.js';
import { openSite } from '../store/site.js';
import { HESTER, TestClinic } from '../testing/clinic.js';

/** The database says itself when it took an entry: the clocks of these servers go with it. */
const NOW = new Date();

/** An empty or filled demo with the whole of its API, and what it is asked. */
async function openDemo(isFilled: boolean) {
  const database = await openMemory();
  const db = new Kysely<Tables>({ dialect: database.dialect });
  await migrate(db);
  const site = await openSite(db, { id: v7(), name: 'Demo (invented)', invented: true });
  if (isFilled) await fillDemo(db, site.id, NOW);
  const world: World = {
    db,
    site: () => site,
    siteChanged: async () => undefined,
    program: 'evenfall test',
    now: () => NOW,
    ticks: () => 0,
    log: () => undefined,
    fault: (error) => {
      throw error;
    },
  };
  const app = createApi(world);
  controlRoutes(app, world);
  const send = async (method: string, path: string, body?: string) =>
    await app.request(`http://localhost${path}`, {
      method,
      headers: { host: 'localhost', ...(body === undefined ? {} : { 'content-type': 'application/json' }) },
      ...(body === undefined ? {} : { body }),
    });
  return { database, db, site, send };
}

describe('every chart of the demo, exported and imported into an empty record', () => {
  let from: Awaited<ReturnType<typeof openDemo>>;
  let into: Awaited<ReturnType<typeof openDemo>>;
  beforeAll(async () => {
    from = await openDemo(true);
    into = await openDemo(false);
  }, 120_000);
  afterAll(async () => {
    await from.database.close();
    await into.database.close();
  });

  test('is the same record: entries by id, evidence, amendments, when they were recorded, who', async () => {
    const people = await listPersons(from.db, from.site.id, 'care');
    expect(people.length).toBeGreaterThan(10);
    let withGauges = 0;
    for (const { id: person } of people) {
      const bundle = await (
        await from.send('GET', `/api/books/care/persons/${person}/export?as=fhir&identity=with`)
      ).text();
      const came = await (await into.send('POST', '/control/import', bundle)).json();
      const before = await readPerson(from.db, { site: from.site.id, book: 'care', person });
      const after = await readPerson(into.db, { site: into.site.id, book: 'care', person });
      // The gauges of two people may be the same ones; all else of the second is new.
      const gauges = came.added + came.already - (before?.entries.length ?? 0);
      expect(came).toMatchObject({ format: 'fhir', person, refused: [], passedOver: {} });
      expect(gauges).toBeGreaterThanOrEqual(came.already);
      withGauges += gauges > 0 ? 1 : 0;
      expect(after).toEqual(before);
      const again = await (await into.send('POST', '/control/import', bundle)).json();
      expect(again).toMatchObject({ added: 0, already: came.added + came.already, refused: [] });
    }
    expect(withGauges).toBeGreaterThan(0);
    const check = await (await into.send('GET', '/control/check')).json();
    expect(check).toMatchObject({ findings: [] });
  }, 120_000);

  test('without who it is, somebody who is not here is refused', async () => {
    const third = await openDemo(false);
    const [first] = await listPersons(from.db, from.site.id, 'care');
    const path = `/api/books/care/persons/${first?.id}/export?as=fhir`;
    const bundle = await (await from.send('GET', path)).text();
    const came = await third.send('POST', '/control/import', bundle);
    expect(came.status).toBe(422);
    expect(await came.json()).toMatchObject({
      problems: [{ code: 'missing', expected: expect.stringContaining('--with-identity') }],
    });
    expect(await listPersons(third.db, third.site.id, 'care')).toEqual([]);
    // Who is here already is known by the id.
    const known = await into.send('POST', '/control/import', bundle);
    expect(await known.json()).toMatchObject({ added: 0, refused: [] });
    await third.database.close();
  }, 60_000);

  test('one entry whose value is not what its evidence gives is refused by its place, and the rest is kept', async () => {
    const third = await openDemo(false);
    const people = await listPersons(from.db, from.site.id, 'care');
    const counted = people.find(({ latest }) => latest.pulse !== null);
    const path = `/api/books/care/persons/${counted?.id}/export?as=fhir&identity=with`;
    const bundle = await (await from.send('GET', path)).text();
    const bent = bundle.replace(/\\"n\\":(\d+)/, (_, n) => `\\"n\\":${Number(n) + 1}`);
    expect(bent).not.toBe(bundle);
    const came = (await (await third.send('POST', '/control/import', bent)).json()) as {
      added: number;
      refused: { field: string }[];
    };
    expect(came.added).toBeGreaterThan(0);
    expect(came.refused.length).toBeGreaterThan(0);
    for (const { field } of came.refused) expect(field).toMatch(/^\/entry\/\d+\/resource\//);
    await third.database.close();
  }, 60_000);
});

describe('values of another system', () => {
  let database: TestDatabase;
  let clinic: TestClinic;
  beforeAll(async () => {
    database = await openMemory();
    clinic = await TestClinic.open(database);
  }, 60_000);
  afterAll(() => database.close());

  const bundle = (...resources: object[]) => ({
    resourceType: 'Bundle',
    type: 'collection',
    entry: resources.map((resource) => ({ resource })),
  });
  const bring = async (person: string | null, ...resources: object[]) =>
    await clinic.send(
      'POST',
      `/control/import${person === null ? '' : `?person=${person}`}`,
      bundle(...resources),
    );
  const entriesOf = async (person: string) =>
    (await clinic.send('GET', `/api/books/care/persons/${person}`)).body.entries as {
      id: string;
      kind: string;
      amends: { entry: string } | null;
      content: { value?: object };
      role: string;
    }[];
  const bent = (of: Observation, by: object) => ({ ...of, ...by });

  test('become values from elsewhere, once, by whoever imported', async () => {
    const person = await clinic.addPerson();
    const all = Object.values(sketches);
    expect((await bring(person, ...all)).body).toMatchObject({ added: 6, already: 0, refused: [] });
    expect((await bring(person, ...all)).body).toMatchObject({ added: 0, already: 6, refused: [] });
    const reported = (await entriesOf(person)).filter(({ kind }) => kind === 'reported');
    expect(reported).toHaveLength(6);
    expect(new Set(reported.map(({ role }) => role))).toEqual(new Set(['importer']));
  });

  // FHIR R4, Observation.identifier: several measurements may have the identifier of one order.
  test('said as a correction at another time stand beside those of their name, and the answer says so by place', async () => {
    const person = await clinic.addPerson();
    await bring(person, sketches.pulse);
    const moved = { status: 'corrected', effectiveDateTime: '2025-03-01T23:59:00+00:00' };
    const came = await bring(person, bent(sketches.pulse, moved));
    expect(came.body).toMatchObject({
      added: 1,
      refused: [],
      unclear: [{ field: '/entry/0/resource', code: 'ambiguous' }],
    });
    expect(came.body.unclear[0].expected).toContain('which measurement this corrects');
    expect(came.body.unclear[0].got).toBeTruthy();
    expect((await entriesOf(person)).filter(({ amends }) => amends !== null)).toEqual([]);
  });

  test('that the source corrects amend what it said; what it takes back is marked, and stays readable', async () => {
    const person = await clinic.addPerson();
    await bring(person, sketches.pulse);
    const quantity = { ...sketches.pulse.valueQuantity, value: 74 };
    const corrected = bent(sketches.pulse, { status: 'corrected', valueQuantity: quantity });
    expect((await bring(person, corrected)).body).toMatchObject({ added: 1 });
    const [first, second] = (await entriesOf(person)).filter(({ kind }) => kind === 'reported');
    const pair = [first, second].sort((a) => (a?.amends === null ? -1 : 1));
    expect(pair[1]?.amends?.entry).toBe(pair[0]?.id);
    expect((await bring(person, bent(corrected, { status: 'entered-in-error' }))).body).toMatchObject({
      added: 1,
      already: 1,
    });
    const marks = (await entriesOf(person)).filter(({ kind }) => kind === 'entered-in-error');
    expect(marks.map(({ amends }) => amends?.entry)).toEqual([pair[1]?.id]);
    expect((await bring(person, bent(corrected, { status: 'entered-in-error' }))).body).toMatchObject({
      added: 0,
    });
  });

  test('never replace a value that was taken here', async () => {
    const person = await clinic.addPerson();
    const pulse = clinic.pulse(person, 66, 30);
    await clinic.sign(pulse);
    await bring(person, sketches.pulse);
    const [reported] = (await entriesOf(person)).filter(({ kind }) => kind === 'reported');
    const content = { ...reported?.content };
    const { frame: _f, ...around } = pulse;
    const bad = {
      ...around,
      id: v7(),
      kind: 'reported',
      schema: 2,
      round: null,
      content,
      amends: { entry: pulse.id, reason: 'typing-slip', text: null },
    };
    const came = await clinic.send('POST', '/api/entries', { entries: [bad] });
    expect(came.status).toBe(422);
    expect(came.body.problems).toMatchObject([{ field: '/entries/0/amends/entry', code: 'contradicts' }]);
  });

  test('need to be told whose they are, here', async () => {
    expect((await bring(null, sketches.pulse)).body.problems).toMatchObject([
      { field: '--person', code: 'missing' },
    ]);
    const nobody = v7();
    expect((await bring(nobody, sketches.pulse)).body.problems).toMatchObject([
      { field: '--person', code: 'unknown-id' },
    ]);
  });

  test('of somebody with another birth date are refused whole; with the same, or none, they are taken', async () => {
    const person = await clinic.addPerson();
    const patient = (birthDate: string) => ({ resourceType: 'Patient', id: 'p', birthDate });
    const other = await bring(person, patient('1961-02-27'), sketches.pulse);
    expect(other.body.problems).toMatchObject([{ field: '--person', code: 'contradicts' }]);
    expect((await entriesOf(person)).filter(({ kind }) => kind === 'reported')).toEqual([]);
    const same = await bring(person, patient(HESTER.birthDate as string), sketches.pulse);
    expect(same.body).toMatchObject({ added: 1 });
  });

  test('that are marked as test data go into no clinic', async () => {
    const person = await clinic.addPerson();
    const marked = bent(sketches.pulse, { meta: { security: [{ code: 'HTEST' }] } });
    expect((await bring(person, marked)).body.problems).toMatchObject([
      { field: '/meta/security', code: 'contradicts' },
    ]);
  });

  test('from a day that has not come yet are refused, and the rest is kept', async () => {
    const person = await clinic.addPerson();
    const ahead = bent(sketches.heard, { effectiveDateTime: '2026-11-26T10:00:01Z' });
    const limit = bent(sketches.felt, { effectiveDateTime: '2026-11-26T10:00:00Z' });
    const came = await bring(person, sketches.pulse, ahead, limit);
    expect(came.body).toMatchObject({
      added: 2,
      refused: [{ field: '/entry/1/resource/measuredAt/at', code: 'out-of-range' }],
    });
  });

  describe('a table', () => {
    const tableOf = async (person: string) =>
      (await clinic.send('GET', `/api/books/care/persons/${person}/export?as=csv&identity=with`)).text;
    const bringTable = async (text: string, person?: string) =>
      await clinic.send('POST', `/control/import${person === undefined ? '' : `?person=${person}`}`, text);

    test('of this record adds nothing to it', async () => {
      const person = await clinic.addPerson();
      await clinic.sign(clinic.pulse(person, 66, 30));
      await bring(person, sketches.heard);
      const before = await entriesOf(person);
      expect((await bringTable(await tableOf(person))).body).toMatchObject({
        format: 'csv',
        person,
        added: 0,
        already: 2,
        refused: [],
      });
      expect(await entriesOf(person)).toEqual(before);
    });

    test('for another chart becomes values from elsewhere, once; a bad row is told by line, heading and column', async () => {
      const from = await clinic.addPerson();
      await clinic.sign(clinic.pulse(from, 66, 30));
      await clinic.sign(clinic.pressure(from, { method: 'palpation', palpated: { backMmHg: 124 } }));
      const text = (await tableOf(from)).replace(',132,', ',a lot,');
      const person = await clinic.addPerson();
      const came = await bringTable(text, person);
      expect(came.body).toMatchObject({ added: 1, already: 0 });
      expect(came.body.refused).toMatchObject([
        { field: 'perMinute', line: expect.any(Number), column: 10, code: 'not-a-number', got: 'a lot' },
      ]);
      expect((await bringTable(text, person)).body).toMatchObject({ added: 0, already: 1 });
      const [reported] = (await entriesOf(person)).filter(({ kind }) => kind === 'reported');
      expect(reported?.content.value).toEqual({ of: 'pressure', systolic: 124, diastolic: null });
    });

    const withSeries = async (of: 'home' | 'ambulatory', readings: SeriesReadingKept[]) => {
      const person = await clinic.addPerson();
      const content = seriesContentOf(homeEvidence(readings, { of }), NOTHING_CHOSEN);
      const came = await clinic.sign(clinic.frame('series', person, content, { round: v7() }));
      if (came.status >= 300) throw new Error(came.text);
      return person;
    };

    test('with readings of a series passes them over where the series is, and elsewhere takes each as a value', async () => {
      const failed = keptReading('2026-07-08T07:30:00.000+01:00', '');
      const blank = { ...failed, systolic: null };
      const from = await withSeries('ambulatory', [...H1, blank]);
      const text = await tableOf(from);
      const before = await entriesOf(from);
      // 28 pressures with a pulse each, and a measurement that failed.
      expect((await bringTable(text)).body).toMatchObject({
        person: from,
        added: 0,
        already: 56,
        refused: [],
        passedOver: { withoutNumber: 1 },
      });
      expect(await entriesOf(from)).toEqual(before);
      const person = await clinic.addPerson();
      const came = await bringTable(text, person);
      expect(came.body).toMatchObject({ added: 56, refused: [], passedOver: { withoutNumber: 1 } });
      expect((await bringTable(text, person)).body).toMatchObject({ added: 0, already: 56 });
      const reported = (await entriesOf(person)).filter(({ kind }) => kind === 'reported');
      expect(reported.filter(({ amends }) => amends !== null)).toEqual([]);
      expect(
        reported.find(({ content: { value } }) => value !== undefined && 'systolic' in value)?.content,
      ).toMatchObject({ method: 'over 24 hours', value: { of: 'pressure' } });
    });

    test('written with who it is makes the person where they are not; without, it is refused and says how', async () => {
      const from = await clinic.addPerson();
      await clinic.sign(clinic.pulse(from, 66, 30));
      const named = await tableOf(from);
      const plain = (await clinic.send('GET', `/api/books/care/persons/${from}/export?as=csv`)).text;
      const other = await TestClinic.open(await openMemory());
      const refused = await other.send('POST', '/control/import', plain);
      expect(refused.body.problems).toMatchObject([
        { code: 'missing', expected: expect.stringContaining('--with-identity') },
      ]);
      // Another person than the table says is nobody to make.
      expect((await other.send('POST', `/control/import?person=${v7()}`, named)).body.problems).toMatchObject(
        [{ code: 'unknown-id', field: '--person' }],
      );
      // A table of which nothing can be read makes nobody.
      const newer = await other.send('POST', '/control/import', named.replaceAll('chart-9', 'chart-10'));
      expect(newer.status).toBe(422);
      expect((await other.send('GET', `/api/books/care/persons/${from}`)).status).toBe(404);
      // A number that a spreadsheet may have changed names nobody; a person who is named takes what was measured.
      const bare = named.replaceAll(`'${HESTER.number}`, String(HESTER.number));
      expect(bare).not.toBe(named);
      const doubtful = await other.send('POST', '/control/import', bare);
      expect(doubtful.body.problems).toMatchObject([
        { code: 'ambiguous', field: 'number', expected: expect.stringContaining('bundle') },
      ]);
      expect((await other.send('GET', `/api/books/care/persons/${from}`)).status).toBe(404);
      const somebody = await other.addPerson();
      const charted = await other.send('POST', `/control/import?person=${somebody}`, bare);
      expect(charted.body).toMatchObject({ person: somebody, added: 1, refused: [] });
      const came = await other.send('POST', '/control/import', named);
      expect(came.body).toMatchObject({ person: from, added: 2, already: 0, refused: [] });
      const made = (await other.send('GET', `/api/books/care/persons/${from}`)).body;
      expect(made.identity).toEqual(HESTER);
      expect(made.entries.map(({ kind }: { kind: string }) => kind).toSorted()).toEqual([
        'person',
        'reported',
      ]);
      expect((await other.send('POST', '/control/import', named)).body).toMatchObject({
        added: 0,
        already: 1,
      });
      expect((await other.send('GET', '/control/check')).body).toMatchObject({ findings: [] });
      await other.db.destroy();
    });

    test('of invented people goes into no clinic', async () => {
      const person = await clinic.addPerson();
      await clinic.sign(clinic.pulse(person, 66, 30));
      const text = (await tableOf(person)).replace('evenfall-chart-9,,', 'evenfall-chart-9,INVENTED,');
      expect((await bringTable(text)).body.problems).toMatchObject([
        { field: 'notice', code: 'contradicts' },
      ]);
    });
  });

  test('text that no database takes is refused by its place, and is no fault of the program', async () => {
    const person = await clinic.addPerson();
    const bad = bent(sketches.pulse, { note: [{ text: 'a\0b' }] });
    expect((await bring(person, bad)).body.problems).toMatchObject([
      { field: '/entry/0/resource/note/0/text', code: 'contradicts' },
    ]);
    expect(clinic.faults).toEqual([]);
  });

  test('nobody of a foreign file becomes somebody who acts here', async () => {
    const person = await clinic.addPerson();
    const id = v7();
    await bring(
      person,
      { resourceType: 'Practitioner', id, name: [{ text: 'Mallow (invented)' }] },
      sketches.pulse,
    );
    const { agents } = (await clinic.send('GET', '/api/agents')).body as { agents: { id: string }[] };
    expect(agents.map((one) => one.id)).not.toContain(id);
  });

  test('a file that is no bundle adds nothing', async () => {
    for (const text of ['{', 'null', '[]', '{"resourceType":"Patient"}']) {
      const came = await clinic.send('POST', '/control/import', text);
      expect([came.status, text]).toEqual([422, text]);
    }
    expect(PATIENT_URL).toMatch(/^urn:uuid:/);
  });
});
