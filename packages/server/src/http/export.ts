import {
  broughtTemplate,
  chartBundle,
  chartCsv,
  type Exported,
  noticesOf,
  type ProtocolKept,
  roundText,
  seriesTexts,
  type TemplateId,
  type TextOf,
} from '@evenfall/exchange';
import {
  chartSeries,
  NOTHING_CHOSEN,
  placeEquipment,
  projectChart,
  type StoredEntry,
} from '@evenfall/record';
import { wordsFor } from '@evenfall/words';
import type { Context } from 'hono';
import { gaugeFrames, listEquipment } from '../store/equipment.js';
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
  const { type, ending, text, isEmpty } = await written(found, asked, world);
  return c.body(text, 200, {
    'content-type': type,
    // How many entries this program cannot read, which are in no row.
    'evenfall-unreadable': String(unreadable),
    // A table of nothing but its headings, or no text: whoever asked must hear it.
    'evenfall-empty': String(isEmpty),
    'content-disposition': `attachment; filename="${name}.${ending}"`,
  });
}

async function written(
  { id, book, identity, classIdentity, entries, agents }: Found,
  { as, template, identity: who, snomed }: AskedExport,
  world: World,
): Promise<{ type: string; ending: string; text: string; isEmpty: boolean }> {
  const rulesOf = await keptProtocols(world.db, world.site().id);
  const { gauges: gaugesNow } = placeEquipment(
    (await listEquipment(world.db, world.site().id)).entries,
    world.now().toISOString().slice(0, 'YYYY-MM-DD'.length),
    NOTHING_CHOSEN.equipmentRules,
  );
  const exported = {
    book,
    invented: world.site().invented,
    person: id,
    identity: who === 'with' ? identity : null,
    classIdentity: who === 'with' ? classIdentity : null,
    chart: projectChart(entries),
    series: chartSeries(entries, rulesOf),
    agents,
    gaugesNow,
    words: wordsFor('en'),
  };
  if (as === 'csv') {
    const text = chartCsv(exported);
    return {
      type: 'text/csv; charset=utf-8; header=present',
      ending: 'csv',
      text,
      isEmpty: isHeadingAlone(text),
    };
  }
  if (as === 'text') {
    const text = textOf(exported, { rulesOf, gauges: gaugesNow, now: world.now().toISOString() }, template);
    return { type: 'text/plain; charset=utf-8', ending: 'txt', text, isEmpty: text === '' };
  }
  const asKept = await framesOf(world.db, { site: world.site().id, book, person: id });
  const gauges = await gaugeFrames(world.db, world.site().id, gaugesIn(entries));
  const bundle = chartBundle({
    ...exported,
    entries,
    asKept,
    gauges,
    // A check of a gauge names a version that no entry of this person may name.
    protocols: await protocolsNamed(world, JSON.stringify([asKept, gauges])),
    rulesOf,
    madeAt: world.now().toISOString(),
    words: wordsFor('en'),
    isSnomed: snomed === 'with',
  });
  const text = `${JSON.stringify(bundle)}\n`;
  return { type: 'application/fhir+json; charset=utf-8', ending: 'fhir.json', text, isEmpty: false };
}

/** Whether a table has its headings and no row: none of them has a line break in it. */
function isHeadingAlone(text: string): boolean {
  return text.indexOf('\r\n') >= text.length - '\r\n'.length;
}

/** The gauges that readings were taken with. */
function gaugesIn(entries: readonly StoredEntry[]): ReadonlySet<string> {
  return new Set(entries.flatMap((one) => (one.kind === 'run' ? (one.content.evidence.gauge ?? []) : [])));
}

/** The newest signed round in plain text and each series that stands below it; nothing where there is neither. */
function textOf(
  of: Exported,
  under: Pick<TextOf, 'rulesOf' | 'gauges' | 'now'>,
  template: TemplateId,
): string {
  const words = wordsFor('en');
  const notices = noticesOf(of);
  const round = of.chart.rounds.find(({ signed, isInError }) => signed !== null && !isInError);
  const { identity, agents } = of;
  const about = {
    rounds: of.chart.rounds,
    identity,
    agents,
    ...under,
    words,
    dayText: (date: string) => date,
  };
  const ofRound = round === undefined ? [] : [roundOf({ ...about, round }, template, notices)];
  const ofSeries = seriesTexts(of.series, words, about.dayText, notices);
  // A round says who it is where its template asks for it.
  const who = round === undefined && ofSeries.length > 0 ? whoText(identity) : [];
  const all = [...who, ...ofRound, ...ofSeries];
  return all.length === 0 ? '' : `${all.join('\n\n')}\n`;
}

/** Who it is, in one line; none where that is not asked for. */
function whoText(identity: Exported['identity']): string[] {
  if (identity === null) return [];
  const { name, birthDate, number } = identity;
  return [[name, birthDate, number].filter((part) => part !== null).join(', ')];
}

function roundOf(about: TextOf, template: TemplateId, notices: readonly string[]): string {
  const made = roundText(broughtTemplate(template, about.words), about, notices);
  if (!made.ok) throw new Error(`a template of our own is wrong: ${JSON.stringify(made.refusals)}`);
  return made.value;
}

/** The protocol versions that entries name, each once: a version is a hash and stands nowhere by chance. */
async function protocolsNamed({ db, site }: World, entries: string): Promise<ProtocolKept[]> {
  const kept = await listProtocols(db, site().id);
  return kept.filter(({ version }) => entries.includes(version));
}
