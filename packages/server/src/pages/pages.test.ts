import { mkdir, mkdtemp, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { OpenAPIHono } from '@hono/zod-openapi';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { pageRoutes, readPages } from './pages.js';

const manifest = {
  bytes: new TextEncoder().encode('{"name":"Evenfall","scope":"/"}'),
  type: 'application/manifest+json',
  tag: '"m"',
  forever: false,
};
const INDEX = '<!doctype html><title>Evenfall</title>';

describe('the pages of the app', () => {
  let outer: string;
  let app: OpenAPIHono;

  beforeAll(async () => {
    outer = await mkdtemp(join(tmpdir(), 'evenfall-pages-'));
    const built = join(outer, 'built');
    await mkdir(join(built, 'assets'), { recursive: true });
    const files = {
      'index.html': INDEX,
      'assets/index-4f2a.js': 'export {};',
      'assets/index-4f2a.css': 'body{}',
      'assets/ink-9c.woff2': 'wOF2',
      'icon.svg': '<svg/>',
      'icon.png': 'png',
      'app.webmanifest': '{}',
      'words.json': '{}',
      'licences.txt': 'Apache-2.0',
      'unknown.bin': '?',
    };
    for (const [name, text] of Object.entries(files)) await writeFile(join(built, name), text);
    await writeFile(join(outer, 'secret.txt'), 'not a page');
    await mkdir(join(outer, 'beside'));
    await writeFile(join(outer, 'beside', 'secret.txt'), 'not a page');
    await symlink(join(outer, 'secret.txt'), join(built, 'link.txt'));
    await symlink(join(outer, 'beside'), join(built, 'linked'));
    app = new OpenAPIHono();
    pageRoutes(app, await readPages(built));
  });
  afterAll(async () => {
    await rm(outer, { recursive: true, force: true });
  });

  const get = (path: string, headers: Record<string, string> = {}) =>
    app.request(`http://localhost${path}`, { headers });

  test.each([
    ['/', 'text/html; charset=utf-8'],
    ['/index.html', 'text/html; charset=utf-8'],
    ['/assets/index-4f2a.js', 'text/javascript; charset=utf-8'],
    ['/assets/index-4f2a.css', 'text/css; charset=utf-8'],
    ['/assets/ink-9c.woff2', 'font/woff2'],
    ['/icon.svg', 'image/svg+xml'],
    ['/icon.png', 'image/png'],
    ['/app.webmanifest', 'application/manifest+json'],
    ['/words.json', 'application/json'],
    ['/licences.txt', 'text/plain; charset=utf-8'],
    // Served with nosniff, so an unknown kind must not claim to be something a browser runs.
    ['/unknown.bin', 'application/octet-stream'],
  ])('%s is %s', async (path, type) => {
    const came = await get(path);
    expect([came.status, came.headers.get('content-type')]).toEqual([200, type]);
  });

  test.each(['/', '/people', '/people/01950000-0000-7000-8000-000000000001', '/people/x/values/y/amend'])(
    '%s is a place in the app and gets its one page',
    async (path) => {
      const came = await get(path);
      expect([came.status, await came.text()]).toEqual([200, INDEX]);
    },
  );

  test.each(['/assets/index-old.js', '/nothing.css', '/favicon.ico'])(
    '%s is a file that is not there, and not the page in its place',
    async (path) => {
      expect((await get(path)).status).toBe(404);
    },
  );

  test.each([
    '/../secret.txt',
    '/..%2fsecret.txt',
    '/%2e%2e/secret.txt',
    '/%2e%2e%2fsecret.txt',
    '/assets/../../secret.txt',
    '/assets/..%5c..%5csecret.txt',
    '//secret.txt',
    '/./../secret.txt%00.html',
    '/beside/secret.txt',
    '/link.txt',
    '/linked/secret.txt',
  ])('%s shows nothing from outside the folder', async (path) => {
    // As a socket would hand it on: without the tidying of a URL.
    const request = new Request('http://localhost/');
    Object.defineProperty(request, 'url', { value: `http://localhost${path}` });
    const came = await app.fetch(request);
    expect(await came.text()).not.toContain('not a page');
    expect(came.status).toBe(404);
  });

  test('what has its content in its name is kept for ever, everything else is asked for again', async () => {
    expect((await get('/assets/index-4f2a.js')).headers.get('cache-control')).toBe(
      'public, max-age=31536000, immutable',
    );
    for (const path of ['/', '/people', '/icon.svg', '/app.webmanifest'])
      expect((await get(path)).headers.get('cache-control'), path).toBe('no-cache');
  });

  // RFC 9110, sections 8.8.3 and 13.1.2.
  test('what the browser has already is not sent again; what changed is', async () => {
    const first = await get('/people');
    const etag = first.headers.get('etag') ?? '';
    expect(etag).toMatch(/^"[0-9a-f]{32}"$/);
    const again = await get('/', { 'if-none-match': etag });
    expect([again.status, await again.text(), again.headers.get('etag')]).toEqual([304, '', etag]);
    const other = await get('/', { 'if-none-match': '"another"' });
    expect([other.status, await other.text()]).toEqual([200, INDEX]);
    expect((await get('/icon.svg')).headers.get('etag')).not.toBe(etag);
  });

  test('a page is read, never written to', async () => {
    const came = await app.request('http://localhost/', { method: 'POST', body: 'x' });
    expect(came.status).toBe(404);
    const head = await app.request('http://localhost/', { method: 'HEAD' });
    expect([head.status, await head.text()]).toEqual([200, '']);
  });

  test('an invented clinic says so in the name on a home screen; a clinic does not', async () => {
    const invented = new OpenAPIHono();
    pageRoutes(invented, new Map([['/app.webmanifest', manifest]]), () => true);
    const named = await invented.request('http://localhost/app.webmanifest');
    expect(await named.json()).toEqual({ name: 'Evenfall: INVENTED', short_name: 'INVENTED', scope: '/' });
    const clinic = new OpenAPIHono();
    pageRoutes(clinic, new Map([['/app.webmanifest', manifest]]), () => false);
    const plain = await clinic.request('http://localhost/app.webmanifest');
    expect(await plain.json()).toEqual({ name: 'Evenfall', scope: '/' });
  });

  test('an app that was not built is said at once, not at the first visit', async () => {
    await expect(readPages(join(outer, 'nowhere'))).rejects.toThrow(/ENOENT/);
  });
});
