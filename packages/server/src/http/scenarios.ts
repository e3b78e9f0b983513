import { ROUTES } from '@evenfall/api';
import type { OpenAPIHono } from '@hono/zod-openapi';
import { listAgents } from '../store/agents.js';
import { listScenarios } from '../store/scenarios.js';
import type { World } from './world.js';

/** The simulated persons that the place made for itself. Kept by `addEntries`. */
export function scenarioRoutes(app: OpenAPIHono, { db, site }: World): void {
  app.openapi(ROUTES.listScenarios, async (c) => {
    const listed = await listScenarios(db, site().id);
    const agents = await listAgents(db, site().id);
    const notices = site().invented ? ['INVENTED', 'SIMULATED'] : ['SIMULATED'];
    return c.json({ notices, ...listed, agents } as never, 200) as never;
  });
}
