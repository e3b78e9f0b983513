import { ROUTES } from '@evenfall/api';
import type { EntryFrame } from '@evenfall/record';
import type { OpenAPIHono } from '@hono/zod-openapi';
import type { Context } from 'hono';
import { listPersons } from '../store/listPersons.js';
import { addPerson, correctIdentity, eraseIdentity, readPerson, type Where } from '../store/persons.js';
import type { Taken } from '../store/takeEntries.js';
import { exportAnswer } from './export.js';
import { problemAnswer } from './problems.js';
import { readOne } from './readEntries.js';
import { seriesPdf } from './seriesPdf.js';
import { barredFrom } from './signedIn.js';
import { takenAnswer } from './taken.js';
import type { World } from './world.js';

/** People: listed, added with two identifiers, read whole, put right, erased, exported. */
export function personRoutes(app: OpenAPIHono, world: World): void {
  const { db, site, program, now } = world;

  app.openapi(ROUTES.listPersons, async (c) => {
    const listed = await listPersons(db, site().id, c.req.valid('param').book);
    const unreadable = listed.reduce((sum, one) => sum + one.unreadable, 0);
    return c.json({ persons: listed.map(({ unreadable: _, ...row }) => row), unreadable }, 200);
  });

  app.openapi(ROUTES.addPerson, async (c) => {
    const { identity, entry } = c.req.valid('json');
    const where = { site: site().id, book: c.req.valid('param').book, person: entry.person ?? '' };
    return (await taking(c, entry, (read) => addPerson(db, where, identity, read, program))) as never;
  });

  app.openapi(ROUTES.readPerson, async (c) => {
    const found = await readPerson(db, { site: site().id, ...c.req.valid('param') });
    if (found === null) return problemAnswer(c, 404) as never;
    return c.json(found as never, 200) as never;
  });

  app.openapi(ROUTES.correctIdentity, async (c) => {
    const { identity, entry } = c.req.valid('json');
    const where = { site: site().id, ...c.req.valid('param') };
    return (await known(c, where, () =>
      taking(c, entry, (read) => correctIdentity(db, where, identity, read, program)),
    )) as never;
  });

  app.openapi(ROUTES.eraseIdentity, async (c) => {
    const where = { site: site().id, ...c.req.valid('param') };
    return (await known(c, where, () =>
      taking(c, c.req.valid('json').entry, (read) => eraseIdentity(db, where, read, program)),
    )) as never;
  });

  app.openapi(ROUTES.exportPerson, async (c) => {
    const found = await readPerson(db, { site: site().id, ...c.req.valid('param') });
    if (found === null) return problemAnswer(c, 404) as never;
    return (await exportAnswer(c, found, c.req.valid('query'), world)) as never;
  });

  app.openapi(ROUTES.seriesPdf, async (c) => {
    const { series, ...where } = c.req.valid('param');
    const found = await readPerson(db, { site: site().id, ...where });
    const answer = found === null ? null : await seriesPdf(c, found, series, c.req.valid('query'), world);
    return (answer ?? problemAnswer(c, 404)) as never;
  });

  async function taking(
    c: Context,
    frame: EntryFrame,
    take: (read: Parameters<typeof addPerson>[3]) => Promise<Taken>,
  ): Promise<Response> {
    const { entry, refusals } = readOne(frame, now(), '/entry');
    if (entry === null || refusals.length > 0) return problemAnswer(c, 422, refusals);
    const barred = await barredFrom(c, world, [['/entry', frame]]);
    return barred ?? takenAnswer(c, await take(entry));
  }

  async function known(c: Context, where: Where, then: () => Promise<Response>): Promise<Response> {
    return (await readPerson(db, where)) === null ? problemAnswer(c, 404) : await then();
  }
}
