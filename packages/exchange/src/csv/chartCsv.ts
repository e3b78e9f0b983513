import {
  type Agent,
  type AmendedEntry,
  type Book,
  type Chart,
  type ChartedSeries,
  type ChartRound,
  type ClassIdentity,
  type CountContent,
  chartedPerMinute,
  type Identity,
  type ReportedContent,
  type RoundContent,
  type StoredEntry,
  signOf,
  whySaid,
} from '@evenfall/record';
import type { Words } from '@evenfall/words';
import { noticesOf } from '../notices.js';
import { gaugeTexts, type ValueOf } from '../text/valueText.js';
import { type Cell, csv } from './csv.js';
import { PRESSURE_COLUMNS } from './pressureColumns.js';
import {
  LATER_READING_COLUMNS,
  READING_CELLS,
  READING_COLUMNS,
  type ReadingOf,
  readingsOf,
  SAME_FOR_READING,
  seriesStatus,
} from './readingColumns.js';
import { numberSaid, posedIn, saidIn } from './said.js';
import { CSV_SCHEMA_NUMBER } from './schemaNumber.js';
import { SIGN_COLUMNS, TYPED_COLUMNS } from './signColumns.js';

const CSV_SCHEMA = `evenfall-chart-${CSV_SCHEMA_NUMBER}`;

/** What an export needs: the chart, who the person is (null once erased; in the class book a pseudonym) and who acted. */
export type Exported = {
  readonly book: Book;
  readonly invented: boolean;
  readonly person: string;
  readonly identity: Identity | null;
  readonly classIdentity: ClassIdentity | null;
  readonly chart: Chart;
  /** What was taken at home and over 24 hours, newest first. */
  readonly series: readonly ChartedSeries[];
  readonly agents: readonly Agent[];
  /** The gauges of the place as they stand, so that what was read from one that failed since says so. */
  readonly gaugesNow: ValueOf['gauges'];
  /** In whose language a note says what hands did. */
  readonly words: Words;
};

type Row = {
  readonly from: Exported;
  readonly entry: StoredEntry;
  readonly of: AmendedEntry;
  /** Null for a value from elsewhere and for a reading of a series, which are in no round. */
  readonly round: ChartRound | null;
  /** The sign that a signing says was not done; null for a row of a value. */
  readonly notDone: NotDone | null;
  /** The series that the row is of, and the reading; null for any other, and the reading for a mark of error. */
  readonly series: ChartedSeries | null;
  readonly reading: ReadingOf | null;
};

const OF_NOTHING = { round: null, notDone: null, series: null, reading: null } as const;

type NotDone = Extract<RoundContent['signs'][number], { notDone: unknown }>;

