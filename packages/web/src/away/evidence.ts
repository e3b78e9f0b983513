import type { EmergencyFeature, RoundFacts } from '@evenfall/clinical';
import { type ReadSeries, type SeriesFlag, sideOf } from '@evenfall/exchange';
import {
  ABOUT,
  LONGEST_NOTE,
  type RefusedSeriesRow,
  type SeriesEvidence,
  type SeriesReadingKept,
} from '@evenfall/record';
import { stampAt } from '../ports/stampAt.js';
import type { Intake } from './intake.js';
import { type GridTable, sittingTime, type TextOf } from './weekGrid.js';

const MINUTE_MS = 60_000;
const DAY_MINUTES = 1440;
const LONGEST_LINE = 1000;
/** As long as is kept of what a reading was taken with. */
export const LONGEST_DEVICE = 200;

export type Beside = Pick<
  SeriesEvidence,
  'status' | 'diary' | 'asleep' | 'nap' | 'scheduled' | 'treated' | 'note'
> & {
  readonly features: readonly EmergencyFeature[] | null;
  /** On which arm and with what all was taken, as somebody said it once; a reading that names its own keeps that. */
  readonly arm: SeriesReadingKept['arm'];
  readonly device: string | null;
  readonly facts: RoundFacts;
};

/** What is kept of an intake that is read: every row of it, as a reading or as one that was refused. */
export function evidenceOf(
  { of, way, read, table, lines, mended }: Intake & { readonly read: ReadSeries },
  text: TextOf,
  beside: Beside,
): SeriesEvidence {
  const { features, facts, arm, device, note, ...rest } = beside;
  const besides = new Map(read.beside.map((one) => [one.index, one]));
  const clocks = new Map(
    read.flags.flatMap(({ code, lines: of }) => {
      const clock = CLOCKS[code];
      return clock === undefined ? [] : of.map((line) => [line, clock] as const);
    }),
  );
  const readings = read.readings.map((one): SeriesReadingKept => {
    const line = read.lines[one.index - 1] ?? 1;
    const row = table?.rowOfLine.get(line);
    const localMinutes = one.localDay * DAY_MINUTES + one.minuteOfDay;
    const offset = localMinutes - Math.floor(one.atMs / MINUTE_MS);
    const time = row === undefined ? null : sittingTime(row, text);
    const at = stampAt(one.atMs, offset, read.zone ?? 'UTC');
    const other = besides.get(one.index);
    return {
      at: time === null ? at : { ...at, asEntered: time.isAbout ? `${ABOUT}${time.at}` : time.at },
      systolic: one.systolic,
      diastolic: one.diastolic,
      pulse: one.pulse,
      asleep: one.asleep,
      part: one.part,
      site: one.site,
      // A cell that cannot be read may name the other arm.
      arm: other === undefined || other.arm === null ? arm : sideOf(other.arm),
      note: other?.note?.slice(0, LONGEST_NOTE) ?? null,
      device: (other?.device ?? device)?.slice(0, LONGEST_DEVICE) ?? null,
      line,
      how: way,
      irregular: other?.irregular ?? null,
      clock: clocks.get(line) ?? null,
      mended: mended.has(line) ? (lines[line - 1]?.slice(0, LONGEST_LINE) ?? null) : null,
      startedByHand: one.startedByHand ?? null,
    };
  });
  const refused = read.refused.map(
    ({ line, problems, systolic, diastolic }): RefusedSeriesRow => ({
      line,
      got: lines[line - 1]?.slice(0, LONGEST_LINE) ?? null,
      code: problems[0]?.code ?? 'missing',
      systolic: finite(systolic),
      diastolic: finite(diastolic),
    }),
  );
  return {
    of,
    ...rest,
    note: noteOf(note, table?.notesAlone ?? []),
    readings,
    refused,
    features: features === null ? null : [...features],
    facts,
  } as SeriesEvidence;
}

/** The note of a series, with what stands beside days that have no reading: nothing that was written is lost. */
function noteOf(note: string | null, alone: GridTable['notesAlone']): string | null {
  const all = [...(note === null ? [] : [note]), ...alone.map((one) => `${one.date}: ${one.note}`)];
  return all.length === 0 ? null : all.join('\n');
}

/** The lines whose note is longer than is kept of it. */
export function linesOfLongNotes({ beside, lines }: Pick<ReadSeries, 'beside' | 'lines'>): number[] {
  return beside.flatMap(({ note, index }) =>
    (note?.length ?? 0) > LONGEST_NOTE ? [lines[index - 1] ?? 1] : [],
  );
}

/** The lines that say something of the arm which is not understood: their readings are kept with no arm named. */
export function linesOfUnreadArms({ beside, lines }: Pick<ReadSeries, 'beside' | 'lines'>): number[] {
  return beside.flatMap(({ arm, index }) =>
    arm === null || sideOf(arm) !== null ? [] : [lines[index - 1] ?? 1],
  );
}

/** What was settled of the time of single rows while the table was read, as it is kept. */
const CLOCKS: Readonly<Partial<Record<SeriesFlag['code'], SeriesReadingKept['clock']>>> = {
  'time-not-there': 'skipped',
  'time-twice': 'twice',
};

function finite(value: number | null): number | null {
  return value === null || !Number.isFinite(value) ? null : value;
}
