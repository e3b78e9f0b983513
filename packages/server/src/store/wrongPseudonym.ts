import { type Refusal, refusal } from '@evenfall/clinical';
import type { ClassIdentity } from '@evenfall/record';
import { type Kysely, sql } from 'kysely';
import type { Tables } from '../database/schema.js';

/**
 * What is wrong with a pseudonym of a class session: it is the name of somebody who acts here, and so would say whose
 * arm it is, or somebody else of the session has it, and readings would go to the wrong one. Case is no difference.
 */
export async function wrongPseudonym(
  db: Kysely<Tables>,
  site: string,
  session: string,
  person: string,
  { pseudonym }: ClassIdentity,
): Promise<Refusal[]> {
  const wanted = pseudonym.toLowerCase();
  const agents = await db.selectFrom('agent').select('name').where('site', '=', site).execute();
  if (agents.some(({ name }) => name.trim().toLowerCase() === wanted))
    return [refusal('/identity/pseudonym', 'contradicts', 'pseudonym-not-name', pseudonym)];
  const others = await db
    .selectFrom('entry')
    .innerJoin('identity', (join) =>
      join
        .onRef('identity.site', '=', 'entry.site')
        .onRef('identity.book', '=', 'entry.book')
        .onRef('identity.person', '=', 'entry.person'),
    )
    .select(sql<string>`identity.content ->> 'pseudonym'`.as('pseudonym'))
    .distinct()
    .where('entry.site', '=', site)
    .where('entry.book', '=', 'class')
    .where('entry.session', '=', session)
    .where('entry.person', '<>', person)
    .execute();
  return others.some((other) => other.pseudonym.toLowerCase() === wanted)
    ? [refusal('/identity/pseudonym', 'repeated', 'new-pseudonym', pseudonym)]
    : [];
}
