import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { withMemory } from '../database/testing.js';
import { TestClinic } from '../testing/clinic.js';

test('the first backup is still restored whole, its frames upgraded, and gives what its evidence gives', async () => {
  const first = new URL('../../../record/fixtures/backup-1.jsonl', import.meta.url);
  await withMemory(async (database) => {
    const clinic = await TestClinic.open(database, { agent: false });
    const came = await clinic.send('POST', '/control/restore', readFileSync(first, 'utf8'));
    expect([came.status, clinic.faults]).toEqual([200, []]);
    expect((await clinic.send('GET', '/control/check')).body).toEqual({
      entries: 10,
      values: 3,
      findings: [],
    });
    const rows = await clinic.db.selectFrom('entry').select(['frame', 'session']).execute();
    expect(new Set(rows.map((row) => JSON.stringify(row)))).toEqual(new Set(['{"frame":1,"session":null}']));
  });
}, 60_000);
