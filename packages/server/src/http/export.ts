import {
  broughtTemplate,
  chartBundle,
  chartCsv,
  type Exported,
  noticesOf,
  type ProtocolKept,
  roundText,
  type TemplateId,
} from '@evenfall/exchange';
import { projectChart, type StoredEntry } from '@evenfall/record';
import { wordsFor } from '@evenfall/words';
import type { Context } from 'hono';
import { gaugeFrames } from '../store/equipment.js';
import { framesOf, type readPerson } from '../store/persons.js';
import { keptProtocols, listProtocols } from '../store/protocols.js';
import type { World } from './world.js';

type Found = NonNullable<Awaited<ReturnType<typeof readPerson>>>;

/** What was asked for: the form, and whether who the person is goes with it. */
export type AskedExport = {
  readonly as: 'csv' | 'fhir' | 'text';
  /** By which of the templates that Evenfall brings a text is made. */
  readonly template: TemplateId;
  readonly identity: 'with' | 'without';
  readonly snomed: 'with' | 'without';
};

/**
 * A person's chart as a file: a table, or a FHIR bundle that another Evenfall reads as the same record. Its name holds
 * the person's id, never who they are, and the notice of the book: a chart without values has no row that could say it.
 */
export async function exportAnswer(
  c: Context,
  found: Found,
  asked: AskedExport,
  world: World,
): Promise<Response> {
  const { id, book, unreadable } = found;
  const { invented } = world.site();
  const name = ['evenfall', ...noticesOf({ book, invented }), id].join('-');
  const [type, ending, text] = await written(found, asked, world);
  return c.body(text, 200, {
    'content-type': type,
    // How many entries this program cannot read, which are in no row.
    'evenfall-unreadable': String(unreadable),
    'content-disposition': `attachment; filename="${name}.${ending}"`,
  });
}

async function written(
  { id, book, identity, classIdentity, entries, agents }: Found,
  { as, template, identity: who, snomed }: AskedExport,
  world: World,
): Promise<readonly [type: string, ending: string, text: string]> {
  const exported = {
    book,
    invented: world.site().invented,
    person: id,
    identity: who === 'with' ? identity : null,
    classIdentity: who === 'with' ? classIdentity : null,
    chart: projectChart(entries),
    agents,
  };
  if (as === 'csv') return ['text/csv; charset=utf-8; header=present', 'csv', chartCsv(exported)];
  if (as === 'text') return ['text/plain; charset=utf-8', 'txt', await textOf(world, exported, template)];
  const asKept = await framesOf(world.db, { site: world.site().id, book, person: id });
  const gauges = await gaugeFrames(world.db, world.site().id, gaugesIn(entries));
  const bundle = chartBundle({
    ...exported,
    entries,
    asKept,
    gauges,
    // A check of a gauge names a version that no entry of this person may name.
    protocols: await protocolsNamed(world, JSON.stringify([asKept, gauges])),
    madeAt: world.now().toISOString(),
    words: wordsFor('en'),
    isSnomed: snomed === 'with',
  });
  return ['application/fhir+json; charset=utf-8', 'fhir.json', `${JSON.stringify(bundle)}\n`];
}

/** The gauges that readings were taken with. */
function gaugesIn(entries: readonly StoredEntry[]): ReadonlySet<string> {
  return new Set(entries.flatMap((one) => (one.kind === 'run' ? (one.content.evidence.gauge ?? []) : [])));
}

/** The newest signed round in plain text; nothing where there is none. */
async function textOf(world: World, of: Exported, template: TemplateId): Promise<string> {
  const { db, site } = world;
  const words = wordsFor('en');
  const round = of.chart.rounds.find(({ signed, isInError }) => signed !== null && !isInError);
  if (round === undefined) return '';
  const rulesOf = await keptProtocols(db, site().id);
  const { identity, agents } = of;
  const about = { round, identity, agents, rulesOf, words, dayText: (date: string) => date };
  const made = roundText(broughtTemplate(template, words), about, noticesOf(of));
  if (!made.ok) throw new Error(`a template of our own is wrong: ${JSON.stringify(made.refusals)}`);
  return `${made.value}\n`;
}

/** The protocol versions that entries name, each once: a version is a hash and stands nowhere by chance. */
async function protocolsNamed({ db, site }: World, entries: string): Promise<ProtocolKept[]> {
  const kept = await listProtocols(db, site().id);
  return kept.filter(({ version }) => entries.includes(version));
}
