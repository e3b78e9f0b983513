import { ROUTES } from '@evenfall/api';
import type { EntryFrame } from '@evenfall/record';
import type { OpenAPIHono } from '@hono/zod-openapi';
import { beginSession, endSession, openSessions, readSession, withdraw } from '../store/classSessions.js';
import { addClassPerson } from '../store/persons.js';
import type { Incoming } from '../store/takeEntries.js';
import { problemAnswer } from './problems.js';
import { readOne } from './readEntries.js';
import { takenAnswer } from './taken.js';
import type { World } from './world.js';

/** Meetings of a group in which people measure each other: begun, filled, ended with everything in them. */
export function classSessionRoutes(app: OpenAPIHono, { db, site, program, now }: World): void {
  app.openapi(ROUTES.listClassSessions, async (c) =>
    c.json({ sessions: await openSessions(db, site().id, now()) }, 200),
  );

  app.openapi(ROUTES.beginClassSession, async (c) => {
    const read = readAll([['/entry', c.req.valid('json').entry]]);
    if (!read.ok) return problemAnswer(c, 422, read.refusals) as never;
    return takenAnswer(c, await beginSession(db, site().id, read.first, program)) as never;
  });

  app.openapi(ROUTES.readClassSession, async (c) => {
    const found = await readSession(db, site().id, c.req.valid('param').session, now());
    return found === null ? (problemAnswer(c, 404) as never) : c.json(found, 200);
  });

  app.openapi(ROUTES.endClassSession, async (c) => {
    const { session } = c.req.valid('param');
    const { entry, keep } = c.req.valid('json');
    if ((await readSession(db, site().id, session, now())) === null) return problemAnswer(c, 404) as never;
    const read = readAll([['/entry', entry], ...keep.map((one, at) => [`/keep/${at}`, one] as const)]);
    if (!read.ok) return problemAnswer(c, 422, read.refusals) as never;
    const done = await endSession(db, site().id, session, read.first, read.others, program);
    return (done.outcome === 'ended' ? c.json(done.deleted, 200) : takenAnswer(c, done)) as never;
  });

  app.openapi(ROUTES.addClassPerson, async (c) => {
    const { session } = c.req.valid('param');
    const { identity, entry } = c.req.valid('json');
    if ((await readSession(db, site().id, session, now())) === null) return problemAnswer(c, 404) as never;
    const read = readAll([['/entry', entry]]);
    if (!read.ok) return problemAnswer(c, 422, read.refusals) as never;
    const where = { site: site().id, book: 'class' as const, person: entry.person ?? '' };
    return takenAnswer(c, await addClassPerson(db, where, session, identity, read.first, program)) as never;
  });

  app.openapi(ROUTES.withdrawClassPerson, async (c) => {
    const { person } = c.req.valid('param');
    return c.json(await withdraw(db, site().id, person), 200);
  });

  type Read =
    | { readonly ok: true; readonly first: Incoming; readonly others: readonly Incoming[] }
    | { readonly ok: false; readonly refusals: Parameters<typeof problemAnswer>[2] };

  function readAll(frames: readonly (readonly [at: string, frame: EntryFrame])[]): Read {
    const read = frames.map(([at, frame]) => readOne(frame, now(), at));
    const refusals = read.flatMap((one) => one.refusals);
    const entries = read.flatMap(({ entry }) => (entry === null ? [] : [entry]));
    const [first, ...others] = entries;
    if (refusals.length > 0 || first === undefined) return { ok: false, refusals };
    return { ok: true, first, others };
  }
}
