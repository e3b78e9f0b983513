import { access, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { createServer, request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Settings } from '@evenfall/api';
import { PROGRAM, readEntry } from '@evenfall/record';
import { afterEach, describe, expect, onTestFinished, test } from 'vitest';
import { openMemory, type TestDatabase } from '../database/testing.js';
import type { LogLine } from '../http/log.js';
import { readSite } from '../store/site.js';
import { takeEntries } from '../store/takeEntries.js';
import { Classroom } from '../testing/classroom.js';
import { TestClinic } from '../testing/clinic.js';
import { type Running, runServer } from './server.js';

const CLINIC: Settings = {
  mode: 'serve',
  purpose: 'clinic',
  folder: null,
  account: null,
  port: 0,
  pages: null,
  log: false,
};

/** A server in this process, on a database in its memory; stopped with the test. */
async function started(settings: Partial<Settings> = {}, database?: TestDatabase) {
  const faults: unknown[] = [];
  const lines: LogLine[] = [];
  const tell = {
    log: (line: LogLine) => lines.push(line),
    fault: (error: unknown) => faults.push(error),
  };
  const running = await runServer(database ?? (await openMemory()), { ...CLINIC, ...settings }, tell);
  onTestFinished(running.close);
  return { running, faults, lines };
}

/** Asks over the control socket, as a command does. */
function asked({ controlSocket }: Running, path: string): Promise<{ status: number; text: string }> {
  return new Promise((resolve, reject) => {
    const options = { socketPath: controlSocket ?? '', path, headers: { host: 'localhost' } };
    const sent = request(options, (response) => {
      let text = '';
      response.on('data', (chunk) => {
        text += chunk;
      });
      response.on('end', () => resolve({ status: response.statusCode ?? 0, text }));
    });
    sent.on('error', reject);
    sent.end();
  });
}

async function folderWith(text: string): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'evenfall-app-'));
  onTestFinished(() => rm(folder, { recursive: true, force: true }));
  await writeFile(join(folder, 'index.html'), text);
  return folder;
}

