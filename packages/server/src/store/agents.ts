import type { Agent } from '@evenfall/record';
import type { Kysely } from 'kysely';
import type { Tables } from '../database/schema.js';

/** Who acts here, by name. */
export async function listAgents(db: Kysely<Tables>, site: string): Promise<Agent[]> {
  return await db
    .selectFrom('agent')
    .select(['id', 'name'])
    .where('site', '=', site)
    .orderBy('name')
    .orderBy('id')
    .execute();
}

/** Keeps an agent. The same id with the same name is `already`; with another name it is a conflict. */
export async function addAgent(
  db: Kysely<Tables>,
  site: string,
  agent: Agent,
): Promise<'taken' | 'already' | 'conflict'> {
  const inserted = await db
    .insertInto('agent')
    .values({ site, id: agent.id, name: agent.name })
    .onConflict((conflict) => conflict.columns(['site', 'id']).doNothing())
    .returning('id')
    .executeTakeFirst();
  if (inserted !== undefined) return 'taken';
  const kept = await db
    .selectFrom('agent')
    .select('name')
    .where('site', '=', site)
    .where('id', '=', agent.id)
    .executeTakeFirstOrThrow();
  return kept.name === agent.name ? 'already' : 'conflict';
}
