import {
  type ChartedSeries,
  type SeriesReadingKept,
  type StoredEntry,
  saidAt,
  timeSaid,
} from '@evenfall/record';
import type { Words } from '@evenfall/words';
import { takenOutText } from '../text/takenOutText.js';
import type { Cell } from './csv.js';
import { READING_OF_SITTING } from './readingOfSitting.js';

type SeriesEntry = Extract<StoredEntry, { readonly kind: 'series' }>;

/** A reading of a series, as the row that it is written in: in which entry of it, and at which place from 1. */
export type ReadingOf = {
  readonly series: ChartedSeries;
  readonly entry: SeriesEntry;
  readonly place: number;
  readonly words: Words;
};

/** Every reading of an entry of a series. */
export function readingsOf(series: ChartedSeries, entry: SeriesEntry, words: Words): ReadingOf[] {
  return entry.content.readings.map((_, at) => ({ series, entry, place: at + 1, words }));
}

/**
 * Where a series was taken, and how far it is settled: nobody may take a reading of one for a reading of the clinic. One
 * entered in error says that alone.
 */
export function seriesStatus({ content, amended, isInError, isPreliminary }: ChartedSeries): string {
  if (isInError) return 'entered-in-error';
  const where = content.of === 'home' ? 'at-home' : 'over-24-hours';
  if (isPreliminary) return `${where}-preliminary`;
  return amended.current.some(({ amends }) => amends !== null) ? `${where}-amended` : where;
}

/** What stands under the headings of other values in the row of a reading. Pressures in mmHg. */
export const READING_CELLS: Readonly<Record<string, (of: ReadingOf) => Cell>> = {
  sign: () => 'pressure',
  status: ({ series }) => seriesStatus(series),
  measuredAt: fromReading(saidAt),
  zone: fromReading(({ at }) => at.zone),
  asEntered: fromReading(({ at }) => at.asEntered),
  byHandReason: (of) => decidedOf(of)?.reason ?? null,
  note: (of) => {
    const { note } = of.entry.content.readings[of.place - 1] as SeriesReadingKept;
    return [...takenOutText(decidedOf(of), of.words), ...(note === null ? [] : [note])].join(' ') || null;
  },
  systolic: fromReading(({ systolic }) => systolic),
  diastolic: fromReading(({ diastolic }) => diastolic),
  cuffSite: fromReading(({ site }) => site),
  side: fromReading(({ arm }) => arm),
};

/**
 * The columns that only readings of a series have. `series` is the entry that first said it, `pulse` is per minute;
 * `leftOut` says whether the mean is made without it, as it stands with what hands decided.
 */
export const READING_COLUMNS: readonly (readonly [heading: string, cell: (of: ReadingOf) => Cell])[] = [
  ['reading', ({ place }) => place],
  ['pulse', fromReading(({ pulse }) => pulse)],
  ['leftOut', (of) => droppedFrom(of).length > 0],
  [
    'leftOutWhy',
    (of) =>
      droppedFrom(of)
        .map(({ code }) => code)
        .join(' ') || null,
  ],
  ['asleep', fromReading(({ asleep }) => asleep)],
  ['irregularPulse', fromReading(({ irregular }) => irregular)],
  ['deviceNamed', fromReading(({ device }) => device)],
];

/** The same, of columns that came after others. */
export const LATER_READING_COLUMNS: typeof READING_COLUMNS = [
  ['startedByHand', fromReading(({ startedByHand }) => startedByHand)],
  [READING_OF_SITTING, fromReading((one) => (one.at.asEntered === null ? null : timeSaid(one).place))],
];

/** Headings that say the same of a reading as of its entry; those that are in neither list are empty in its row. */
export const SAME_FOR_READING: ReadonlySet<string> = new Set([
  ...(
    'schema notice person name birthDate number round entry standing amends reason reasonText writtenAt recordedAt ' +
    'agent role program rule protocolVersion pseudonym ageYears series seriesOf'
  ).split(' '),
  ...[...READING_COLUMNS, ...LATER_READING_COLUMNS].map(([heading]) => heading),
]);

function fromReading(cell: (reading: SeriesReadingKept) => Cell): (of: ReadingOf) => Cell {
  return ({ entry, place }) => cell(entry.content.readings[place - 1] as SeriesReadingKept);
}

/** Whether an entry is what stands of its series, so that what hands decided since is about it. */
function isStanding({ series, entry }: ReadingOf): boolean {
  return series.content === entry.content;
}

function droppedFrom(of: ReadingOf) {
  const { dropped } = isStanding(of) ? of.series.value : of.entry.content.value;
  return dropped.filter(({ index }) => index === of.place);
}

function decidedOf(of: ReadingOf) {
  return isStanding(of) ? of.series.decided.find(({ index }) => index === of.place) : undefined;
}
