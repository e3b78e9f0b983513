import { CLASS_IDENTIFIERS, type EntryFrame } from '@evenfall/record';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openMemory, type TestDatabase } from '../database/testing.js';
import { Classroom, END_OF_DAY } from '../testing/classroom.js';
import { TestClinic } from '../testing/clinic.js';
import { openSessions } from './classSessions.js';
import { readSite } from './site.js';

type Problem = { field: string; code: string; expected: string };

// What becomes of a session at its end is in endClassSession.test.ts, on each kind of database.
describe('a class session', () => {
  let database: TestDatabase;
  let clinic: TestClinic;
  let room: Classroom;
  beforeAll(async () => {
    database = await openMemory();
    clinic = await TestClinic.open(database);
    room = new Classroom(clinic, database);
  }, 60_000);
  afterAll(async () => {
    await database.close();
  });

  const problems = (body: { problems: Problem[] }) => body.problems.map(({ field, code }) => [field, code]);
  const refused = async (frame: EntryFrame) => problems((await clinic.sign(frame)).body);
  const begun = (entry: EntryFrame) => clinic.send('POST', '/api/class-sessions', { entry });

  test('is begun, holds people under a pseudonym, and is listed while it is open', async () => {
    const session = await room.begin();
    const subject = await room.addSubject(session, 'Heron');
    expect((await clinic.sign(room.pulse(subject, session))).status).toBe(201);
    const { body } = await clinic.send('GET', '/api/class-sessions');
    const found = body.sessions.find(({ id }: { id: string }) => id === session);
    expect(found).toEqual({
      id: session,
      title: 'Tuesday group (invented)',
      agent: clinic.agent,
      begunAt: expect.stringMatching(/^\d{4}-.*Z$/),
      endsBy: END_OF_DAY,
      isOverdue: false,
      goneAt: '2026-11-27T00:00:00.000Z',
      persons: 1,
      rounds: 1,
    });
    const read = await clinic.send('GET', `/api/class-sessions/${session}`);
    expect(read.body).toEqual({
      session: found,
      persons: [{ id: subject, classIdentity: { pseudonym: 'Heron', ageYears: 24 }, rounds: 1 }],
    });
    expect((await clinic.send('GET', `/api/class-sessions/${v7()}`)).status).toBe(404);
  });

  test('begun again is the same session, with other content a conflict', async () => {
    const entry = room.beginning();
    expect((await begun(entry)).status).toBe(201);
    expect((await begun(entry)).status).toBe(200);
    expect((await begun({ ...entry, content: { ...entry.content, title: 'x' } })).status).toBe(409);
  });

  // The clinic's clock says 10:00; a day of 25 h at most, by the server's clock (docs/conventions.md section 9).
  test.each([
    ['2026-11-25T09:59:59.999Z', 422],
    ['2026-11-25T10:00:00.000Z', 422],
    ['2026-11-25T10:00:00.001Z', 201],
    ['2026-11-26T11:00:00.000Z', 201],
    ['2026-11-26T11:00:00.001Z', 422],
    ['2026-11-26T12:00:00.000+01:00', 201],
  ])('planned until %s is answered %d', async (endsBy, status) => {
    const came = await begun(room.beginning(endsBy));
    expect(came.status).toBe(status);
    if (status === 422) expect(problems(came.body)).toEqual([['/entry/content/endsBy', 'out-of-range']]);
  });

  test('is overdue from the end of its day on', async () => {
    const session = await room.begin('2026-11-25T12:00:00Z');
    const site = (await readSite(clinic.db))?.id ?? '';
    const at = async (now: string) =>
      (await openSessions(clinic.db, site, new Date(now))).find(({ id }) => id === session)?.isOverdue;
    expect(await at('2026-11-25T11:59:59.999Z')).toBe(false);
    expect(await at('2026-11-25T12:00:00.000Z')).toBe(true);
  });

  test('is begun by a teacher, in the class book, by its own route', async () => {
    const entry = room.beginning();
    expect(problems((await begun({ ...entry, role: 'observer' })).body)).toEqual([
      ['/entry/role', 'contradicts'],
    ]);
    expect(problems((await begun({ ...entry, book: 'care' })).body)).toEqual([
      ['/entry/book', 'contradicts'],
    ]);
    expect((await clinic.sign(entry)).body.problems).toMatchObject([{ field: '/entries/0/kind' }]);
    expect(problems((await begun(clinic.frame('protocol-chosen', null, { version: null }))).body)).toEqual([
      ['/entry/kind', 'contradicts'],
    ]);
  });

  test('takes readings of the class book, which stand in no chart and without no session', async () => {
    const session = await room.begin();
    const subject = await room.addSubject(session, 'Curlew');
    expect(await refused(room.pulse(subject, null))).toEqual([['/entries/0/session', 'missing']]);
    expect(await refused(room.pulse(subject, v7()))).toEqual([['/entries/0/session', 'unknown-id']]);
    const cared = await clinic.addPerson();
    expect(await refused(clinic.pulse(cared, 19, 15, { session }))).toEqual([
      ['/entries/0/session', 'contradicts'],
    ]);
    const simulated = await clinic.addPerson(undefined, 'simulated');
    expect(await refused(clinic.pulse(simulated, 19, 15, { session, book: 'simulated' }))).toEqual([
      ['/entries/0/session', 'contradicts'],
    ]);
    await room.end(session);
    expect(await refused(room.pulse(subject, session))).toContainEqual(['/entries/0/session', 'unknown-id']);
  });

  test('keeps no fact about a body and no choice of the place', async () => {
    const session = await room.begin();
    const subject = await room.addSubject(session, 'Ruff');
    const about = { fact: 'pregnancy', weeks: 30 };
    const fact = { about, from: '2026-11-25', until: null, text: null };
    const ofClass = { book: 'class', session } as const;
    expect(await refused(clinic.frame('fact', subject, fact, ofClass))).toEqual([
      ['/entries/0/kind', 'contradicts'],
    ]);
    const chosen = clinic.frame('protocol-chosen', null, { version: null }, ofClass);
    expect(await refused(chosen)).toEqual([['/entries/0/kind', 'contradicts']]);
  });

  test('has amendments of its own readings, and of no other session', async () => {
    const [one, other] = [await room.begin(), await room.begin()];
    const subject = await room.addSubject(one, 'Dunlin');
    const pulse = room.pulse(subject, one);
    expect((await clinic.sign(pulse)).status).toBe(201);
    expect(await refused(room.pulse(subject, other, clinic.amending(pulse)))).toEqual([
      ['/entries/0/amends/entry', 'contradicts'],
    ]);
    expect((await clinic.sign(room.pulse(subject, one, clinic.amending(pulse)))).status).toBe(201);
  });
});

