import type { Provenance } from 'fhir/r4.js';
import { v7 } from 'uuid';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { sketches } from '../../../exchange/testing/sketches.js';
import { openMemory, type TestDatabase } from '../database/testing.js';
import { TestClinic } from '../testing/clinic.js';

let database: TestDatabase;
let clinic: TestClinic;
beforeAll(async () => {
  database = await openMemory();
  clinic = await TestClinic.open(database);
}, 60_000);
afterAll(() => database.close());

// Bundles shaped as the sketches of FHIR R4 that the exchange package reads (packages/exchange/testing/sketches).
const bundle = (...resources: object[]) =>
  JSON.stringify({
    resourceType: 'Bundle',
    type: 'collection',
    entry: resources.map((resource) => ({ resource })),
  });
const bring = (person: string, file: string, keep: boolean, agent = clinic.agent) =>
  clinic.send('POST', `/api/books/care/persons/${person}/import`, { file, agent, keep });
const entriesOf = async (person: string) =>
  (await clinic.send('GET', `/api/books/care/persons/${person}`)).body.entries as {
    id: string;
    kind: string;
    agent: string;
  }[];
const SUGAR = {
  ...sketches.pulse,
  id: 'sugar',
  code: { coding: [{ system: 'http://loinc.org', code: '2339-0' }] },
};

test('a file is asked about, and nothing of it is kept; then it is kept in the name of who brought it; then it adds nothing', async () => {
  const person = await clinic.addPerson();
  const before = await entriesOf(person);
  const file = bundle(sketches.pulse, SUGAR, sketches.heard);
  const asked = await bring(person, file, false);
  expect(asked.status).toBe(200);
  expect(asked.body).toMatchObject({
    format: 'fhir',
    kept: false,
    added: 2,
    already: 0,
    refused: [{ field: '/entry/1/resource/code', code: 'unknown-id', got: '2339-0' }],
  });
  expect(asked.body.entries.map(({ kind }: { kind: string }) => kind)).toEqual(['reported', 'reported']);
  expect(await entriesOf(person)).toEqual(before);

  const kept = await bring(person, file, true);
  expect(kept.status).toBe(201);
  expect(kept.body).toMatchObject({ kept: true, added: 2, refused: asked.body.refused });
  const after = (await entriesOf(person)).filter(({ kind }) => kind === 'reported');
  expect(after.map(({ id }) => id).sort()).toEqual(
    asked.body.entries.map(({ id }: { id: string }) => id).sort(),
  );
  expect(new Set(after.map(({ agent }) => agent))).toEqual(new Set([clinic.agent]));

  for (const keep of [false, true]) {
    const again = await bring(person, file, keep);
    expect([again.status, again.body.added, again.body.already]).toEqual([200, 0, 2]);
    expect(again.body.entries).toEqual([]);
  }
  expect((await entriesOf(person)).filter(({ kind }) => kind === 'reported')).toEqual(after);
});

test('an entry that the checks of the record refuse leaves the rest of the file to be kept', async () => {
  const person = await clinic.addPerson();
  const ahead = { ...sketches.heard, effectiveDateTime: '2026-11-26T10:00:01Z' };
  const came = await bring(person, bundle(sketches.pulse, ahead), true);
  expect(came.body).toMatchObject({
    added: 1,
    refused: [{ field: '/entry/1/resource/measuredAt/at', code: 'out-of-range' }],
  });
});

test('a table names row and column of what it refuses', async () => {
  const from = await clinic.addPerson();
  await clinic.sign(clinic.pulse(from, 66, 30));
  await clinic.sign(clinic.pressure(from, { method: 'palpation', palpated: { backMmHg: 124 } }));
  const path = `/api/books/care/persons/${from}/export?as=csv&identity=with`;
  const text = (await clinic.send('GET', path)).text.replace(',132,', ',a lot,');
  const person = await clinic.addPerson();
  expect((await bring(person, text, true)).body).toMatchObject({
    format: 'csv',
    added: 1,
    refused: [{ field: 'perMinute', line: expect.any(Number), column: 10, got: 'a lot' }],
  });
});

test('a file of another person, or that cannot be read, keeps nothing and says so', async () => {
  const person = await clinic.addPerson();
  const before = await entriesOf(person);
  const patient = { resourceType: 'Patient', id: 'p', birthDate: '1961-02-27' };
  const other = await bring(person, bundle(patient, sketches.pulse), true);
  expect([other.status, other.body.problems[0].field]).toEqual([422, '/person']);
  for (const file of ['', '{', '[]', 'a;b\n1;2', '{"resourceType":"Patient"}'])
    expect([file, (await bring(person, file, true)).status]).toEqual([file, 422]);
  expect(await entriesOf(person)).toEqual(before);
  expect((await bring(v7(), bundle(sketches.pulse), true)).status).toBe(404);
  const nobody = await bring(person, bundle(sketches.pulse), true, v7());
  expect(nobody.body.problems).toMatchObject([{ field: '/agent', code: 'unknown-id' }]);
  expect(clinic.faults).toEqual([]);
});

