import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openMemory, type TestDatabase } from '../database/testing.js';
import { TestClinic } from '../testing/clinic.js';

describe('a check of the record', () => {
  let database: TestDatabase;
  let clinic: TestClinic;
  beforeAll(async () => {
    database = await openMemory();
    clinic = await TestClinic.open(database);
  }, 60_000);
  afterAll(async () => {
    await database.close();
  });

  /** What only somebody with the database in hand can do. */
  async function tamper(sql: string): Promise<void> {
    await database.pool.query('alter table entry disable trigger append_only');
    await database.pool.query(sql);
    await database.pool.query('alter table entry enable trigger append_only');
  }

  test('finds nothing in what the program wrote', async () => {
    const person = await clinic.addPerson();
    await clinic.sign(clinic.pulse(person, 19, 15), clinic.taps(person, [0, 0.8, 1.6, 2.4, 3.2, 4]));
    expect((await clinic.send('GET', '/control/check')).body).toEqual({
      entries: 3,
      values: 2,
      findings: [],
    });
  });

  test('finds a value that is not what its evidence gives, and says both', async () => {
    await tamper(
      `update entry set content = jsonb_set(content, '{value,perMinute}', '67') where kind = 'count'`,
    );
    const { findings } = (await clinic.send('GET', '/control/check')).body;
    expect(findings).toMatchObject([
      { state: 'changed', kind: 'count' },
      {
        state: 'differs',
        at: '/content/value/perMinute',
        kept: { perMinute: 67 },
        computed: { perMinute: 76 },
      },
    ]);
  });

  test('finds evidence that cannot be, and a rule it does not know', async () => {
    await tamper(
      `update entry set content = jsonb_set(content, '{evidence,count,n}', '999') where kind = 'count'`,
    );
    await tamper(
      `update entry set content = jsonb_set(content, '{computedBy,rule}', '"taps-99"') where kind = 'taps'`,
    );
    const { findings } = (await clinic.send('GET', '/control/check')).body;
    const states = findings.map(({ state }: { state: string }) => state);
    expect(states).toEqual(['changed', 'impossible-evidence', 'changed', 'unknown-rule']);
  });
});
