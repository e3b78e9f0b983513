import { X509Certificate } from 'node:crypto';
import { mkdtemp, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { request as plainRequest } from 'node:http';
import { request as tlsRequest } from 'node:https';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Lan, LanSettings, Settings } from '@evenfall/api';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openMemory, type TestDatabase, withEmbedded, withMemory } from '../database/testing.js';
import { type Running, runServer } from '../start/server.js';
import { issue, makeAuthority } from './authority.js';
import { machineNames } from './machineNames.js';

const NETWORK: LanSettings = { host: null, given: null };
const QUIET = { log: () => undefined, fault: (error: unknown) => faults.push(error) };
const faults: unknown[] = [];
const own = machineNames(null);

function settings(more: Partial<Settings>): Settings {
  return {
    mode: 'serve',
    purpose: 'demo',
    folder: null,
    account: null,
    port: 0,
    pages: null,
    log: false,
    ...more,
  };
}

type Came = { status: number; type: string; text: string; body: Buffer };

/** Asks as a browser would; by TLS it trusts `ca` alone. */
function asked(
  address: string,
  path: string,
  ca: string | null,
  headers: Record<string, string> = {},
): Promise<Came> {
  const url = new URL(path, address);
  return new Promise((resolve, reject) => {
    const options = { headers, ...(ca === null ? {} : { ca, servername: '' }) };
    const sent = (url.protocol === 'https:' ? tlsRequest : plainRequest)(url, options, (response) => {
      const chunks: Buffer[] = [];
      response.on('data', (chunk: Buffer) => chunks.push(chunk));
      response.on('end', () => {
        const body = Buffer.concat(chunks);
        const type = String(response.headers['content-type']);
        resolve({ status: response.statusCode ?? 0, type, text: body.toString('utf8'), body });
      });
    });
    sent.on('error', reject);
    sent.end();
  });
}

/** The demo in memory, filled by the first server that starts on it and closed after the last. */
let demo: TestDatabase;
beforeAll(async () => {
  const database = await openMemory();
  demo = { ...database, close: async () => undefined };
  return database.close;
});

describe('a server in the network', { timeout: 60_000 }, () => {
  let folder: string;
  let running: Running;
  let lan: Lan;
  let ca: string;
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'evenfall-lan-'));
    const authority = await makeAuthority(own, new Date());
    const certified = await issue(authority, own, new Date());
    const given = { certificate: join(folder, 'server.pem'), key: join(folder, 'server.key') };
    await writeFile(given.certificate, certified.certificate);
    await writeFile(given.key, certified.key);
    ca = authority.certificate;
    running = await runServer(demo, settings({ lan: { host: null, given } }), QUIET);
    if (running.lan === null) throw new Error('it listens on the loopback alone');
    lan = running.lan;
  });
  afterAll(async () => {
    await running.close();
    await rm(folder, { recursive: true, force: true });
    expect(faults).toEqual([]);
  });
  const inNetwork = (scheme: string) => {
    const { port } = new URL(running.address ?? '');
    return `${scheme}://${own.addresses[0]}:${port}`;
  };

  test('answers by TLS at its network address to whoever trusts its authority, and to nobody else', async () => {
    expect(lan.addresses).toContain(`${inNetwork('https')}/`);
    const about = await asked(inNetwork('https'), '/api/about', ca);
    expect([about.status, JSON.parse(about.text).site.invented]).toEqual([200, true]);
    await expect(asked(inNetwork('https'), '/api/about', null)).rejects.toThrow(/certificate/);
  });

  test.each(['/', '/api/about', '/api/books/care/persons', '/people', '/control/backup'])(
    'on plain HTTP in the network %s is the explanation, and nothing of anybody',
    async (path) => {
      const came = await asked(inNetwork('http'), path, null);
      expect([came.status, came.type]).toEqual([path === '/' ? 200 : 403, 'text/html; charset=UTF-8']);
      expect(came.text).toContain('This address is not encrypted');
      expect(came.text).toContain(`<a href="${inNetwork('https')}/">`);
    },
  );

  test('on plain HTTP this machine alone reaches the app', async () => {
    const about = await asked(running.address ?? '', '/api/about', null);
    expect(about.status).toBe(200);
  });

  test('takes its own names alone, and by TLS alone: a name made to point here gets nothing', async () => {
    const elsewhere = await asked(inNetwork('https'), '/api/about', ca, { host: 'elsewhere.example' });
    expect(elsewhere.status).toBe(403);
    const { host } = new URL(inNetwork('https'));
    const plain = await asked(running.address ?? '', '/api/about', null, { host });
    expect(plain.status).toBe(403);
    const own = await asked(inNetwork('https'), '/api/about', ca, { origin: `https://${host}` });
    const foreign = await asked(inNetwork('https'), '/api/about', ca, { origin: `http://${host}` });
    expect([own.status, foreign.status]).toEqual([200, 403]);
  });

  // W3C Fetch Metadata: a link from plain HTTP to TLS of the same host is `cross-site`, and a navigation.
  test('a link elsewhere opens a page of the app, and nothing of the API', async () => {
    const link = {
      'sec-fetch-site': 'cross-site',
      'sec-fetch-mode': 'navigate',
      'sec-fetch-dest': 'document',
    };
    const statusOf = async (path: string, headers: Record<string, string>) =>
      (await asked(inNetwork('https'), path, ca, headers)).status;
    expect(await statusOf('/phone', link)).toBe(200);
    expect(await statusOf('/phone', { ...link, 'sec-fetch-dest': 'iframe' })).toBe(403);
    expect(await statusOf('/phone', { 'sec-fetch-site': 'cross-site', 'sec-fetch-mode': 'no-cors' })).toBe(
      403,
    );
    expect(await statusOf('/api/books/care/persons', link)).toBe(403);
  });

  test('a caller who says nothing, or nonsense, harms nobody', async () => {
    const { connect } = await import('node:net');
    const socket = connect(Number(new URL(running.address ?? '').port), own.addresses[0]);
    socket.on('error', () => undefined);
    socket.write(Buffer.from([0x16, 0xff, 0xff, 0, 0]));
    expect((await asked(inNetwork('https'), '/api/about', ca)).status).toBe(200);
    socket.destroy();
  });
});