const COLUMNS: readonly (readonly [heading: string, cell: (row: Row) => Cell])[] = [
  ['schema', () => CSV_SCHEMA],
  ['notice', ({ from }) => noticesOf(from).join(' ') || null],
  ['person', ({ from }) => from.person],
  ['name', ({ from }) => from.identity?.name ?? null],
  ['birthDate', ({ from }) => from.identity?.birthDate ?? null],
  ['number', ({ from }) => textAlways(from.identity?.number ?? null)],
  ['round', ({ entry }) => entry.round],
  ['entry', ({ entry }) => entry.id],
  ['sign', ({ entry, notDone }) => notDone?.sign ?? saidIn(entry)?.of ?? signOf(entry)],
  ['perMinute', ({ entry }) => numberSaid(entry, 'perMinute') ?? chartedPerMinute(entry)],
  ['computedPerMinute', ({ entry }) => chartedValue(entry)?.perMinute ?? null],
  ['lowPerMinute', ({ entry }) => rangeOf(entry)?.lowPerMinute ?? null],
  ['highPerMinute', ({ entry }) => rangeOf(entry)?.highPerMinute ?? null],
  ['lowIncluded', ({ entry }) => countRangeOf(entry)?.lowIncluded ?? null],
  ['highIncluded', ({ entry }) => countRangeOf(entry)?.highIncluded ?? null],
  ['n', ({ entry }) => countedN(entry)],
  [
    'windowSeconds',
    ({ entry }) =>
      entry.kind === 'count' && isWindowKnown(entry.content)
        ? entry.content.evidence.count.windowSeconds
        : null,
  ],
  [
    'clock',
    ({ entry }) =>
      entry.kind === 'count' && isCounted(entry.content) ? entry.content.evidence.count.clock : null,
  ],
  [
    'first',
    ({ entry }) =>
      entry.kind === 'count' && isCounted(entry.content) ? entry.content.evidence.count.first : null,
  ],
  ['taps', ({ entry }) => (entry.kind === 'taps' ? entry.content.evidence.taps.seconds.length : null)],
  ['rhythm', ({ entry }) => (entry.kind === 'taps' ? entry.content.value.rhythm : null)],
  ['rhythmFelt', ({ entry }) => rhythmFeltOf(entry)],
  ['flags', ({ entry }) => (saidOf(entry)?.flags ?? []).map(({ code }) => code).join(' ') || null],
  ['why', ({ entry }) => whyOf(entry)],
  [
    'status',
    ({ round, of, series }) =>
      series !== null ? seriesStatus(series) : round === null ? 'from-elsewhere' : statusOf(round, of),
  ],
  ['standing', ({ entry, of }) => standingOf(entry, of)],
  ['amends', ({ entry }) => entry.amends?.entry ?? null],
  ['reason', ({ entry }) => entry.amends?.reason ?? null],
  ['reasonText', ({ entry }) => entry.amends?.text ?? null],
  ['byHandReason', ({ entry }) => overrideOf(entry)?.reason ?? null],
  ['measuredAt', ({ entry }) => entry.measuredAt.at],
  ['zone', ({ entry }) => entry.measuredAt.zone],
  ['asEntered', ({ entry }) => entry.measuredAt.asEntered],
  ['writtenAt', ({ entry }) => entry.writtenAt],
  ['recordedAt', ({ entry }) => entry.recordedAt],
  ['agent', ({ from, entry }) => from.agents.find(({ id }) => id === entry.agent)?.name ?? entry.agent],
  ['role', ({ entry }) => entry.role],
  ['program', ({ entry }) => computedBy(entry)?.program ?? null],
  ['rule', ({ entry }) => computedBy(entry)?.rule ?? null],
  ['protocolVersion', ({ entry }) => computedBy(entry)?.presetVersion ?? null],
  ['note', ({ entry }) => noteOf(entry)],
  ['notDone', ({ notDone }) => notDone?.notDone.reason ?? null],
  ['notDoneText', ({ notDone }) => notDone?.notDone.text ?? null],
  ['roundNote', ({ round }) => (round === null ? null : roundNoteOf(round))],
  ...PRESSURE_COLUMNS,
  ...SIGN_COLUMNS,
  ['pseudonym', ({ from }) => from.classIdentity?.pseudonym ?? null],
  ['ageYears', ({ from }) => from.classIdentity?.ageYears ?? null],
  ['saidBy', fromElsewhere(({ by }) => by)],
  ['saidHow', fromElsewhere(({ method }) => method)],
  ['saidWhere', fromElsewhere(({ site }) => site)],
  ['sentAs', fromElsewhere(({ asSent }) => asSent)],
  ['meanUntil', fromElsewhere(({ until }) => until)],
  ['source', fromElsewhere(({ source }) => source.id)],
  ...TYPED_COLUMNS,
  ['unwellUpright', ({ entry }) => posedIn(entry)?.unwellUpright ?? null],
  ['series', ({ series }) => series?.id ?? null],
  ['seriesOf', ({ series }) => series?.content.of ?? null],
  ...READING_COLUMNS.map(ofReading),
  ['lyingMinutes', ({ entry }) => posedIn(entry)?.lyingMinutes ?? null],
  ...LATER_READING_COLUMNS.map(ofReading),
  ['gaugeDoubt', ({ from, entry }) => gaugeDoubtOf(from, entry)],
];

function ofReading([heading, cell]: (typeof READING_COLUMNS)[number]): readonly [string, (row: Row) => Cell] {
  return [heading, ({ reading }) => (reading === null ? null : cell(reading))];
}

/**
 * A person's chart as CSV, a row for every value that was ever charted, for every sign that a signing says was not
 * done and for every reading of a series: amended ones and those entered in error stand there too, and say so. Values
 * from elsewhere come last. Rates per minute, unrounded.
 */
export function chartCsv(from: Exported): string {
  const rows = [
    ...[...from.chart.rounds]
      .reverse()
      .flatMap((round) => [...valueRows(from, round), ...signingRows(from, round)]),
    ...seriesRows(from),
    ...elsewhereRows(from),
  ];
  return csv(
    COLUMNS.map(([heading]) => heading),
    rows.map((row) => COLUMNS.map((column) => cellOf(row, column))),
  );
}

function cellOf(row: Row, [heading, cell]: (typeof COLUMNS)[number]): Cell {
  if (row.reading === null || SAME_FOR_READING.has(heading)) return cell(row);
  return READING_CELLS[heading]?.(row.reading) ?? null;
}

/** A number that names somebody is no quantity: a spreadsheet would take zeros off it, or write it in powers of ten. */
function textAlways(number: string | null): Cell {
  return number === null ? null : `'${number}`;
}

function valueRows(from: Exported, round: ChartRound): Row[] {
  return round.values.flatMap((of) => of.story.map((entry) => ({ ...OF_NOTHING, from, entry, of, round })));
}

/** Every reading of every entry of a series, also of those that were replaced. */
function seriesRows(from: Exported): Row[] {
  return from.series.toReversed().flatMap((series) =>
    series.amended.story.flatMap((entry): Row[] => {
      const row = { ...OF_NOTHING, from, entry, of: series.amended, series };
      if (entry.kind !== 'series') return [row];
      return readingsOf(series, entry, from.words).map((reading) => ({ ...row, reading }));
    }),
  );
}

