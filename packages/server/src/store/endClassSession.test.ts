import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openEmbedded, openMemory, type TestDatabase } from '../database/testing.js';
import { Classroom } from '../testing/classroom.js';
import { TestClinic } from '../testing/clinic.js';
import { endForgotten } from './endClassSession.js';
import { readSite } from './site.js';

// The project's design, section 2, principle 6: in no chart, and deleted at the end of the session.
describe.each([
  { kind: 'embedded', open: openEmbedded },
  { kind: 'memory', open: openMemory },
])('the end of a class session ($kind)', ({ open }) => {
  let database: TestDatabase;
  let clinic: TestClinic;
  let room: Classroom;
  beforeAll(async () => {
    database = await open();
    clinic = await TestClinic.open(database);
    room = new Classroom(clinic, database);
  }, 60_000);
  afterAll(async () => {
    await database.close();
  });

  const site = async () => (await readSite(clinic.db))?.id ?? '';
  const exported = (book: string, person: string, query = '') =>
    clinic.send('GET', `/api/books/${book}/persons/${person}/export${query}`);
  const problems = (body: { problems: { field: string; code: string }[] }) =>
    body.problems.map(({ field, code }) => `${field} ${code}`);

  test('leaves no row of it in any table', async () => {
    const session = await room.begin();
    const subject = await room.addSubject(session, 'Wagtail');
    const pulse = room.pulse(subject, session);
    const run = { method: 'auscultation', moments: [{ what: 'first sound', mmHg: 148 }] };
    const pressure = clinic.pressure(
      subject,
      { ...run, moments: [...run.moments, { what: 'last sound', mmHg: 92 }] },
      { book: 'class', session, round: pulse.round },
    );
    const right = room.pulse(subject, session, clinic.amending(pulse));
    expect((await clinic.sign(pulse, pressure, right)).status).toBe(201);
    const ids = [session, subject, pulse.id, pressure.id, right.id, pulse.round ?? ''];
    await clinic.send('GET', '/api/books/class/persons');
    expect(await room.tracesOf(...ids, 'Wagtail')).toEqual(['entry', 'identity', 'latest', 'person']);

    const entry = room.ending(session);
    const ended = await room.end(session, [], entry);
    expect(ended.status).toBe(200);
    expect(ended.body).toEqual({ deleted: { persons: 1, rounds: 1, entries: 5 }, kept: { persons: 0 } });
    expect(await room.tracesOf(...ids, entry.id, 'Wagtail')).toEqual([]);
    expect(clinic.classesEnded.at(-1)).toEqual({
      event: 'class-session-ended',
      by: 'teacher',
      persons: 1,
      rounds: 1,
      entries: 5,
      personsKept: 0,
    });
    expect(JSON.stringify([clinic.log, clinic.classesEnded])).not.toMatch(
      new RegExp([...ids, 'Wagtail', 'Tuesday'].join('|')),
    );
    expect((await room.end(session, [], entry)).status).toBe(404);
    expect((await clinic.chart(subject, 'class')).status).toBe(404);
  });

  test('is of readings that were never in a chart, a list of people, an export or a backup', async () => {
    const session = await room.begin();
    const subject = await room.addSubject(session, 'Bunting');
    const pulse = room.pulse(subject, session);
    await clinic.sign(pulse);
    const simulated = await clinic.addPerson(undefined, 'simulated');
    await clinic.sign(clinic.pulse(simulated, 19, 15, { book: 'simulated' }));
    for (const person of [subject, simulated]) {
      expect((await clinic.chart(person, 'care')).status).toBe(404);
      expect((await exported('care', person)).status).toBe(404);
      expect((await clinic.send('GET', '/api/books/care/persons')).text).not.toContain(person);
    }
    const backup = (await clinic.send('GET', '/control/backup')).text;
    for (const text of [session, subject, pulse.id, 'Bunting']) expect(backup).not.toContain(text);
    expect(backup).toContain(simulated);

    const own = await exported('class', subject);
    expect(own.headers.get('content-disposition')).toContain('CLASS');
    expect(own.text.split('\r\n')[1]).toMatch(/^evenfall-chart-\d+,CLASS,/);
    // Who it is goes with an export only where that is asked for, a pseudonym too.
    expect(own.text).not.toContain('Bunting');
    expect((await exported('class', subject, '?identity=with')).text).toContain('Bunting');
    await room.end(session);
  });

  test('keeps a person only where teacher and person both agreed, and forgets the others', async () => {
    const session = await room.begin();
    const [stays, goes] = [await room.addSubject(session, 'Siskin'), await room.addSubject(session, 'Knot')];
    const [kept, gone] = [room.pulse(stays, session), room.pulse(goes, session)];
    await clinic.sign(kept, gone);
    const wrong = async (...keep: ReturnType<Classroom['agreed']>[]) =>
      problems((await room.end(session, keep)).body);
    expect(await wrong(room.agreed(stays, session, { subjectAgrees: false }))).toEqual([
      '/keep/0/content/subjectAgrees contradicts',
    ]);
    expect(await wrong(room.agreed(stays, session, { teacherAgrees: false }))).toEqual([
      '/keep/0/content/teacherAgrees contradicts',
    ]);
    expect(await wrong(room.agreed(stays, session), room.agreed(v7(), session))).toEqual([
      '/keep/1/person unknown-id',
    ]);
    expect(await wrong(room.agreed(stays, session), room.agreed(stays, session))).toEqual([
      '/keep/1/person repeated',
    ]);
    const agreed = room.agreed(stays, session);
    expect(await wrong({ ...agreed, agent: v7() })).toEqual(['/keep/0/agent unknown-id']);
    expect(await wrong({ ...agreed, session: await room.begin() })).toEqual(['/keep/0/session contradicts']);
    expect((await clinic.chart(goes, 'class')).body.entries).toHaveLength(2);

    const entry = room.ending(session);
    expect((await room.end(session, [agreed], entry)).body).toEqual({
      deleted: { persons: 1, rounds: 1, entries: 2 },
      kept: { persons: 1 },
    });
    expect(await room.tracesOf(goes, gone.id, 'Knot')).toEqual([]);
    const { body } = await clinic.chart(stays, 'class');
    expect(body.entries.map(({ kind }: { kind: string }) => kind).sort()).toEqual([
      'count',
      'kept-by-agreement',
      'person',
    ]);
    expect((await clinic.send('GET', '/api/class-sessions')).text).not.toContain(session);
    expect((await clinic.chart(stays, 'care')).status).toBe(404);

    // Sent again: what stays is answered as ever; what comes late is refused.
    expect((await room.end(session, [agreed], entry)).body).toEqual({
      deleted: { persons: 0, rounds: 0, entries: 0 },
      kept: { persons: 1 },
    });
    expect((await clinic.sign(kept)).status).toBe(200);
    expect(problems((await clinic.sign(room.pulse(stays, session))).body)).toEqual([
      '/entries/0/session unknown-id',
    ]);
    expect(problems((await room.end(session)).body)).toEqual(['/entry/session unknown-id']);

    // What both agreed to is in a backup, and comes back from it.
    const backup = (await clinic.send('GET', '/control/backup')).text;
    expect(backup).toContain('Siskin');
    const target = await openMemory();
    const restored = await TestClinic.open(target, { agent: false });
    expect((await restored.send('POST', '/control/restore', backup)).status).toBe(200);
    expect((await restored.chart(stays, 'class')).body.classIdentity.pseudonym).toBe('Siskin');
    await target.close();

    // Taken back at any time, for no reason: the last one of a session takes with them what was left of it.
    expect((await room.withdraw(await room.begin(), stays)).status).toBe(404);
    expect((await room.withdraw(session, stays)).status).toBe(200);
    expect(await room.tracesOf(stays, session, kept.id, entry.id, agreed.id, 'Siskin')).toEqual([]);
    expect((await room.withdraw(session, stays)).status).toBe(404);
  }, 60_000);

  test('leaves what was kept of an earlier one', async () => {
    const first = await room.begin();
    const person = await room.addSubject(first, 'Pipit');
    await room.end(first, [room.agreed(person, first)]);
    const second = await room.begin();
    const again = room.pulse(person, second);
    expect((await clinic.sign(again)).status).toBe(201);
    expect((await clinic.send('GET', '/control/backup')).text).not.toContain(again.id);
    expect((await room.end(second)).body).toMatchObject({ deleted: { persons: 0, entries: 2 } });
    expect(await room.tracesOf(second, again.id)).toEqual([]);
    expect((await clinic.chart(person, 'class')).body.classIdentity.pseudonym).toBe('Pipit');
    await room.withdraw(first, person);
    expect(await room.tracesOf(first, person, 'Pipit')).toEqual([]);
  });

  test('comes a day after its time where nobody ended it, and keeps nothing', async () => {
    const session = await room.begin('2026-11-25T12:00:00Z');
    const subject = await room.addSubject(session, 'Plover');
    await clinic.sign(room.pulse(subject, session));
    const forgotten = async (now: string) => await endForgotten(clinic.db, await site(), new Date(now));
    expect(await forgotten('2026-11-26T11:59:59.999Z')).toEqual([]);
    expect(await room.tracesOf(session)).not.toEqual([]);
    expect(await forgotten('2026-11-26T12:00:00.000Z')).toEqual([
      { deleted: { persons: 1, rounds: 1, entries: 3 }, kept: { persons: 0 } },
    ]);
    expect(await room.tracesOf(session, subject, 'Plover')).toEqual([]);
  });

  test('leaves nothing while people are still added, signing, looking and withdrawing', async () => {
    for (let time = 0; time < 8; time += 1) {
      const session = await room.begin();
      const subjects = await Promise.all(
        Array.from({ length: 3 }, (_, at) => room.addSubject(session, `Swift ${time} ${at}`)),
      );
      const pulses = subjects.flatMap((subject) => [
        room.pulse(subject, session),
        room.pulse(subject, session),
      ]);
      const late = room.adding(session, `Late ${time}`);
      const came = await Promise.all([
        ...pulses.slice(0, 3).map((pulse) => clinic.sign(pulse)),
        clinic.send('POST', `/api/class-sessions/${session}/persons`, late),
        clinic.send('GET', '/api/books/class/persons'),
        room.end(session),
        ...pulses.slice(3).map((pulse) => clinic.sign(pulse)),
        room.withdraw(session, subjects[0] ?? ''),
        clinic.send('GET', '/api/books/class/persons'),
        room.end(session),
      ]);
      expect(clinic.faults).toEqual([]);
      expect(came.every(({ status }) => [200, 201, 404, 422].includes(status))).toBe(true);
      const ids = [...pulses.map(({ id }) => id), late.entry.id, late.entry.person ?? '', ...subjects];
      expect(await room.tracesOf(session, ...ids)).toEqual([]);
    }
  }, 60_000);

  test('was never a fault of the program', () => {
    expect(clinic.faults).toEqual([]);
  });
});