describe('a certificate of its own', { timeout: 60_000 }, () => {
  test('lies in the data folder, open to nobody else, and is fetched on plain HTTP with its fingerprint', async () => {
    await withEmbedded(async (database) => {
      const root = database.keeper?.folder ?? '';
      const kept = { ...database, close: async () => undefined };
      const running = await runServer(kept, settings({ lan: NETWORK }), QUIET);
      for (const name of ['authority.json', 'server.json'])
        expect((await stat(join(root, 'tls', name))).mode & 0o777, name).toBe(0o600);
      const explained = running.lan?.explained ?? '';
      const page = await asked(explained, '/phone', null);
      const fetched = await asked(explained, '/authority.crt', null);
      const authority = new X509Certificate(fetched.body);
      expect(authority.fingerprint256).toBe(running.lan?.fingerprint);
      expect(page.text).toContain(authority.fingerprint256);
      // It is met before anything can be chosen: the browser's languages say which one it is read in.
      const spanish = await asked(explained, '/phone', null, {
        'accept-language': 'fr, en;q=0.3, es-MX;q=0.8',
      });
      expect(spanish.text).toContain('<html lang="es-MX">');
      expect(spanish.text).toContain('Evenfall en un teléfono');
      expect(page.text).toContain('<html lang="en">');
      const about = await asked(running.lan?.addresses[0] ?? '', '/api/about', authority.toString());
      expect(about.status).toBe(200);
      const text = await readFile(join(root, 'tls', 'authority.json'), 'utf8');
      expect(JSON.parse(text).certificate).toBe(authority.toString());
      await running.close();
    });
  });
});

describe('what must not be opened to a network', { timeout: 60_000 }, () => {
  const refused = (more: Partial<Settings>, database = demo) =>
    runServer(database, settings(more), QUIET).then(
      () => 'started',
      (error: { code: string }) => error.code,
    );

  test('a clinic without an owner’s account', async () => {
    await withMemory(async (clinic) => {
      expect(await refused({ purpose: 'clinic', lan: NETWORK }, clinic)).toBe('lan-owner-needed');
    });
  });

  test('a server without a folder for its keys, with a certificate that is none, at an address it does not have', async () => {
    expect(await refused({ lan: NETWORK })).toBe('lan-no-folder');
    const given = { certificate: '/nowhere.pem', key: '/nowhere.key' };
    expect(await refused({ lan: { host: null, given } })).toBe('certificate-unreadable');
    expect(await refused({ lan: { host: '203.0.113.77', given } })).toBe('host-unknown');
  });
});
