import { v7 } from 'uuid';
import { expect, test } from 'vitest';
import { withMemory } from '../database/testing.js';
import { HESTER, TestClinic } from '../testing/clinic.js';

// docs/conventions.md section 9: class rows may go at the end of their session; nothing else is ever deleted.
test('a session of the class book is deleted whole by a transaction that says so, and nothing of another book', async () => {
  await withMemory(async (database) => {
    const clinic = await TestClinic.open(database);
    const session = v7();
    const [learner, cared] = [await clinic.addPerson(HESTER, 'class'), await clinic.addPerson()];
    expect((await clinic.sign(clinic.pulse(learner, 19, 15, { book: 'class', session }))).status).toBe(201);
    expect((await clinic.sign(clinic.pulse(cared, 19, 15, { session }))).status).toBe(201);
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
    await expect(deleted('entry', `session = '${session}'`)).rejects.toThrow(/a correction is an amendment/);
    await database.pool.query('rollback');
    expect([await rowsIn('class'), await rowsIn('care')]).toEqual([2, 2]);

    await deleted('entry', `session = '${session}' and book = 'class'`);
    expect([await rowsIn('class'), await rowsIn('care')]).toEqual([1, 2]);
    await deleted('entry', `person = '${learner}' and book = 'class'`);
    await deleted('latest', `person = '${learner}'`);
    await deleted('identity', `person = '${learner}' and book = 'class'`);
    await deleted('person', `id = '${learner}' and book = 'class'`);
    expect((await clinic.chart(learner, 'class')).status).toBe(404);
    expect((await clinic.chart(cared)).body.identity).toEqual(HESTER);
  });
}, 60_000);
