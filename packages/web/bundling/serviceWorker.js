/* global self, caches, clients */
// Keeps the app's own files of one build on the device, so that a round goes on where the network does not.
// Never an answer of the server, and nothing of anybody. The build writes the two constants.
const BUILD = '__BUILD__';
const SHELL = ['__SHELL__'];

const PREFIX = 'evenfall-';
const SHELF = PREFIX + BUILD;
/** What only the server can answer. */
const SERVERS_OWN = /^\/(api|control|phone)(\/|$)|^\/authority\.crt$/;

self.addEventListener('install', (event) => {
  const fresh = SHELL.map((path) => new Request(path, { cache: 'reload' }));
  event.waitUntil(caches.open(SHELF).then((shelf) => shelf.addAll(fresh)));
});

// The build before this one stays too: a page of it that is still open finds its parts.
self.addEventListener('activate', (event) => {
  const tidy = async () => {
    const others = (await caches.keys()).filter((name) => name.startsWith(PREFIX) && name !== SHELF);
    for (const name of others.slice(0, -1)) await caches.delete(name);
    await self.clients.claim();
  };
  event.waitUntil(tidy());
});

// A newer build waits until whoever is at work says so.
self.addEventListener('message', (event) => {
  if (event.data === 'take-over') self.skipWaiting();
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (request.method !== 'GET' || origin !== self.location.origin || SERVERS_OWN.test(pathname)) return;
  const isPlace = request.mode === 'navigate' && !/\.[a-z0-9]+$/i.test(pathname);
  if (isPlace) event.respondWith(kept('/index.html', request));
  else if (SHELL.includes(pathname) || pathname.startsWith('/assets/'))
    event.respondWith(kept(pathname, request));
});

async function kept(path, request) {
  const own = await (await caches.open(SHELF)).match(path);
  return own ?? (await caches.match(path)) ?? fetch(request);
}
