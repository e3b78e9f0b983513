import { CLASS_IDENTIFIERS } from '@evenfall/record';
import { v7 } from 'uuid';
import { expect, test } from 'vitest';
import { withMemory } from '../database/testing.js';
import { HESTER, TestClinic } from '../testing/clinic.js';

// docs/conventions.md section 9: class rows may go at the end of their session; nothing else is ever deleted.
test('the database itself lets rows of the class book go by a transaction that says so, and nothing of another book', async () => {
  await withMemory(async (database) => {
    const clinic = await TestClinic.open(database);
    const [session, learner, cared] = [v7(), v7(), await clinic.addPerson()];
    const teacher = { book: 'class', role: 'teacher', id: session, session } as const;
    const begun = clinic.frame(
      'class-session',
      null,
      { title: 'x', endsBy: '2026-11-26T00:00:00Z' },
      teacher,
    );
    await clinic.send('POST', '/api/class-sessions', { entry: begun });
    const known = { book: 'class', schema: 2, session } as const;
    const entry = clinic.frame('person', learner, { identifiers: CLASS_IDENTIFIERS }, known);
    const identity = { pseudonym: 'Heron', ageYears: null };
    await clinic.send('POST', `/api/class-sessions/${session}/persons`, { identity, entry });
    expect((await clinic.sign(clinic.pulse(learner, 19, 15, { book: 'class', session }))).status).toBe(201);
    expect((await clinic.sign(clinic.pulse(cared, 19, 15))).status).toBe(201);
    const rowsIn = async (book: string) =>
      (await database.pool.query(`select id from entry where book = '${book}'`)).rows.length;
    const deleted = (table: string, where: string) =>
      database.pool.query(
        `begin; set local evenfall.class_session_ended = 'yes'; delete from ${table} where ${where}; commit`,
      );

    await expect(database.pool.query(`delete from entry where session = '${session}'`)).rejects.toThrow(
      /a correction is an amendment/,
    );
    await database.pool.query('rollback');
    await expect(deleted('entry', `person = '${cared}'`)).rejects.toThrow(/a correction is an amendment/);
    await database.pool.query('rollback');
    expect([await rowsIn('class'), await rowsIn('care')]).toEqual([3, 2]);

    await deleted('entry', `session = '${session}' and book = 'class'`);
    expect([await rowsIn('class'), await rowsIn('care')]).toEqual([0, 2]);
    await deleted('latest', `person = '${learner}'`);
    await deleted('identity', `person = '${learner}' and book = 'class'`);
    await deleted('person', `id = '${learner}' and book = 'class'`);
    expect((await clinic.chart(learner, 'class')).status).toBe(404);
    expect((await clinic.chart(cared)).body.identity).toEqual(HESTER);
  });
}, 60_000);
