import { X509Certificate } from 'node:crypto';
import type { Lan } from '@evenfall/api';
import { loadWords, localeOf } from '@evenfall/words';
import { OpenAPIHono } from '@hono/zod-openapi';
import type { Context } from 'hono';
import { accepts } from 'hono/accepts';
import { securityHeaders } from '../http/security.js';
import { svgPicture } from './picture.js';
import { forCamera, REACH_STYLE, reachPage } from './reachPage.js';

/** What the pages about reaching Evenfall show: it changes when the machine's addresses do. */
export type Reached = {
  readonly lan: () => Lan | null;
  /** The local authority's certificate, PEM. */
  readonly authority: () => string | null;
  readonly isInvented: () => boolean;
};

/** `/phone` with its picture, and the authority's certificate: the same beside the app and on plain HTTP. */
export function reachRoutes(app: OpenAPIHono, reached: Reached, isPlain: boolean): void {
  const { lan, authority } = reached;
  app.get('/phone', async (c) => c.html(await pageFor(c, reached, isPlain)));
  app.get('/phone/style.css', (c) => c.body(REACH_STYLE, 200, { 'content-type': 'text/css; charset=utf-8' }));
  app.get('/phone/address.svg', (c) => {
    const found = lan();
    if (found === null) return c.text('Not found', 404);
    return c.body(svgPicture(forCamera(found)), 200, { 'content-type': 'image/svg+xml' });
  });
  app.get('/authority.crt', (c) => {
    const pem = authority();
    if (pem === null) return c.text('Not found', 404);
    const bytes = new Uint8Array(new X509Certificate(pem).raw);
    return c.body(bytes, 200, {
      'content-type': 'application/x-x509-ca-cert',
      'content-disposition': 'attachment; filename="evenfall-authority.crt"',
    });
  });
}

/** All that plain HTTP beyond the loopback serves: what this is, and how to trust it. No API, nothing of anybody. */
export function plainApp(reached: Reached): OpenAPIHono {
  const app = new OpenAPIHono();
  app.use(securityHeaders);
  reachRoutes(app, reached, true);
  app.get('/', async (c) => c.html(await pageFor(c, reached, true)));
  app.all('*', async (c) => c.html(await pageFor(c, reached, true), 403));
  return app;
}

/** The page in the first language that the browser asks for and there is; English where there is none. */
async function pageFor(c: Context, { lan, isInvented }: Reached, isPlain: boolean): Promise<string> {
  const locale = accepts(c, {
    header: 'Accept-Language',
    supports: [],
    default: 'en',
    match: (asked) => {
      // One of no weight is what somebody does not read.
      const inOrder = asked.filter(({ q }) => q > 0).sort((a, b) => b.q - a.q);
      return localeOf(
        null,
        inOrder.map(({ type }) => type),
      );
    },
  });
  return reachPage(lan(), isPlain, isInvented(), await loadWords(locale));
}