describe('a server that starts', { timeout: 60_000 }, () => {
  test('answers on the loopback at a port of its own, and says which program and clinic it is', async () => {
    const { running, faults, lines } = await started();
    expect(running.address).toMatch(/^http:\/\/127\.0\.0\.1:\d+$/);
    expect(running.site).toMatchObject({ name: 'Clinic', invented: false });
    const about = await (await fetch(`${running.address}/api/about`)).json();
    expect(about).toMatchObject({ program: PROGRAM, site: running.site, protocolVersion: null });
    expect(lines).toMatchObject([{ method: 'GET', route: '/api/about', status: 200 }]);
    expect(faults).toEqual([]);
  });

  // docs/conventions.md section 9: what nobody ended within a day of its time is ended when a server starts.
  test('ends class sessions that nobody ended in time, and says how much that was and nothing else', async () => {
    const database = await openMemory();
    const clinic = await TestClinic.open(database);
    const room = new Classroom(clinic, database);
    const frame = room.beginning('2020-03-02T00:00:00Z');
    const read = readEntry(frame);
    if (!read.ok) throw new Error(JSON.stringify(read.refusals));
    const site = (await readSite(clinic.db))?.id ?? '';
    await takeEntries(clinic.db, site, [{ frame, entry: read.value }], PROGRAM);
    const subject = await room.addSubject(frame.id, 'Heron');
    await clinic.sign(room.pulse(subject, frame.id));
    const { lines, faults } = await started({ mode: 'control' }, database);
    expect(lines).toEqual([
      { event: 'class-session-ended', by: 'server', persons: 1, rounds: 1, entries: 3, personsKept: 0 },
    ]);
    expect(await room.tracesOf(frame.id, subject, 'Heron')).toEqual([]);
    expect(faults).toEqual([]);
  });

  test('serves the app beside the API where it was built, and the API alone where it was not', async () => {
    const { running } = await started({ pages: await folderWith('<title>Evenfall</title>') });
    expect(await (await fetch(`${running.address}/people`)).text()).toBe('<title>Evenfall</title>');
    expect((await fetch(`${running.address}/api/nothing`)).headers.get('content-type')).toBe(
      'application/problem+json',
    );
    const { running: alone } = await started();
    expect((await fetch(`${alone.address}/people`)).status).toBe(404);
  });

  test('takes commands on its socket, and never on its address', async () => {
    const { running } = await started({ pages: await folderWith('<title>Evenfall</title>') });
    const backup = await asked(running, '/control/backup');
    expect([backup.status, backup.text]).toEqual([200, expect.stringContaining('"evenfall-backup"')]);
    for (const path of ['/control/backup', '/control/check']) {
      expect(await (await fetch(`${running.address}${path}`)).text()).toBe('<title>Evenfall</title>');
    }
    const restore = await fetch(`${running.address}/control/restore`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: backup.text,
    });
    expect(restore.status).toBe(404);
  });

  test('in control mode listens for one command and on no address', async () => {
    const { running } = await started({ mode: 'control' });
    expect(running.address).toBeNull();
    expect((await asked(running, '/control/check')).text).toBe('{"entries":0,"values":0,"findings":[]}');
  });

  test('for the demo is filled with invented people, and says that it is; for one command it is not filled', async () => {
    const { running, faults } = await started({ purpose: 'demo' });
    expect(running.site).toEqual({
      id: running.site.id,
      name: 'Evenfall demo clinic (invented)',
      invented: true,
    });
    const { persons } = await (await fetch(`${running.address}/api/books/care/persons`)).json();
    expect(persons.length).toBeGreaterThan(3);
    expect(faults).toEqual([]);
    const { running: command } = await started({ purpose: 'demo', mode: 'control' });
    expect(JSON.parse((await asked(command, '/control/check')).text).entries).toBe(0);
  });

  test('stops: its address and socket are gone, and stopping again does nothing', async () => {
    const { running, faults } = await started();
    await running.close();
    await running.close();
    await expect(fetch(`${running.address}/api/about`)).rejects.toThrow();
    await expect(access(running.controlSocket ?? '')).rejects.toThrow(/ENOENT/);
    expect(faults).toEqual([]);
  });
});

describe('a server that must not start', { timeout: 60_000 }, () => {
  const taken = createServer();
  afterEach(() => new Promise((resolve) => taken.close(resolve)));

  test('is refused where the port is taken, and lets its database go', async () => {
    await new Promise<void>((resolve) => taken.listen(0, '127.0.0.1', resolve));
    const bound = taken.address();
    const port = typeof bound === 'object' && bound !== null ? bound.port : 0;
    const database = await openMemory();
    await expect(started({ port }, database)).rejects.toMatchObject({
      name: 'StartRefused',
      code: 'port-in-use',
      field: '--port',
      figures: { port },
    });
    await expect(database.pool.query('select 1')).rejects.toThrow();
  });

  test('is refused where invented people and a real clinic would share a record, in either direction', async () => {
    const clinic = await openMemory();
    await TestClinic.open(clinic);
    await expect(started({ purpose: 'demo' }, clinic)).rejects.toMatchObject({
      code: 'site-other-purpose',
      field: '--demo',
    });
    const demo = await openMemory();
    const { db } = await TestClinic.open(demo, { agent: false });
    await db.deleteFrom('site').execute();
    await db
      .insertInto('site')
      .values({ id: '01950000-0000-7000-8000-000000000001', name: 'x', invented: true })
      .execute();
    await expect(started({ purpose: 'clinic' }, demo)).rejects.toMatchObject({ code: 'site-other-purpose' });
  });

  test('is refused where the app is said to be and is not', async () => {
    await expect(started({ pages: join(tmpdir(), 'evenfall-nowhere') })).rejects.toThrow(/ENOENT/);
  });
});
