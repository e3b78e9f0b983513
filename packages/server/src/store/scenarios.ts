import type { StoredEntry } from '@evenfall/record';
import type { Kysely } from 'kysely';
import type { Tables } from '../database/schema.js';
import { readRows } from './rows.js';

/** The book of practice: no chart, ever. */
const BOOK = 'simulated';

type KeptScenario = Extract<StoredEntry, { kind: 'scenario' }>;

/** The newest entry of each scenario of the place that is still offered, by id. */
export async function listScenarios(
  db: Kysely<Tables>,
  site: string,
): Promise<{ readonly scenarios: readonly KeptScenario[]; readonly unreadable: number }> {
  const rows = await db
    .selectFrom('entry')
    .selectAll()
    .where('site', '=', site)
    .where('book', '=', BOOK)
    .where('kind', '=', 'scenario')
    .orderBy('recorded_at')
    .orderBy('id')
    .execute();
  const { entries, unreadable } = readRows(rows);
  const newest = new Map<string, KeptScenario>();
  for (const entry of entries) if (entry.kind === 'scenario') newest.set(entry.content.scenario.id, entry);
  const scenarios = [...newest.values()]
    .filter(({ content }) => !content.isRetired)
    .sort((a, b) => (a.content.scenario.id < b.content.scenario.id ? -1 : 1));
  return { scenarios, unreadable };
}
