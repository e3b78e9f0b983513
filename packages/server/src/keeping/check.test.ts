import { NO_ROUND_FACTS } from '@evenfall/clinical';
import { chartRound, NOTHING_CHOSEN, PROGRAM, readEntry } from '@evenfall/record';
import { v7 } from 'uuid';
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

  test('finds a round whose alerts were taken away, and a pressure that its moments do not give', async () => {
    const person = await clinic.addPerson();
    const round = v7();
    const moments = [
      { what: 'first sound', mmHg: 84 },
      { what: 'last sound', mmHg: 50 },
    ];
    const run = clinic.pressure(person, { method: 'auscultation', moments }, { round });
    const read = readEntry(run);
    if (!read.ok) throw new Error(JSON.stringify(read.refusals));
    const signed = {
      status: 'final' as const,
      signs: [{ sign: 'pressure' as const, entries: [run.id] }],
      evidence: { exceptions: null, features: null, unwell: null, facts: { ...NO_ROUND_FACTS, arms: [] } },
      note: null,
    };
    const content = chartRound(signed, [read.value], NOTHING_CHOSEN, PROGRAM);
    // Bedside handbook 5.2: a systolic of 90 or below alarms alone.
    expect(content.value?.actNow.map(({ condition }) => condition)).toContain('very-low-pressure');
    expect(
      (await clinic.sign(run, clinic.frame('round', person, content, { round, schema: 4 }))).status,
    ).toBe(201);
    const found = async () => {
      const { findings } = (await clinic.send('GET', '/control/check')).body;
      return findings
        .filter(
          ({ kind, state }: { kind: string; state: string }) => /round|run/.test(kind) && state !== 'changed',
        )
        .map(({ kind, state, at }: { kind: string; state: string; at: string }) => `${kind} ${state} ${at}`);
    };
    expect(await found()).toEqual([]);
    await tamper(
      `update entry set content = jsonb_set(content, '{value,actNow}', '[]') where kind = 'round'`,
    );
    expect(await found()).toEqual(['round differs /content/value/actNow']);
    await tamper(
      `update entry set content = jsonb_set(content, '{value,systolic}', '118') where kind = 'run'`,
    );
    // The round goes by the charted 118 now, and differs elsewhere too; the pressure is what is wrong first.
    expect(await found()).toEqual([
      'run differs /content/value/systolic',
      expect.stringMatching(/^round differs /),
    ]);
  });

  // DESIGN principle 5: a round names entries of its own person and round; a copied or mended database may not.
  test('finds a signing that names what is not of its round', async () => {
    const [one, other] = [await clinic.addPerson(), await clinic.addPerson()];
    const round = v7();
    const [own, foreign] = [clinic.pulse(one, 19, 15, { round }), clinic.pulse(other, 20, 15)];
    const content = {
      status: 'final',
      signs: [{ sign: 'pulse', entries: [own.id] }],
      protocolVersion: null,
      note: null,
    };
    const signing = clinic.frame('round', one, content, { round });
    expect((await clinic.sign(own, foreign, signing)).status).toBe(201);
    const named = async () =>
      (await clinic.send('GET', '/control/check')).body.findings.filter(
        ({ entry, state }: { entry: string; state: string }) => entry === signing.id && state !== 'changed',
      );
    expect(await named()).toEqual([]);
    for (const id of [foreign.id, v7()]) {
      await tamper(
        `update entry set content = jsonb_set(content, '{signs,0,entries,0}', '"${id}"') where id = '${signing.id}'`,
      );
      expect(await named()).toMatchObject([
        { state: 'names-another', at: '/content/signs/0/entries/0', kept: id },
      ]);
    }
  });
});
