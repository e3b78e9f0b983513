import { ROUTES } from '@evenfall/api';
import { refusal } from '@evenfall/clinical';
import type { OpenAPIHono } from '@hono/zod-openapi';
import type { Context } from 'hono';
import { readCode } from '../marking/code.js';
import { MARKING } from '../marking/figures.js';
import {
  clockMs,
  endMarking,
  joinMarking,
  keepMarks,
  openMarking,
  readMarking,
  sayRun,
} from '../marking/markings.js';
import { countTry, uncountTry } from '../marking/wrongCodes.js';
import { modulesOf } from '../tls/picture.js';
import { problemAnswer } from './problems.js';
import { notOf } from './signedIn.js';
import type { World } from './world.js';

/** The page that joins; what stands after `#` never leaves the browser that opens it. */
const MARK_PAGE = '/mark';

/** A second person marks the moments of a run on another device: relayed, and forgotten within minutes. */
export function markingRoutes(app: OpenAPIHono, { db, site, now }: World): void {
  app.openapi(ROUTES.readClock, async (c) => c.json({ atMs: await clockMs(db) }, 200));

  app.openapi(ROUTES.openMarking, async (c) => {
    const barred = whoMeasures(c);
    if (barred !== null) return barred as never;
    const { isNew, code, secondsLeft } = await openMarking(db, site().id, c.req.valid('json').id, now());
    return c.json({ code, secondsLeft, picture: pictureOf(c, code) }, isNew ? 201 : 200);
  });

  app.openapi(ROUTES.readMarking, async (c) => {
    const { marking } = c.req.valid('param');
    const { after } = c.req.valid('query');
    const { signal } = c.req.raw;
    for (let left = MARKING.waitsMs; ; left -= MARKING.looksEveryMs) {
      const state = await readMarking(db, site().id, marking, now());
      if (state === null) return problemAnswer(c, 404) as never;
      if (state.turn > after || left <= 0 || signal.aborted) return c.json(state, 200);
      await new Promise((resolve) => setTimeout(resolve, MARKING.looksEveryMs));
    }
  });

  app.openapi(ROUTES.sayRun, async (c) => {
    const { marking } = c.req.valid('param');
    const isOpen = await sayRun(db, site().id, marking, c.req.valid('json').runAtMs, now());
    return isOpen ? c.json({}, 200) : (problemAnswer(c, 404) as never);
  });

  app.openapi(ROUTES.endMarking, async (c) => {
    await endMarking(db, site().id, c.req.valid('param').marking);
    return c.json({}, 200);
  });

  app.openapi(ROUTES.joinMarking, async (c) => {
    const barred = whoMeasures(c);
    if (barred !== null) return barred as never;
    const { code: typed, marker } = c.req.valid('json');
    const asker = c.get('asker');
    const who = asker === 'anybody' ? asker : asker.account;
    const wait = await countTry(db, site().id, who, now());
    if (wait > 0) {
      c.header('retry-after', String(wait));
      const figures = { minutes: Math.ceil(wait / 60) };
      return problemAnswer(c, 429, [
        refusal('/code', 'out-of-range', 'try-later', null, { figures }),
      ]) as never;
    }
    const code = readCode(typed);
    const joined = code === null ? 'none' : await joinMarking(db, site().id, code, marker, now());
    if (joined === 'none') return problemAnswer(c, 404) as never;
    await uncountTry(db, site().id, who);
    return joined === 'taken' ? (problemAnswer(c, 409) as never) : c.json({}, 200);
  });

  app.openapi(ROUTES.keepMarks, async (c) => {
    const kept = await keepMarks(db, site().id, c.req.valid('param').marker, c.req.valid('json'), now());
    return kept === null ? (problemAnswer(c, 404) as never) : c.json(kept, 200);
  });
}

const whoMeasures = (c: Context) => notOf(c, 'clinician', 'supervisor', 'learner');

/** The picture for another device: none on the loopback, which only this machine reaches. */
function pictureOf(c: Context, code: string): { size: number; path: string } | null {
  const { protocol } = new URL(c.req.url);
  const host = c.req.header('host') ?? '';
  const isLoopback = /^(localhost|127\.0\.0\.1|\[::1\])(:\d+)?$/i.test(host);
  return isLoopback ? null : modulesOf(`${protocol}//${host}${MARK_PAGE}#${code}`);
}