describe('a person of a class session', () => {
  let database: TestDatabase;
  let clinic: TestClinic;
  let room: Classroom;
  let session: string;
  beforeAll(async () => {
    database = await openMemory();
    clinic = await TestClinic.open(database);
    room = new Classroom(clinic, database);
    session = await room.begin();
  }, 60_000);
  afterAll(async () => {
    await database.close();
  });

  const add = (body: object, into = session) =>
    clinic.send('POST', `/api/class-sessions/${into}/persons`, body);
  const places = (body: { problems: Problem[] }) =>
    body.problems.map(({ field, code }) => `${field} ${code}`).sort();

  test('is added once, however often it is sent, and keeps the pseudonym it was added under', async () => {
    const body = room.adding(session, 'Avocet');
    expect([(await add(body)).status, (await add(body)).status]).toEqual([201, 200]);
    const other = { ...body, identity: { pseudonym: 'Stilt', ageYears: 24 } };
    expect((await add(other)).status).toBe(409);
    expect((await clinic.chart(body.entry.person ?? '', 'class')).body).toMatchObject({
      identity: null,
      classIdentity: { pseudonym: 'Avocet', ageYears: 24 },
    });
  });

  test('has no name, birth date or number', async () => {
    const { entry } = room.adding(session, 'x');
    const identity = { name: 'Hester Quillfeather (invented)', birthDate: '1961-02-28', number: null };
    expect(places((await add({ identity, entry })).body)).toEqual([
      '/identity/ageYears missing',
      '/identity/birthDate unknown-field',
      '/identity/name unknown-field',
      '/identity/number unknown-field',
      '/identity/pseudonym missing',
    ]);
    const named = { ...entry, schema: 1, content: { identifiers: ['name', 'birthDate'] } };
    expect(places((await add({ identity: { pseudonym: 'x', ageYears: null }, entry: named })).body)).toEqual([
      '/entry/content/identifiers contradicts',
    ]);
    expect(await room.tracesOf('Quillfeather')).toEqual([]);
  });

  test('is added in its session and nowhere else', async () => {
    const { identity, entry } = room.adding(session, 'Whimbrel');
    for (const book of ['class', 'care', 'simulated'])
      expect((await clinic.send('POST', `/api/books/${book}/persons`, { identity, entry })).status).toBe(422);
    expect((await add({ identity, entry }, v7())).status).toBe(404);
    const other = await room.begin();
    expect(places((await add({ identity, entry }, other)).body)).toEqual(['/entry/session contradicts']);
  });

  test('of another book has two identifiers, and no pseudonym alone', async () => {
    const identity = { name: 'Heron (invented)', birthDate: null, number: 'INV-1' };
    const lone = clinic.frame('person', v7(), { identifiers: CLASS_IDENTIFIERS }, { schema: 2 });
    expect(
      places((await clinic.send('POST', '/api/books/care/persons', { identity, entry: lone })).body),
    ).toEqual(['/entry/content/identifiers contradicts']);
  });

  test('has a pseudonym that nobody else of the session has, whatever the case', async () => {
    expect((await room.add(session, 'Redshank')).status).toBe(201);
    expect(places((await room.add(session, ' redSHANK ')).body)).toEqual(['/identity/pseudonym repeated']);
    expect((await room.add(await room.begin(), 'Redshank')).status).toBe(201);
  });

  test('has no pseudonym that is the name of somebody who acts here', async () => {
    expect(places((await room.add(session, 'wren (Invented)')).body)).toEqual([
      '/identity/pseudonym contradicts',
    ]);
    expect(await room.tracesOf('wren (Invented)')).toEqual([]);
  });

  test('cannot be put right or erased as the people of charts are: they are taken out whole', async () => {
    const person = await room.addSubject(session, 'Turnstone');
    const path = `/api/books/class/persons/${person}/identity`;
    const entry = clinic.frame('identity-erased', person, { reason: 'x' }, { book: 'class', session });
    expect((await clinic.send('DELETE', path, { entry })).status).toBe(422);
    expect((await clinic.send('PUT', path, { identity: { pseudonym: 'y' }, entry })).status).toBe(422);
    expect((await room.withdraw(session, person)).status).toBe(200);
    expect(await room.tracesOf(person, 'Turnstone')).toEqual([]);
  });

  test('nothing of all this was a fault of the program', () => {
    expect(clinic.faults).toEqual([]);
  });
});
