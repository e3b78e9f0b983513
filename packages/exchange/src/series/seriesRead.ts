import type { Refusal, SeriesReading } from '@evenfall/clinical';
import type { SeriesMapping } from './seriesColumns.js';
import type { DateOrder } from './timeText.js';

/** What the person who brings a series has said of it; null is not said, and asked where it matters. */
export type SeriesChoices = {
  /** Readings at home, or a recording of 24 hours in which a blank is a measurement that failed. */
  readonly kind: 'home' | 'ambulatory';
  /** IANA name of the zone in which the clock stood. */
  readonly zone: string | null;
  readonly dates: DateOrder | null;
  readonly unit: 'mmHg' | 'kPa' | null;
  /** What each column is; it wins over anything that could be found. */
  readonly mapping: SeriesMapping | null;
  /** Somebody looked at the columns: nothing is asked about them. */
  readonly areColumnsSure: boolean;
  /** Typed digit by digit, from paper: a number that begins with a 0 is a slip there and refused, while a program may pad one. */
  readonly isTyped?: boolean;
};

export const NOTHING_SAID: Omit<SeriesChoices, 'kind'> = {
  zone: null,
  dates: null,
  unit: null,
  mapping: null,
  areColumnsSure: false,
};

/** Something wrong with a cell: a refusal with the number of its column, from 1. */
export type SeriesProblem = Refusal & { readonly column: number | null };

/** A row that is not used; its numbers as far as they could be read, since a dangerous one must be seen all the same. */
export type RefusedRow = {
  readonly index: number;
  readonly line: number;
  readonly problems: readonly SeriesProblem[];
  readonly systolic: number | null;
  readonly diastolic: number | null;
};

/** What must be known before anything of the text can be used. */
export type SeriesQuestion = {
  readonly of: 'dates' | 'zone' | 'unit' | 'swapped' | 'columns';
  readonly choices: readonly string[];
  readonly problem: SeriesProblem;
};

export type SeriesFlagCode =
  | 'time-not-there'
  | 'time-twice'
  | 'times-in-utc'
  | 'from-kilopascal'
  | 'lines-before-heading'
  | 'irregular-pulse'
  | 'irregular-not-understood'
  | 'marked-by-hand'
  | 'start-not-understood';

/** Something that was settled by a rule and is said; `lines` are of the rows it holds for. */
export type SeriesFlag = { readonly code: SeriesFlagCode; readonly lines: readonly number[] };

/** What stands beside the numbers of a row. */
export type BesideReading = {
  readonly index: number;
  readonly note: string | null;
  /** What a cell says of the arm, as it stands: `sideOf` reads it. */
  readonly arm: string | null;
  readonly device: string | null;
  /** Whether the device marked the pulse as irregular, as what nobody understands is taken; null where it says nothing of it. */
  readonly irregular: boolean | null;
};

/**
 * A text as readings of a series. Each data row is either in `readings` or in `refused`, once; `index` counts data rows
 * from 1 and `lines[index - 1]` is its physical line. With questions open, neither holds anything.
 */
export type ReadSeries = {
  readonly readings: readonly SeriesReading[];
  readonly lines: readonly number[];
  readonly refused: readonly RefusedRow[];
  readonly beside: readonly BesideReading[];
  readonly flags: readonly SeriesFlag[];
  readonly questions: readonly SeriesQuestion[];
  readonly mapping: SeriesMapping;
  readonly zone: string | null;
  readonly dates: DateOrder | null;
};
