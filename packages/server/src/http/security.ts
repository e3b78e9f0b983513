import { unkeepableTexts } from '@evenfall/record';
import type { Context } from 'hono';
import { createMiddleware } from 'hono/factory';
import { problemAnswer } from './problems.js';

/** Nothing but this origin, no inline code, no framing: OWASP ASVS 4.0.3, 14.4 (from memory). */
const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self'",
  "font-src 'self'",
  "connect-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

/** Headers on every answer. Data is never kept by a browser or a cache; the app's own files may be. */
export const securityHeaders = createMiddleware(async (c, next) => {
  await next();
  c.header('content-security-policy', POLICY);
  c.header('x-content-type-options', 'nosniff');
  c.header('referrer-policy', 'no-referrer');
  c.header('cross-origin-opener-policy', 'same-origin');
  c.header('cross-origin-resource-policy', 'same-origin');
  c.header('permissions-policy', 'camera=(), geolocation=(), microphone=(), payment=(), usb=()');
  if (!c.res.headers.has('cache-control')) c.header('cache-control', 'no-store');
});

const LOOPBACK = /^(localhost|127\.0\.0\.1|\[::1\])(:\d+)?$/i;

/**
 * Only this machine's own names (those of its network by TLS alone), and for a change only this origin's own pages:
 * a page of another site in the same browser, or a name that was made to point here, gets nothing.
 */
export function sameOriginOnly(hosts: () => ReadonlySet<string>) {
  return createMiddleware(async (c, next) => {
    const host = c.req.header('host') ?? '';
    const { protocol } = new URL(c.req.url);
    const isOurs = protocol === 'https:' && hosts().has(host.toLowerCase().replace(/:\d+$/, ''));
    if (!isOurs && !LOOPBACK.test(host)) return problemAnswer(c, 403, [], 'other-address');
    const origin = c.req.header('origin');
    const site = c.req.header('sec-fetch-site');
    const isForeign =
      (origin !== undefined && origin !== `${protocol}//${host}`) ||
      (site !== undefined && !['same-origin', 'none'].includes(site) && !isVisit(c));
    if (isForeign) return problemAnswer(c, 403, [], 'other-page');
    await next();
  });
}

/** A page of the app opened by a link elsewhere, as from plain HTTP to TLS: it is read by nobody but who sits there. */
function isVisit(c: Context): boolean {
  return (
    c.req.method === 'GET' &&
    c.req.header('sec-fetch-mode') === 'navigate' &&
    c.req.header('sec-fetch-dest') === 'document' &&
    !c.req.path.startsWith('/api')
  );
}

/** A change must be JSON: a form of another site cannot send it without asking first. */
export const jsonOnly = createMiddleware(async (c, next) => {
  if (['POST', 'PUT', 'DELETE', 'PATCH'].includes(c.req.method)) {
    const type = c.req.header('content-type') ?? '';
    if (!/^application\/json\s*(;|$)/i.test(type)) return problemAnswer(c, 415);
  }
  await next();
});

/** A text that cannot be kept is refused before anything reads it. A body that is not JSON is left to its route. */
export const keepableTextOnly = createMiddleware(async (c, next) => {
  if (['POST', 'PUT', 'DELETE', 'PATCH'].includes(c.req.method)) {
    const refusals = unkeepableTexts(await c.req.json().catch(() => null));
    if (refusals.length > 0) return problemAnswer(c, 422, refusals);
  }
  await next();
});
