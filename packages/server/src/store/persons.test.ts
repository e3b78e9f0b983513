import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openMemory, type TestDatabase } from '../database/testing.js';
import { HESTER, TestClinic } from '../testing/clinic.js';

// Adding, correcting and erasing are in http/record.test.ts, on each kind of database.
describe('requests about a person that say two things', () => {
  let database: TestDatabase;
  let clinic: TestClinic;
  beforeAll(async () => {
    database = await openMemory();
    clinic = await TestClinic.open(database);
  }, 60_000);
  afterAll(async () => {
    await database.close();
  });

  const places = (body: { problems: { field: string }[] }) => body.problems.map(({ field }) => field);
  const add = (entry: object, identity: object = HESTER, book = 'care') =>
    clinic.send('POST', `/api/books/${book}/persons`, { identity, entry });

  test('an entry of another kind or book than the address is refused', async () => {
    const frame = clinic.personFrame(HESTER);
    const erasing = { ...frame, kind: 'identity-erased', content: { reason: 'x' } };
    expect(places((await add(erasing)).body)).toEqual(['/entry/kind']);
    expect(places((await add(frame, HESTER, 'simulated')).body)).toEqual(['/entry/book']);
    // People of a class are added within its session, under a pseudonym.
    expect(places((await add(frame, HESTER, 'class')).body)).toEqual(['/param/book']);
  });

  test('identifiers that are not those of the identity are refused, with those it has', async () => {
    const frame = clinic.personFrame({ ...HESTER, number: null });
    const came = await add(frame);
    expect(came.body.problems).toMatchObject([{ field: '/entry/content/identifiers', code: 'contradicts' }]);
    expect(came.body.problems[0].expected).toMatch(/name.*birthDate.*number/);
  });

  test('a correction of one person at the address of another is refused', async () => {
    const [one, other] = [await clinic.addPerson(), await clinic.addPerson()];
    const entry = clinic.frame('identity-corrected', one, { changed: ['name'] });
    const path = `/api/books/care/persons/${other}/identity`;
    const came = await clinic.send('PUT', path, { identity: { ...HESTER, name: 'X (invented)' }, entry });
    expect(places(came.body)).toEqual(['/entry/person']);
    expect((await clinic.chart(other)).body.identity).toEqual(HESTER);
  });

  test('a person sent again after a correction is still the same person, and is not put back', async () => {
    const frame = clinic.personFrame(HESTER);
    await add(frame);
    const right = { ...HESTER, number: 'INV-78' };
    const entry = clinic.frame('identity-corrected', frame.person, { changed: ['number'] });
    await clinic.send('PUT', `/api/books/care/persons/${frame.person}/identity`, { identity: right, entry });
    expect((await add(frame)).status).toBe(200);
    expect((await clinic.chart(frame.person ?? '')).body.identity).toEqual(right);
  });

  test('a person sent again after an erasure is not brought back', async () => {
    const frame = clinic.personFrame(HESTER);
    await add(frame);
    const entry = clinic.frame('identity-erased', frame.person, { reason: 'asked' });
    await clinic.send('DELETE', `/api/books/care/persons/${frame.person}/identity`, { entry });
    expect((await add(frame)).status).toBe(200);
    expect((await clinic.chart(frame.person ?? '')).body.identity).toBeNull();
  });

  test('a correction that arrives after an erasure brings nobody back', async () => {
    const person = await clinic.addPerson();
    const path = `/api/books/care/persons/${person}/identity`;
    const right = { ...HESTER, number: 'INV-78' };
    const before = clinic.frame('identity-corrected', person, { changed: ['number'] });
    expect((await clinic.send('PUT', path, { identity: right, entry: before })).status).toBe(201);
    await clinic.send('DELETE', path, {
      entry: clinic.frame('identity-erased', person, { reason: 'asked' }),
    });
    // The same correction again is answered with what is kept; another is refused.
    expect((await clinic.send('PUT', path, { identity: right, entry: before })).status).toBe(200);
    const late = clinic.frame('identity-corrected', person, { changed: ['number'] });
    expect(places((await clinic.send('PUT', path, { identity: right, entry: late })).body)).toEqual([
      '/identity',
    ]);
    const { body, text } = await clinic.chart(person);
    expect(body.identity).toBeNull();
    expect(text).not.toContain(late.id);
  });

  test('a person added again by another entry is refused: an identity changes by a correction alone', async () => {
    const person = await clinic.addPerson();
    const again = { ...clinic.personFrame(HESTER), person };
    const came = await add(again, { ...HESTER, name: 'Somebody Else (invented)' });
    expect(came.body.problems).toMatchObject([{ field: '/entry/person', code: 'repeated' }]);
    expect((await clinic.chart(person)).body).toMatchObject({
      identity: HESTER,
      entries: [{ kind: 'person' }],
    });
  });

  test('a person who is refused leaves nothing behind', async () => {
    const frame = { ...clinic.personFrame(HESTER), agent: '01950000-0000-7000-8000-000000000000' };
    expect(places((await add(frame)).body)).toEqual(['/entries/0/agent']);
    expect((await clinic.chart(frame.person ?? '')).status).toBe(404);
  });

  test('nothing of all this was a fault of the program', () => {
    expect(clinic.faults).toEqual([]);
  });
});