test('a body at the limit is read, and one byte more is refused by the limit', async () => {
  const person = await clinic.addPerson();
  const file = bundle(sketches.pulse);
  const limit = 8 * 1024 * 1024;
  const about = JSON.stringify({ file, agent: clinic.agent, keep: false }).length;
  const padded = (bytes: number) => file + ' '.repeat(bytes - about);
  const send = async (bytes: number) => {
    const text = JSON.stringify({ file: padded(bytes), agent: clinic.agent, keep: false });
    const length = { 'content-length': String(text.length) };
    return await clinic.send('POST', `/api/books/care/persons/${person}/import`, text, length);
  };
  expect((await send(limit)).status).toBe(200);
  const over = await send(limit + 1);
  expect(over.status).toBe(413);
  expect(over.body.problems[0].message).toMatch(/at most 8,?388,?608 bytes/);
});

test('with accounts a learner brings nothing, a clinician values from elsewhere, an owner the record of an Evenfall', async () => {
  const other = await openMemory();
  const there = await TestClinic.open(other);
  const person = await there.addPerson();
  const own = (await there.send('GET', `/api/books/care/persons/${person}/export?as=fhir`)).text;
  const phrase = 'a lamp beside the green door';
  const agents: Record<string, string> = {};
  for (const [name, roles] of [
    ['ines', ['owner', 'supervisor']],
    ['wren', ['clinician']],
    ['sol', ['learner']],
  ] as const) {
    const { body, sent } = await there.addAccount(name, roles);
    agents[name] = body.agent.id;
    there.cookie = null;
    await there.send('POST', '/api/sign-in', { signIn: name, passPhrase: sent.passPhrase });
    const chosen = { old: sent.passPhrase, passPhrase: phrase };
    expect((await there.send('PUT', '/api/sign-in/pass-phrase', chosen)).status).toBe(200);
  }
  const as = async (name: string, file: string, agent = agents[name]) => {
    there.cookie = null;
    await there.send('POST', '/api/sign-in', { signIn: name, passPhrase: phrase });
    const path = `/api/books/care/persons/${person}/import`;
    return await there.send('POST', path, { file, agent, keep: true });
  };
  const learner = await as('sol', bundle(sketches.pulse));
  expect([learner.status, learner.body.problems[0].message]).toEqual([
    403,
    expect.stringMatching(/clinician or supervisor/),
  ]);
  expect((await as('wren', bundle(sketches.pulse), agents.ines)).status).toBe(403);
  expect((await as('wren', bundle(sketches.pulse))).body).toMatchObject({ added: 1 });
  // An entry that was not here before, as another Evenfall would have it: the same chart with one more count.
  const frame = there.pulse(person, 66, 30);
  const kept = JSON.parse(own) as { entry: { fullUrl: string; resource: Provenance }[] };
  const one = kept.entry.find(({ resource }) => resource.resourceType === 'Provenance');
  const url = one?.resource.extension?.[0]?.url ?? '';
  const extension = [
    { url, valueString: JSON.stringify({ ...frame, recordedAt: '2026-11-25T10:00:00.000Z' }) },
  ];
  const resource = { ...(one?.resource as Provenance), id: v7(), extension };
  kept.entry.push({ fullUrl: `urn:uuid:${resource.id}`, resource });
  const barred = await as('wren', JSON.stringify(kept));
  expect([barred.status, barred.body.problems[0].message]).toEqual([403, expect.stringMatching(/owner/)]);
  const brought = await as('ines', JSON.stringify(kept));
  expect(brought.body).toMatchObject({ added: 1, entries: [{ id: frame.id, agent: frame.agent }] });
  // What is here already is no matter of whose it is.
  expect((await as('wren', JSON.stringify(kept))).body).toMatchObject({ added: 0 });
  await other.close();
}, 60_000);

test('the pressures of a bundle come back as a table, and nothing is kept', async () => {
  const ask = (file: string) => clinic.send('POST', '/api/series-tables', { file, of: 'home' });
  const answer = await ask(bundle(sketches.heard));
  expect(answer.status).toBe(200);
  const [heading, line] = (answer.body.text as string).split('\n');
  expect(heading).toBe('time,systolic,diastolic,pulse,site,arm,device,note,started');
  expect(line).toMatch(/,128,82,/);
  expect(await ask('{"resourceType":"Patient"}')).toMatchObject({
    status: 422,
    body: { problems: [{ field: '/file', rule: 'fhir-bundle' }] },
  });
});
