import { expect, test } from 'vitest';
import { PATHS, type RouteName } from './paths.js';
import { ROUTES } from './routes.js';

const NAMES = Object.keys(PATHS) as RouteName[];

test('every route has a path, and every path a route', () => {
  expect(Object.keys(ROUTES).sort()).toEqual(NAMES.toSorted());
});

test('no two routes have the same method and place', () => {
  const places = NAMES.map((name) => `${PATHS[name].method} ${PATHS[name].path}`);
  expect(new Set(places).size).toBe(places.length);
});

test.each(NAMES)('%s: its path has the parameters that its route reads, and no others', (name) => {
  const inPath = [...PATHS[name].path.matchAll(/\{(\w+)\}/g)].map(([, key]) => key);
  const { request } = ROUTES[name] as { request?: { params?: { shape: Record<string, unknown> } } };
  expect(Object.keys(request?.params?.shape ?? {}).sort()).toEqual(inPath.sort());
  expect(PATHS[name].path).toMatch(/^\/api\//);
});

test.each(NAMES)('%s: what only reads takes no body, what changes something does', (name) => {
  const hasBody = 'body' in ((ROUTES[name] as { request?: object }).request ?? {});
  expect(hasBody).toBe(PATHS[name].method !== 'get');
});
