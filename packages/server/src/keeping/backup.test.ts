import { presetProtocol } from '@evenfall/clinical';
import { BACKUP_VERSION, backupLine } from '@evenfall/record';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openOlderMajor } from '../database/testing/olderMajor.js';
import { openEmbedded, openMemory, type TestDatabase } from '../database/testing.js';
import { HESTER, TestClinic } from '../testing/clinic.js';

/** A clinic with something of everything, one identity erased. */
async function filled(database: TestDatabase): Promise<TestClinic> {
  const clinic = await TestClinic.open(database);
  const preset = presetProtocol({ count: 'full-minute' });
  if (!preset.ok) throw new Error('the preset is gone');
  const { body } = await clinic.send('POST', '/api/protocols', { content: preset.value });
  await clinic.sign(clinic.frame('protocol-chosen', null, { version: body.version }));
  const person = await clinic.addPerson({ ...HESTER, name: 'Zoë “=1+1” O’Brien-Łuk\u2028\u0085 (invented)' });
  const slip = clinic.pulse(person, 63, 30);
  await clinic.sign(slip, clinic.taps(person, [0, 0.81, 1.62, 2.45, 3.24, 4.06]));
  await clinic.sign(clinic.pulse(person, 36, 30, clinic.amending(slip)));
  const gone = await clinic.addPerson({ ...HESTER, name: 'Gone Forever (invented)' });
  const entry = clinic.frame('identity-erased', gone, { reason: 'asked' });
  await clinic.send('DELETE', `/api/books/care/persons/${gone}/identity`, { entry });
  await clinic.addPerson(HESTER, 'simulated');
  return clinic;
}

/** Everything kept, as its own lines say it; the header and trailer name the moment and are left out. */
function keptLines(backup: string): string[] {
  return backup.trim().split('\n').slice(1, -1);
}

describe('a backup', () => {
  let source: TestDatabase;
  let clinic: TestClinic;
  let backup: string;
  beforeAll(async () => {
    source = await openEmbedded();
    clinic = await filled(source);
    backup = (await clinic.send('GET', '/control/backup')).text;
  }, 60_000);
  afterAll(async () => {
    await source.close();
  });

  test('is JSON lines that its own schema reads, with the count and hash of everything', () => {
    const lines = backup
      .trim()
      .split('\n')
      .map((line) => backupLine.parse(JSON.parse(line)));
    expect(lines[0]).toMatchObject({ line: 'header', format: 'evenfall-backup', version: BACKUP_VERSION });
    expect(lines.at(-1)).toMatchObject({
      line: 'trailer',
      lines: { header: 1, agent: 1, person: 3, protocol: 1 },
    });
    expect(backup).not.toContain('Gone Forever');
  });

  test.each([
    ['the same engine', openEmbedded],
    ['an older PostgreSQL major', openOlderMajor],
    ['PostgreSQL in memory', openMemory],
  ])(
    'restores into %s and back without a difference',
    async (_, open) => {
      const target = await open();
      try {
        const empty = await TestClinic.open(target, { agent: false });
        const came = await empty.send('POST', '/control/restore', backup);
        expect([came.status, came.text]).toEqual([200, expect.stringContaining('"entry"')]);
        const again = (await empty.send('GET', '/control/backup')).text;
        expect(keptLines(again)).toEqual(keptLines(backup));
        expect((await empty.send('GET', '/control/check')).body).toMatchObject({
          entries: 8,
          values: 3,
          findings: [],
        });
        const about = (await empty.send('GET', '/api/about')).body;
        expect(about).toMatchObject({ site: (await clinic.send('GET', '/api/about')).body.site });
        expect((await empty.send('GET', '/api/books/care/persons')).body.persons).toHaveLength(2);
        expect(empty.faults).toEqual([]);
      } finally {
        await target.close();
      }
    },
    60_000,
  );

  test('is refused whole when damaged, with the line, and leaves the record empty', async () => {
    const target = await openMemory();
    const empty = await TestClinic.open(target, { agent: false });
    const lines = backup.trimEnd().split('\n');
    const without = (index: number) => lines.filter((_, at) => at !== index).join('\n');
    const damaged: [string, string, number | null, string][] = [
      ['a number changed', backup.replace('"n":63', '"n":64'), lines.length, '/sha256'],
      ['a line lost', without(5), lines.length - 1, '/sha256'],
      ['the end cut off', lines.slice(0, -1).join('\n'), lines.length - 1, ''],
      ['half a line', backup.slice(0, -200), lines.length - 1, ''],
      ['a newer format', backup.replace(`"version":${BACKUP_VERSION}`, '"version":99'), 1, '/version'],
      ['no header', without(0), 1, '/line'],
      ['another file', 'name,pulse\nWren,76\n', 1, ''],
      ['an invented clinic', backup.replace('"invented":false', '"invented":true'), 1, '/site/invented'],
    ];
    for (const [what, text, line, field] of damaged) {
      const came = await empty.send('POST', '/control/restore', text);
      expect(came.status, what).toBe(422);
      expect(came.body.problems[0], what).toMatchObject({ line, field: field === '' ? null : field });
      const { body } = await empty.send('GET', '/control/check');
      expect(body, what).toEqual({ entries: 0, values: 0, findings: [] });
    }
    expect((await empty.send('POST', '/control/restore', backup)).status).toBe(200);
    expect((await empty.send('POST', '/control/restore', backup)).body.problems[0]).toMatchObject({
      code: 'contradicts',
    });
    await target.close();
  }, 60_000);

  test('shows entries written meanwhile whole or not at all', async () => {
    const written = Array.from({ length: 30 }, () => v7());
    const writing = Promise.all(
      written.map(async (round) => {
        const person = await clinic.addPerson();
        await clinic.sign(clinic.pulse(person, 36, 30, { round }), clinic.pulse(person, 37, 30, { round }));
      }),
    );
    const during = (await clinic.send('GET', '/control/backup')).text;
    await writing;
    const rounds = new Map<string, number>();
    for (const line of keptLines(during).map((text) => JSON.parse(text))) {
      const round = line.entry?.round ?? null;
      if (written.includes(round)) rounds.set(round, (rounds.get(round) ?? 0) + 1);
    }
    expect([...rounds.values()].every((entries) => entries === 2)).toBe(true);
  }, 60_000);
});
