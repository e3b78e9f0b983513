import { noticesOf } from '@evenfall/exchange';
import {
  type ChartedSeries,
  chartDiaries,
  chartSeries,
  NOTHING_CHOSEN,
  officeNear,
  officeNotTaken,
  projectChart,
} from '@evenfall/record';
import { loadWords, type Manner, plainLocale, USUAL_MANNER } from '@evenfall/words';
import type { Context } from 'hono';
import type { readPerson } from '../store/persons.js';
import { keptProtocols } from '../store/protocols.js';
import { chartedBeside } from './chartedBeside.js';
import { chartedPage } from './chartedPage.js';
import type { World } from './world.js';

type Found = NonNullable<Awaited<ReturnType<typeof readPerson>>>;

/** How whoever asks writes, on which paper, and whether the stiffness index of a recording is asked for. */
export type AskedSheet = {
  readonly paper: 'a4' | 'letter';
  readonly locale: string;
  readonly dates?: Manner['dates'] | undefined;
  readonly hours: '12' | '24';
  readonly stiffness: 'with' | 'without';
  /** Another series that the first is put beside; then the page is of both. */
  readonly beside?: string | undefined;
};

/**
 * The page of a series as a PDF; null where the person has no such series. Who the person is stands on it; its name holds the
 * notices of the book, the kind, its first day and the end of its id, which tells it from another one of that day, and nothing
 * of the person. One entered in error counts for nothing and is beside no other.
 */
export async function seriesPdf(
  c: Context,
  { book, identity, entries, agents }: Found,
  series: string,
  { paper, locale, dates = null, hours, stiffness, beside }: AskedSheet,
  world: World,
): Promise<Response | null> {
  const rulesOf = await keptProtocols(world.db, world.site().id);
  const all = chartSeries(entries, rulesOf);
  const charted = all.find(({ id }) => id === series);
  const other = all.find(({ id }) => id === beside && id !== series);
  if (charted === undefined) return null;
  if (beside !== undefined && (other === undefined || other.isInError || charted.isInError)) return null;
  // Digits of other scripts are in no font of the page.
  const words = await loadWords(plainLocale(locale), {
    ...USUAL_MANNER,
    dates,
    hours: hours === '12' ? 12 : 24,
  });
  const chart = projectChart(entries);
  const notices = noticesOf({ book, invented: world.site().invented });
  const now = world.now();
  const about = (one: ChartedSeries) => ({
    identity,
    person: one.amended.original.person ?? '',
    rules: rulesOf(one.content.computedBy.presetVersion) ?? NOTHING_CHOSEN,
    office: officeNear(chart, rulesOf, one),
    diary: chartDiaries(entries).find(({ series }) => series.includes(one.id)) ?? null,
    officeLeft: officeNotTaken(chart, rulesOf, one),
    asksStiffness: stiffness === 'with',
    agents,
    isInvented: world.site().invented,
    madeAt: `${now.toISOString().slice(0, 'YYYY-MM-DDTHH:MM'.length).replace('T', ' ')} UTC`,
    program: world.program,
  });
  const page =
    other === undefined
      ? chartedPage(charted, about(charted), words)
      : chartedBeside(charted, other, about, words);
  // What writes PDF files is loaded only where one is asked for.
  const { pagePdf } = await import('@evenfall/report/pdf');
  const title = [...notices.filter((one) => one !== 'INVENTED'), page.title].join(': ');
  const kind = other !== undefined ? 'beside' : charted.content.of === 'home' ? 'home' : '24h';
  const ids = [charted, ...(other === undefined ? [] : [other])].map(({ id }) => id.slice(-NAMED_BY));
  const name = ['evenfall', ...notices, kind, charted.from, ...ids].join('-');
  const bytes = await pagePdf({ ...page, title }, { size: paper, createdAt: now });
  return c.body(new Uint8Array(bytes), 200, {
    'content-type': 'application/pdf',
    'content-disposition': `attachment; filename="${name}.pdf"`,
  });
}

/** How many signs of an id stand in the name of a file: its end is of chance, its beginning the time that others share. */
const NAMED_BY = 8;
