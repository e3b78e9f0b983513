import { ROUTES } from '@evenfall/api';
import type { EntryFrame } from '@evenfall/record';
import type { OpenAPIHono } from '@hono/zod-openapi';
import { beginSession, isKnownSession, openSessions, readSession } from '../store/classSessions.js';
import { endSession, withdraw } from '../store/endClassSession.js';
import { addClassPerson } from '../store/persons.js';
import type { Incoming } from '../store/takeEntries.js';
import { classEnded } from './log.js';
import { problemAnswer } from './problems.js';
import { readOne } from './readEntries.js';
import { barredFrom } from './signedIn.js';
import { takenAnswer } from './taken.js';
import type { World } from './world.js';

/** Meetings of a group in which people measure each other: begun, filled, ended with everything in them. */
export function classSessionRoutes(app: OpenAPIHono, world: World): void {
  const { db, site, program, now, log } = world;
  app.openapi(ROUTES.listClassSessions, async (c) =>
    c.json({ sessions: await openSessions(db, site().id, now()) }, 200),
  );

  app.openapi(ROUTES.beginClassSession, async (c) => {
    const read = readAll([['/entry', c.req.valid('json').entry]]);
    if (!read.ok) return problemAnswer(c, 422, read.refusals) as never;
    const barred = await barredFrom(c, world, [['/entry', c.req.valid('json').entry]]);
    if (barred !== null) return barred as never;
    return takenAnswer(c, await beginSession(db, site().id, read.first, program, now())) as never;
  });

  app.openapi(ROUTES.readClassSession, async (c) => {
    const found = await readSession(db, site().id, c.req.valid('param').session, now());
    return found === null ? (problemAnswer(c, 404) as never) : c.json(found, 200);
  });

  app.openapi(ROUTES.endClassSession, async (c) => {
    const { session } = c.req.valid('param');
    const { entry, keep } = c.req.valid('json');
    if (!(await isKnownSession(db, site().id, session))) return problemAnswer(c, 404) as never;
    const read = readAll([['/entry', entry], ...keep.map((one, at) => [`/keep/${at}`, one] as const)]);
    if (!read.ok) return problemAnswer(c, 422, read.refusals) as never;
    const barred = await barredFrom(c, world, [
      ['/entry', entry],
      ...keep.map((one, at) => [`/keep/${at}`, one] as const),
    ]);
    if (barred !== null) return barred as never;
    const done = await endSession(db, site().id, session, read.first, read.others, program);
    if (done.outcome !== 'ended') return takenAnswer(c, done) as never;
    if (!done.already) log(classEnded('teacher', done.deleted));
    return c.json(done.deleted, 200);
  });

  app.openapi(ROUTES.addClassPerson, async (c) => {
    const { session } = c.req.valid('param');
    const { identity, entry } = c.req.valid('json');
    if (!(await isKnownSession(db, site().id, session))) return problemAnswer(c, 404) as never;
    const read = readAll([['/entry', entry]]);
    if (!read.ok) return problemAnswer(c, 422, read.refusals) as never;
    const barred = await barredFrom(c, world, [['/entry', entry]]);
    if (barred !== null) return barred as never;
    const where = { site: site().id, book: 'class' as const, person: entry.person ?? '' };
    return takenAnswer(c, await addClassPerson(db, where, session, identity, read.first, program)) as never;
  });

  app.openapi(ROUTES.withdrawClassPerson, async (c) => {
    const { session, person } = c.req.valid('param');
    const deleted = await withdraw(db, site().id, session, person);
    return deleted === null ? (problemAnswer(c, 404) as never) : c.json(deleted, 200);
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
