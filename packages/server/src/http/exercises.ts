import { ROUTES } from '@evenfall/api';
import { hasRole } from '@evenfall/record';
import type { OpenAPIHono } from '@hono/zod-openapi';
import type { Context } from 'hono';
import { listAgents } from '../store/agents.js';
import { findExercise, listExercises } from '../store/exercises.js';
import { problemAnswer } from './problems.js';
import type { World } from './world.js';

/** Exercises of the practice room: one's own, and for whoever supervises everybody's. Kept by `addEntries`. */
export function exerciseRoutes(app: OpenAPIHono, { db, site }: World): void {
  const noticesHere = () => (site().invented ? ['INVENTED', 'SIMULATED'] : ['SIMULATED']);

  app.openapi(ROUTES.listExercises, async (c) => {
    const listed = await listExercises(db, site().id, agentAlone(c), c.req.valid('query').before);
    if (listed === null) return problemAnswer(c, 404) as never;
    const agents = await listAgents(db, site().id);
    return c.json({ notices: noticesHere(), ...listed, agents } as never, 200) as never;
  });

  app.openapi(ROUTES.readExercise, async (c) => {
    const entry = await findExercise(db, site().id, c.req.valid('param').exercise, agentAlone(c));
    if (entry === null) return problemAnswer(c, 404) as never;
    const agents = await listAgents(db, site().id);
    return c.json({ notices: noticesHere(), entry, agents } as never, 200) as never;
  });
}

/** Whose exercises alone are shown; null for everybody's. */
function agentAlone(c: Context): string | null {
  const asker = c.get('asker');
  if (asker === 'anybody') return null;
  const access = { agent: asker.agent.id, roles: asker.roles };
  return hasRole(access, 'supervisor') ? null : asker.agent.id;
}
