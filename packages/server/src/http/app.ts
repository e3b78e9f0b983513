import { LARGEST_BODY_BYTES } from '@evenfall/api';
import { refusal } from '@evenfall/clinical';
import { refusalsOf } from '@evenfall/record';
import { OpenAPIHono } from '@hono/zod-openapi';
import { bodyLimit } from 'hono/body-limit';
import { HTTPException } from 'hono/http-exception';
import { isAway } from '../database/isAway.js';
import { accountRoutes } from './accounts.js';
import { agentRoutes } from './agents.js';
import { classSessionRoutes } from './classSessions.js';
import { entryRoutes } from './entries.js';
import { equipmentRoutes } from './equipment.js';
import { exerciseRoutes } from './exercises.js';
import { importRoutes, seriesTableRoute } from './imports.js';
import { requestLog } from './log.js';
import { markingRoutes } from './markings.js';
import { openApiDocument } from './openApi.js';
import { personRoutes } from './persons.js';
import { problemAnswer } from './problems.js';
import { protocolRoutes } from './protocols.js';
import { scenarioRoutes } from './scenarios.js';
import { jsonOnly, keepableTextOnly, sameOriginOnly, securityHeaders } from './security.js';
import { signedInOnly, trusted } from './signedIn.js';
import { signInRoutes } from './signIn.js';
import type { World } from './world.js';

/** When to try again after the database was away. Source: decision of this project. */
const RETRY_AFTER_SECONDS = 5;

const none = (): ReadonlySet<string> => new Set();

/**
 * The API, without a socket: a test hands it a Request and looks at the answer.
 *
 * @param isTrusted on the control socket, which only the folder's own account can open: nobody signs in there
 */
export function createApi(world: World, isTrusted = false): OpenAPIHono {
  const app = new OpenAPIHono({
    defaultHook: (read, c) => {
      if (read.success) return undefined;
      const within = read.target === 'json' ? '' : `/${read.target}`;
      // The hook is given what came too; its type does not say so.
      const came = (read as { data?: unknown }).data;
      return problemAnswer(c, 422, refusalsOf(read.error, came, within));
    },
  });
  app.use(requestLog(world.log, world.ticks), securityHeaders, sameOriginOnly(world.hosts ?? none), jsonOnly);
  app.use(
    '/api/*',
    bodyLimit({
      maxSize: LARGEST_BODY_BYTES,
      onError: (c) =>
        problemAnswer(c, 413, [
          refusal('', 'out-of-range', 'body-at-most', null, {
            figures: { maximumBytes: LARGEST_BODY_BYTES },
          }),
        ]),
    }),
  );
  app.use('/api/*', isTrusted ? trusted : signedInOnly(world));
  app.use('/api/*', keepableTextOnly);
  signInRoutes(app, world);
  accountRoutes(app, world, isTrusted);
  agentRoutes(app, world);
  personRoutes(app, world);
  importRoutes(app, world);
  seriesTableRoute(app);
  entryRoutes(app, world);
  classSessionRoutes(app, world);
  protocolRoutes(app, world);
  equipmentRoutes(app, world);
  exerciseRoutes(app, world);
  scenarioRoutes(app, world);
  markingRoutes(app, world);
  app.get('/api/openapi.json', (c) => c.json(openApiDocument(app)));
  app.all('/api/*', (c) => problemAnswer(c, 404));
  app.onError((error, c) => {
    if (error instanceof HTTPException) {
      return error.status === 400 ? problemAnswer(c, 400, [], 'not-json') : problemAnswer(c, error.status);
    }
    world.fault(error);
    if (isAway(error)) {
      c.header('retry-after', String(RETRY_AFTER_SECONDS));
      return problemAnswer(c, 503, [], 'database-away');
    }
    return problemAnswer(c, 500);
  });
  return app;
}
