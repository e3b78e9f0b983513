import { createHash } from 'node:crypto';
import { linesOf } from '@evenfall/api';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openMemory, type TestDatabase, withMemory } from '../database/testing.js';
import { TestClinic } from '../testing/clinic.js';
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

test('an entry that a newer program wrote is refused at its own line, whole and unharmed as the file is', async () => {
  const source = await openMemory();
  const target = await openMemory();
  try {
    const clinic = await TestClinic.open(source);
    const person = await clinic.addPerson();
    await clinic.sign(
      clinic.pulse(person, 19, 15),
      clinic.pulse(person, 20, 15),
      clinic.pulse(person, 21, 15),
    );
    const lines = (await clinic.send('GET', '/control/backup')).text.trimEnd().split('\n').slice(0, -1);
    const at = lines.findIndex((line) => line.includes('"n":20'));
    const newer = lines.map((line, index) =>
      index === at ? line.replace('"schema":2', '"schema":99') : line,
    );
    const body = `${newer.join('\n')}\n`;
    const counted: Record<string, number> = {};
    for (const { line } of newer.map((text) => JSON.parse(text))) counted[line] = (counted[line] ?? 0) + 1;
    const sha256 = createHash('sha256').update(body).digest('hex');
    const file = `${body}${JSON.stringify({ line: 'trailer', lines: counted, sha256 })}\n`;

    const empty = await TestClinic.open(target, { agent: false });
    const came = await empty.send('POST', '/control/restore', file);
    expect(came.body.problems).toMatchObject([
      { line: at + 1, field: '/entry/schema', code: 'unknown-id', got: 'count 99' },
    ]);
    expect((await empty.send('GET', '/control/check')).body.entries).toBe(0);
    expect(
      (await empty.send('POST', '/control/restore', file.replace('"schema":99', '"schema":2'))).status,
    ).toBe(422);
  } finally {
    await source.close();
    await target.close();
  }
}, 60_000);

test('a backup that names somebody who is not in it, or somebody twice, is refused whole', async () => {
  await withMemory(async (source) => {
    const clinic = await TestClinic.open(source);
    await clinic.sign(clinic.pulse(await clinic.addPerson(), 36, 30));
    const lines = (await clinic.send('GET', '/control/backup')).text.trim().split('\n').slice(0, -1);
    const person = lines.findIndex((line) => line.includes('"line":"person"'));
    for (const bent of [lines.filter((_, at) => at !== person), [...lines, lines[person] as string]]) {
      await withMemory(async (target) => {
        const empty = await TestClinic.open(target, { agent: false });
        const came = await empty.send('POST', '/control/restore', sealed(bent));
        expect(came.status).toBe(422);
        expect(came.body.problems[0].expected).toMatch(/everything that is named is there/);
        expect((await empty.send('GET', '/control/check')).body.entries).toBe(0);
      });
    }
  });
}, 60_000);

/** Lines with the trailer that belongs to them, as somebody who edits a backup by hand would make it. */
function sealed(lines: readonly string[]): string {
  const text = `${lines.join('\n')}\n`;
  const counted: Record<string, number> = {};
  for (const line of lines) {
    const name = (JSON.parse(line) as { line: string }).line;
    counted[name] = (counted[name] ?? 0) + 1;
  }
  const sha256 = createHash('sha256').update(text).digest('hex');
  return `${text}${JSON.stringify({ line: 'trailer', lines: counted, sha256 })}\n`;
}
