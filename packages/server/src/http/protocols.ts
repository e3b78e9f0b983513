import { ROUTES } from '@evenfall/api';
import type { OpenAPIHono } from '@hono/zod-openapi';
import { listAgents } from '../store/agents.js';
import { addProtocol, listProtocolChoices, listProtocols } from '../store/protocols.js';
import { problemAnswer } from './problems.js';
import { notOf } from './signedIn.js';
import type { World } from './world.js';

/** Protocol versions: kept for ever, named by the hash of their content. */
export function protocolRoutes(app: OpenAPIHono, { db, site }: World): void {
  app.openapi(ROUTES.listProtocols, async (c) =>
    c.json({ protocols: await listProtocols(db, site().id) }, 200),
  );
  app.openapi(ROUTES.listProtocolChoices, async (c) => {
    const choices = await listProtocolChoices(db, site().id);
    return c.json({ choices, agents: await listAgents(db, site().id) }, 200);
  });
  app.openapi(ROUTES.addProtocol, async (c) => {
    const barred = notOf(c, 'owner', 'supervisor');
    if (barred !== null) return barred as never;
    const kept = await addProtocol(db, site().id, c.req.valid('json').content);
    if (!kept.ok) return problemAnswer(c, 422, kept.refusals) as never;
    return kept.already ? c.json(kept.row, 200) : c.json(kept.row, 201);
  });
}
