import type { AgentHere } from '@evenfall/api';
import { type AccountRole, type Agent, standingByRoles } from '@evenfall/record';
import { type Kysely, sql } from 'kysely';
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

/**
 * Who acts here, by name, and who of them is known to be learning: by their account, or, of somebody without one, by what they
 * signed last.
 */
export async function listAgentsHere(db: Kysely<Tables>, site: string): Promise<AgentHere[]> {
  const { rows } = await sql<Agent & { roles: AccountRole[] | null; status: string | null }>`
    select agent.id, agent.name, account.roles, signed.status
    from agent
    left join account on account.site = agent.site and account.agent = agent.id
    left join lateral (
      select entry.content ->> 'status' as status from entry
      where entry.site = agent.site and entry.agent = agent.id
        and entry.kind in ('round', 'series') and entry.amends is null
      order by entry.recorded_at desc limit 1
    ) as signed on true
    where agent.site = ${site}
    order by agent.name, agent.id`.execute(db);
  return rows.map(({ id, name, roles, status }) => ({
    ...{ id, name },
    isLearning: roles === null ? status === 'preliminary' : standingByRoles(roles) === 'learner',
  }));
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