function elsewhereRows(from: Exported): Row[] {
  return from.chart.reported
    .toReversed()
    .flatMap((of) => of.story.map((entry) => ({ ...OF_NOTHING, from, entry, of })));
}

/** A column of what only a value from elsewhere has. */
function fromElsewhere(cell: (content: ReportedContent) => Cell): (row: Row) => Cell {
  return ({ entry }) => (entry.kind === 'reported' ? cell(entry.content) : null);
}

/** What signings say was not done, and that a signing was entered in error. */
function signingRows(from: Exported, round: ChartRound): Row[] {
  return signingsOf(round).flatMap((of) =>
    of.story.flatMap((entry): Row[] => {
      if (entry.kind !== 'round') return [{ ...OF_NOTHING, from, entry, of, round }];
      const notDone = entry.content.signs.filter((sign): sign is NotDone => 'notDone' in sign);
      return notDone.map((sign) => ({ ...OF_NOTHING, from, entry, of, round, notDone: sign }));
    }),
  );
}

function signingsOf({ signed, signedAgain }: ChartRound): readonly AmendedEntry[] {
  return signed === null ? [] : [signed, ...signedAgain];
}

/** The note of the round: what its standing signings say, else what they said. */
function roundNoteOf(round: ChartRound): string | null {
  const signings = signingsOf(round);
  const standing = signings.flatMap(({ current }) => current);
  const notes = (standing.length > 0 ? standing : signings.map(({ original }) => original)).flatMap(
    (entry) => (entry.kind === 'round' && entry.content.note !== null ? [entry.content.note] : []),
  );
  return notes.join('\n') || null;
}

/** How one entry of a story stands: the newest says what the value is, the others that they were replaced. */
function standingOf(entry: StoredEntry, of: AmendedEntry): string {
  const amending = (one: StoredEntry) => of.story.filter(({ amends }) => amends?.entry === one.id);
  const isOpenMark = (one: StoredEntry) => one.kind === 'entered-in-error' && amending(one).length === 0;
  if (isOpenMark(entry)) return 'says-entered-in-error';
  if (of.current.includes(entry))
    return of.standing === 'contested' ? 'contested' : entry === of.original ? 'as-signed' : 'amended';
  return amending(entry).every(isOpenMark) ? 'entered-in-error' : 'replaced';
}

/** What somebody wrote of a value. */
function noteOf(entry: StoredEntry): string | null {
  return entry.kind !== 'round' && 'note' in entry.content ? entry.content.note : null;
}

/** Of a reading from a gauge that failed since that it is in doubt, or that nobody here knows: of today, and no note of anybody. */
function gaugeDoubtOf({ gaugesNow, words }: Exported, entry: StoredEntry): string | null {
  return entry.kind === 'run' ? gaugeTexts(entry, gaugesNow, words).join(' ') || null : null;
}

function countedN(entry: StoredEntry): number | null {
  if (entry.kind !== 'count') return null;
  const { count } = entry.content.evidence;
  return 'n' in count && isCounted(entry.content) ? count.n : null;
}

/** Whether somebody counted a number: of a rate that was typed, what its window would hold is no count. */
function isCounted({ evidence }: CountContent): boolean {
  return evidence.rateTyped === null;
}

function isWindowKnown({ evidence }: CountContent): boolean {
  return evidence.rateTyped !== 'window-presumed';
}

function chartedValue(entry: StoredEntry) {
  return entry.kind === 'count' || entry.kind === 'taps' ? entry.content.value : null;
}

/** The value with its flags and reasons, whatever sign it is of. */
function saidOf(entry: StoredEntry) {
  if (entry.kind === 'round') return null;
  return 'computedBy' in entry.content && 'value' in entry.content ? entry.content.value : null;
}

function whyOf(entry: StoredEntry): string | null {
  const value = saidOf(entry);
  return value === null
    ? null
    : whySaid(value)
        .map(({ code }) => code)
        .join(' ') || null;
}

/** A rate set by hand has no range: the one there is belongs to what was computed. */
function rangeOf(entry: StoredEntry) {
  return overrideOf(entry) === null ? chartedValue(entry) : null;
}

function countRangeOf(entry: StoredEntry) {
  return entry.kind === 'count' && entry.content.override === null ? entry.content.value : null;
}

/** Whether somebody signed the value, and whether it is a learner's that nobody has countersigned. */
function statusOf(round: ChartRound, { original }: AmendedEntry): string {
  if (round.unsigned.includes(original.id)) return 'unsigned';
  if (round.isInError) return 'entered-in-error';
  return round.isPreliminary ? 'preliminary' : 'final';
}

function rhythmFeltOf(entry: StoredEntry) {
  if (entry.kind !== 'count' && entry.kind !== 'taps' && entry.kind !== 'run') return null;
  return entry.content.evidence.circumstances.rhythmFelt;
}

function overrideOf(entry: StoredEntry) {
  return 'override' in entry.content ? entry.content.override : null;
}

function computedBy(entry: StoredEntry) {
  return 'computedBy' in entry.content ? entry.content.computedBy : null;
}
