import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openMemory, type TestDatabase } from '../database/testing.js';
import { TestClinic } from '../testing/clinic.js';
import { linesOf } from './linesOf.js';
import { restore } from './restore.js';

// A whole backup there and back, and damaged ones, are in backup.test.ts.
describe('a restore of what is no text', () => {
  let database: TestDatabase;
  let clinic: TestClinic;
  beforeAll(async () => {
    database = await openMemory();
    clinic = await TestClinic.open(database, { agent: false });
  }, 60_000);
  afterAll(async () => {
    await database.close();
  });

  test('is refused as a file that cannot be read, and touches nothing', async () => {
    const sites = () => clinic.db.selectFrom('site').select('id').execute();
    const before = await sites();
    async function* bytes() {
      yield Uint8Array.from([0x50, 0x4b, 0x03, 0x04, 0xff, 0x0a]);
    }
    const restored = await restore(clinic.db, linesOf(bytes()), false);
    expect(restored).toMatchObject({ ok: false, refusals: [{ code: 'contradicts', expected: 'json-line' }] });
    expect(await sites()).toEqual(before);
  });

  test('is refused at its line when one holds a text that cannot be kept, or is nested without end', async () => {
    for (const text of ['{"line": "a\\u0000"}', `${'['.repeat(9_000)}${']'.repeat(9_000)}`]) {
      const came = await clinic.send('POST', '/control/restore', text);
      expect([came.status, came.body.problems[0].line]).toEqual([422, 1]);
    }
    expect(clinic.faults).toEqual([]);
  });
});
