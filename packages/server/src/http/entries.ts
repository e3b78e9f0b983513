import { ROUTES } from '@evenfall/api';
import type { OpenAPIHono } from '@hono/zod-openapi';
import { takeEntries } from '../store/takeEntries.js';
import { impossibleIn } from './impossibleIn.js';
import { problemAnswer } from './problems.js';
import { readEntries } from './readEntries.js';
import { barredFrom } from './signedIn.js';
import { takenAnswer } from './taken.js';
import type { World } from './world.js';

/** Signing: entries kept together, all or none. */
export function entryRoutes(app: OpenAPIHono, world: World): void {
  const { db, site, program, now } = world;
  app.openapi(ROUTES.addEntries, async (c) => {
    const { entries, refusals } = readEntries(c.req.valid('json').entries, now());
    if (refusals.length > 0) return problemAnswer(c, 422, refusals) as never;
    const barred = await barredFrom(
      c,
      world,
      entries.map(({ frame }, at) => [`/entries/${at}`, frame]),
    );
    if (barred !== null) return barred as never;
    const impossible = await impossibleIn(entries);
    if (impossible.length > 0) return problemAnswer(c, 422, impossible) as never;
    return takenAnswer(c, await takeEntries(db, site().id, entries, program)) as never;
  });
}
