import { X509Certificate } from 'node:crypto';
import type { Lan } from '@evenfall/api';
import { OpenAPIHono } from '@hono/zod-openapi';
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
export function reachRoutes(
  app: OpenAPIHono,
  { lan, authority, isInvented }: Reached,
  isPlain: boolean,
): void {
  app.get('/phone', (c) => c.html(reachPage(lan(), isPlain, isInvented())));
  app.get('/phone/style.css', (c) => c.body(REACH_STYLE, 200, { 'content-type': 'text/css; charset=utf-8' }));
  app.get('/phone/address.svg', (c) => {
    const reached = lan();
    if (reached === null) return c.text('Not found', 404);
    return c.body(svgPicture(forCamera(reached)), 200, { 'content-type': 'image/svg+xml' });
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
  app.get('/', (c) => c.html(reachPage(reached.lan(), true, reached.isInvented())));
  app.all('*', (c) => c.html(reachPage(reached.lan(), true, reached.isInvented()), 403));
  return app;
}
