import { type ImportedFile, ROUTES } from '@evenfall/api';
import { type Refusal, refusal } from '@evenfall/clinical';
import { bundleTable } from '@evenfall/exchange';
import { barredImport } from '@evenfall/record';
import type { OpenAPIHono } from '@hono/zod-openapi';
import type { Context } from 'hono';
import { within } from '../database/within.js';
import { bringFile, type FileBrought, type Whose } from '../importing/bringFile.js';
import { problemsOfFile } from '../importing/problemsOfFile.js';
import { listAgents } from '../store/agents.js';
import { readPerson } from '../store/persons.js';
import { problemAnswer } from './problems.js';
import type { World } from './world.js';

/** A file as it would be kept, or why none of it can be. */
type Outcome =
  | { readonly is: 'read'; readonly brought: FileBrought; readonly entries: readonly unknown[] }
  | { readonly is: 'refused'; readonly status: 403 | 422; readonly refusals: readonly Refusal[] };

/** Ends a transaction without keeping anything of it. */
class NotKept extends Error {
  readonly outcome: Outcome;
  constructor(outcome: Outcome) {
    super(outcome.is);
    this.outcome = outcome;
  }
}

/** The pressures of a bundle as a table, which a page then treats like any other; nothing of it is kept. */
export function seriesTableRoute(app: OpenAPIHono): void {
  app.openapi(ROUTES.seriesTable, (c) => {
    const { file, of } = c.req.valid('json');
    const table = bundleTable(file, of);
    if (table === null)
      return problemAnswer(c, 422, [refusal('/file', 'missing', 'fhir-bundle', null)]) as never;
    return c.json({ text: table.text }, 200) as never;
  });
}

/** A file brought into a chart, after the same file was asked about: both run the same checks, and one keeps. */
export function importRoutes(app: OpenAPIHono, world: World): void {
  app.openapi(ROUTES.importFile, async (c) => {
    const { book, person } = c.req.valid('param');
    const { file, agent, keep } = c.req.valid('json');
    const site = world.site().id;
    if ((await readPerson(world.db, { site, book, person })) === null) return problemAnswer(c, 404) as never;
    const wrong = await wrongAgent(c, world, agent);
    if (wrong !== null) return wrong as never;
    const outcome = await brought(c, world, file, { book, person, agent }, keep);
    if (outcome.is === 'refused') return problemAnswer(c, outcome.status, outcome.refusals) as never;
    const { format, added, already, passedOver, older, byOrder } = outcome.brought;
    const { refused, unclear } = outcome.brought;
    const answer = {
      format,
      kept: keep,
      added,
      already,
      entries: outcome.entries,
      refused: problemsOfFile(file, format, refused),
      passedOver,
      older,
      byOrder,
      unclear: problemsOfFile(file, format, unclear),
    };
    return c.json(answer as ImportedFile, keep && added > 0 ? 201 : 200) as never;
  });
}

/** Whoever is signed in brings a file in their own name; without accounts anybody who acts here. */
async function wrongAgent(c: Context, { db, site }: World, agent: string): Promise<Response | null> {
  const asker = c.get('asker');
  if (asker !== 'anybody')
    return agent === asker.agent.id
      ? null
      : problemAnswer(c, 403, [refusal('/agent', 'contradicts', 'agent-signed-in', agent)]);
  const known = (await listAgents(db, site().id)).some(({ id }) => id === agent);
  return known ? null : problemAnswer(c, 422, [refusal('/agent', 'unknown-id', 'agent-here', agent)]);
}

/** One transaction for the whole file: rolled back where it was only asked, and where the account may not bring it. */
async function brought(
  c: Context,
  world: World,
  file: string,
  whose: Whose & { readonly person: string },
  keep: boolean,
): Promise<Outcome> {
  const asker = c.get('asker');
  const where = { site: world.site().id, book: whose.book, person: whose.person };
  try {
    return await within(world.db, async (tx) => {
      const known = new Set((await readPerson(tx, where))?.entries.map(({ id }) => id));
      const read = await bringFile({ ...world, db: tx }, file, whose);
      if (!read.ok) throw new NotKept({ is: 'refused', status: 422, refusals: read.refusals.map(named) });
      const { added, ofRecord } = read.value;
      const barred =
        asker === 'anybody'
          ? []
          : barredImport(
              { ofRecord, reported: added - ofRecord },
              { agent: asker.agent.id, roles: asker.roles },
            );
      if (barred.length > 0) throw new NotKept({ is: 'refused', status: 403, refusals: barred });
      const after = (await readPerson(tx, where))?.entries ?? [];
      const outcome: Outcome = {
        is: 'read',
        brought: read.value,
        entries: after.filter(({ id }) => !known.has(id)),
      };
      if (!keep) throw new NotKept(outcome);
      return outcome;
    });
  } catch (error) {
    if (error instanceof NotKept) return error.outcome;
    throw error;
  }
}

/** Over HTTP the person stands in the address, and is no option. */
function named(one: Refusal): Refusal {
  return one.field === '--person' ? { ...one, field: '/person' } : one;
}
