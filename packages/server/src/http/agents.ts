import { ROUTES } from '@evenfall/api';
import { refusal } from '@evenfall/clinical';
import type { OpenAPIHono } from '@hono/zod-openapi';
import { addAgent, listAgentsHere } from '../store/agents.js';
import { protocolInForce } from '../store/protocols.js';
import { problemAnswer } from './problems.js';
import { notOf } from './signedIn.js';
import type { World } from './world.js';

/** What this server is, and who acts here. */
export function agentRoutes(app: OpenAPIHono, { db, site, program, now }: World): void {
  app.openapi(ROUTES.about, async (c) => {
    const protocolVersion = await protocolInForce(db, site().id);
    return c.json({ program, site: site(), now: now().toISOString(), protocolVersion }, 200);
  });
  app.openapi(ROUTES.listAgents, async (c) => c.json({ agents: await listAgentsHere(db, site().id) }, 200));
  app.openapi(ROUTES.addAgent, async (c) => {
    const barred = notOf(c, 'owner', 'supervisor');
    if (barred !== null) return barred as never;
    const agent = c.req.valid('json');
    const outcome = await addAgent(db, site().id, agent);
    if (outcome === 'conflict') {
      return problemAnswer(c, 409, [refusal('/name', 'contradicts', 'same-content', agent.name)]) as never;
    }
    return outcome === 'taken' ? c.json(agent, 201) : c.json(agent, 200);
  });
}
