import { readEntry } from '@evenfall/record';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openMemory, type TestDatabase } from '../database/testing.js';
import { TestClinic } from '../testing/clinic.js';

describe('an entry that this program cannot read hides no other', () => {
  let database: TestDatabase;
  let clinic: TestClinic;
  let person: string;
  let only: string;
  beforeAll(async () => {
    database = await openMemory();
    clinic = await TestClinic.open(database);
    person = await clinic.addPerson();
    const round = v7();
    const pulse = clinic.pulse(person, 19, 15, { round });
    const signing = {
      status: 'final',
      signs: [{ sign: 'pulse', entries: [pulse.id] }],
      protocolVersion: null,
      note: null,
    };
    expect((await clinic.sign(pulse, clinic.frame('round', person, signing, { round }))).status).toBe(201);
    await clinic.sign(clinic.taps(person, [0, 4, 8, 12, 16, 20]));
    only = await clinic.addPerson();
    // As an older program, never released, would have left them: a value without its flags; the one entry of a person.
    await database.pool.query('alter table entry disable trigger append_only');
    await database.pool.query(
      `update entry set content = content #- '{value,flags}' where kind = 'count' and person = $1`,
      [person],
    );
    await database.pool.query(
      `update entry set content = '{"is": 1}' where kind = 'person' and person = $1`,
      [only],
    );
    await database.pool.query('alter table entry enable trigger append_only');
    await database.pool.query('delete from latest');
  }, 60_000);
  afterAll(async () => {
    await database.close();
  });

  test('the list of people has everybody, the values that can be read, and how many entries cannot', async () => {
    for (const _twice of ['made', 'kept']) {
      const { status, body } = await clinic.send('GET', '/api/books/care/persons');
      expect([status, body.unreadable]).toEqual([200, 2]);
      const rows = Object.fromEntries(body.persons.map((row: { id: string }) => [row.id, row]));
      expect(rows[person]).toMatchObject({ latest: { pulse: { perMinute: 15 }, breaths: null } });
      expect(rows[person]).not.toHaveProperty('unreadable');
      expect(rows[person].latest).not.toHaveProperty('unreadable');
      expect(rows[only]).toMatchObject({ latest: { pulse: null, breaths: null } });
    }
  });

  test('a chart has the rest, and how many are left out', async () => {
    const { status, body } = await clinic.send('GET', `/api/books/care/persons/${person}`);
    const kinds = body.entries.map(({ kind }: { kind: string }) => kind).sort();
    expect([status, body.unreadable, kinds]).toEqual([200, 1, ['person', 'round', 'taps']]);
    expect((await clinic.send('GET', `/api/books/care/persons/${only}`)).body).toMatchObject({
      entries: [],
      unreadable: 1,
      agents: [],
    });
  });

  test('a table says how many it leaves out', async () => {
    const came = await clinic.send('GET', `/api/books/care/persons/${person}/export?as=csv`);
    expect([came.status, came.headers.get('evenfall-unreadable')]).toEqual([200, '1']);
    expect(came.text).toContain('taps');
  });

  test('a check lists it, and the signing that rests on it, and goes on', async () => {
    const { findings, values } = (await clinic.send('GET', '/control/check')).body;
    const found = findings.map(({ kind, state, at }: Record<string, string>) => [kind, state, at]);
    expect(found).toHaveLength(5);
    expect(found).toEqual(
      expect.arrayContaining([
        ['count', 'changed', null],
        ['count', 'unreadable', '/content/value/flags'],
        ['round', 'rests-on-unreadable', null],
        ['person', 'changed', null],
        ['person', 'unreadable', expect.stringContaining('/content')],
      ]),
    );
    expect(values).toBeGreaterThanOrEqual(1);
  });

  test('a backup holds it as it is, as one line that its reader refuses', async () => {
    const lines = (await clinic.send('GET', '/control/backup')).text.trim().split('\n');
    const refused = lines
      .map((text) => JSON.parse(text))
      .filter(({ line, entry }) => line === 'entry' && !readEntry(entry).ok);
    expect(refused.map(({ entry }) => entry.kind).sort()).toEqual(['count', 'person']);
  });

  test('what names it is refused, as what names nothing is', async () => {
    const { body } = await clinic.send('GET', `/api/books/care/persons/${person}`);
    const unread = await clinic.db
      .selectFrom('entry')
      .select(['id', 'round'])
      .where('kind', '=', 'count')
      .executeTakeFirst();
    expect(body.entries.map(({ id }: { id: string }) => id)).not.toContain(unread?.id);
    const again = clinic.pulse(person, 20, 15, {
      amends: { entry: unread?.id ?? '', reason: 'typing-slip', text: null },
      round: unread?.round ?? null,
    });
    const came = await clinic.send('POST', '/api/entries', { entries: [again] });
    expect([came.status, came.body.problems[0]?.field]).toEqual([422, '/entries/0/amends/entry']);
    expect(clinic.faults).toEqual([]);
  });
});
