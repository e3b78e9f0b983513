import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { extname, join, relative, sep } from 'node:path';
import type { OpenAPIHono } from '@hono/zod-openapi';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
  '.woff2': 'font/woff2',
  '.txt': 'text/plain; charset=utf-8',
};

/** A file of the app: its bytes, its type, its tag, and whether its name changes with its content. */
type Page = {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly type: string;
  readonly tag: string;
  readonly forever: boolean;
};

/** The app's built files, held in memory: a few hundred kB, and nothing outside the folder can ever be served. */
export type Pages = ReadonlyMap<string, Page>;

/** Reads every file below a folder. Errors: throws when the folder is not there (the app was not built). */
export async function readPages(folder: string): Promise<Pages> {
  const found = await readdir(folder, { recursive: true, withFileTypes: true });
  const pages = new Map<string, Page>();
  for (const file of found.filter((one) => one.isFile())) {
    const path = join(file.parentPath, file.name);
    const bytes = new Uint8Array(await readFile(path));
    const url = `/${relative(folder, path).split(sep).join('/')}`;
    const tag = `"${createHash('sha256').update(bytes).digest('hex').slice(0, 32)}"`;
    const type = TYPES[extname(file.name)] ?? 'application/octet-stream';
    pages.set(url, { bytes, type, tag, forever: url.startsWith('/assets/') });
  }
  return pages;
}

/** Serves the app: its files by name, and its one page for every address that is a place in the app. */
export function pageRoutes(app: OpenAPIHono, pages: Pages, isInvented = () => false): void {
  // An invented clinic says so on a home screen too.
  app.get('/app.webmanifest', async (c, next) => {
    const manifest = pages.get('/app.webmanifest');
    if (manifest === undefined || !isInvented()) return next();
    const names = { name: 'Evenfall: INVENTED', short_name: 'INVENTED' };
    const text = JSON.stringify({ ...JSON.parse(new TextDecoder().decode(manifest.bytes)), ...names });
    return c.body(text, 200, { 'content-type': manifest.type, 'cache-control': 'no-cache' });
  });
  app.get('*', (c) => {
    const asked = pages.get(c.req.path);
    const page = asked ?? (extname(c.req.path) === '' ? pages.get('/index.html') : undefined);
    if (page === undefined) return c.text('Not found', 404);
    const headers = {
      'content-type': page.type,
      etag: page.tag,
      'cache-control': page.forever ? 'public, max-age=31536000, immutable' : 'no-cache',
    };
    if (c.req.header('if-none-match') === page.tag) return c.body(null, 304, headers);
    return c.body(page.bytes, 200, headers);
  });
}
