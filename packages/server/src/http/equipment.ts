import { ROUTES } from '@evenfall/api';
import type { OpenAPIHono } from '@hono/zod-openapi';
import { listAgents } from '../store/agents.js';
import { isGauge, listEquipment, readingsOfGauge } from '../store/equipment.js';
import { problemAnswer } from './problems.js';
import type { World } from './world.js';

/** What the place measures with: its entries, and what was read from a gauge. */
export function equipmentRoutes(app: OpenAPIHono, { db, site }: World): void {
  app.openapi(ROUTES.listEquipment, async (c) => {
    const listed = await listEquipment(db, site().id);
    return c.json({ ...listed, agents: await listAgents(db, site().id) } as never, 200) as never;
  });
  app.openapi(ROUTES.listGaugeReadings, async (c) => {
    const { gauge } = c.req.valid('param');
    if (!(await isGauge(db, site().id, gauge))) return problemAnswer(c, 404) as never;
    return c.json(await readingsOfGauge(db, site().id, gauge), 200) as never;
  });
}
