import {
  type DayPart,
  INTAKE_LIMITS,
  type Refusal,
  type RefusalCode,
  refusal,
  SCORE_FIGURES,
  type SeriesReading,
} from '@evenfall/clinical';
import { plainSeries } from './plainSeries.js';
import { numberOf, pressureOf } from './pressureText.js';
import { findColumns, looksLikeKiloPascal, type SeriesMapping } from './seriesColumns.js';
import { type SeriesRecord, seriesRecords } from './seriesRecords.js';
import {
  asleepOf,
  isErrorCode,
  isNoNumber,
  isWrist,
  partOf,
  SERIES_COLUMNS,
  type SeriesColumn,
  unitNamed,
} from './seriesWords.js';
import { SPACED_COLUMNS, spacedCells } from './spacedLine.js';
import {
  DATE_ORDERS,
  type DateOrder,
  dateIn,
  daysOf,
  ordersOf,
  readClock,
  readDate,
  readTime,
  type WrittenTime,
} from './timeText.js';
import { type ZoneClock, zoneClock } from './zoneClock.js';

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
  | 'lines-before-heading';

/** Something that was settled by a rule and is said; `lines` are of the rows it holds for. */
export type SeriesFlag = { readonly code: SeriesFlagCode; readonly lines: readonly number[] };

/** What stands beside the numbers of a row. */
export type BesideReading = {
  readonly index: number;
  readonly note: string | null;
  readonly arm: string | null;
  readonly device: string | null;
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

/**
 * Reads a table, a paste or typed lines of readings. Reads no clock; what cannot be told is asked, never guessed: the order of a date,
 * the zone of a time without offset, kPa, columns that look swapped, columns that nothing names.
 *
 * Errors: none; what cannot be read is in `refused` or `questions`. A zone that does not exist is as if none were given:
 * check it first (`isZone`).
 * Source: docs/conventions.md sections 2 and 8; out-of-office handbook 20.
 */
export function readSeries(text: string, choices: SeriesChoices): ReadSeries {
  const plain = plainSeries(text, choices);
  if (plain === null) return readAnySeries(text, choices);
  const { readings, lines, headings, columns } = plain;
  const nothing = { refused: [], beside: [], flags: [], questions: [], zone: null, dates: choices.dates };
  return { readings, lines, mapping: { headings, columns }, ...nothing };
}

/** The long way, for a table that is as people and recorders make them. */
export function readAnySeries(text: string, choices: SeriesChoices): ReadSeries {
  const found = seriesRecords(text);
  const isSpaced = found.delimiter === 'space';
  const records = isSpaced ? found.records.map(asSpaced) : found.records;
  const headless = isSpaced && records.length > 0 ? { headings: null, columns: SPACED_COLUMNS } : null;
  const columns = findColumns(records, choices.mapping ?? headless);
  const { mapping, headingAt } = columns;
  const rows = headingAt === null ? records : records.slice(headingAt + 1);
  const lines = rows.map(({ line }) => line);
  const clock = choices.zone === null ? null : zoneClock(choices.zone);
  const table = new Table(mapping, choices.kind);
  const times = rows.map(({ cells }) => table.timeOf(cells));
  const unit = choices.unit ?? namedUnit(mapping, rows);
  const questions = [
    ...columnQuestions(columns.missing, records, headingAt),
    ...(columns.missing.length > 0
      ? []
      : [
          ...dateQuestions(times, rows, table, choices.dates),
          ...zoneQuestions(times, rows, table, clock),
          ...numberQuestions(rows, table, unit, columns.isByContent || choices.areColumnsSure),
        ]),
  ];
  const dates = choices.dates ?? settledOrder(times);
  const before = headingAt === null ? [] : records.slice(0, headingAt).map(({ line }) => line);
  const nothing = { readings: [], refused: [], beside: [], flags: [] };
  const rest = { lines, questions, mapping, zone: clock?.zone ?? null, dates };
  if (questions.length > 0) return { ...nothing, ...rest };
  const read = table.read(rows, times, { order: dates, clock, unit: unit ?? 'mmHg' });
  const flags =
    before.length === 0
      ? read.flags
      : [{ code: 'lines-before-heading' as const, lines: before }, ...read.flags];
  return { ...read, ...rest, flags };
}

function asSpaced({ line, cells }: SeriesRecord): SeriesRecord {
  return { line, cells: spacedCells(cells.join(' ')) };
}

type RowTime = { readonly time: WrittenTime | null; readonly got: string | null; readonly at: number };

function settledOrder(times: readonly RowTime[]): DateOrder | null {
  for (const { time } of times) {
    if (time?.date.kind !== 'open') continue;
    const [only, ...more] = ordersOf(time.date);
    if (only !== undefined && more.length === 0) return only;
  }
  // No date is open to two readings that differ, or there would have been a question.
  const open = times.find(({ time }) => time?.date.kind === 'open');
  return open?.time?.date.kind === 'open' ? (ordersOf(open.time.date)[0] ?? null) : null;
}

/** The orders that single rows leave no choice about; where they disagree, or none does and two would do, it is asked. */
function dateQuestions(
  times: readonly RowTime[],
  rows: readonly SeriesRecord[],
  table: Table,
  given: DateOrder | null,
): SeriesQuestion[] {
  if (given !== null) return [];
  const settled = new Set<DateOrder>();
  const open = new Set<DateOrder>();
  let first = -1;
  times.forEach(({ time }, k) => {
    if (time === null || time.date.kind !== 'open') return;
    const { date } = time;
    const orders = ordersOf(date);
    const days = new Set(orders.map((order) => dayIn(date, order)));
    if (orders.length === 1) settled.add(orders[0] as DateOrder);
    else if (days.size > 1) for (const order of orders) open.add(order);
    if (first < 0 && (days.size > 1 || orders.length === 1)) first = k;
  });
  const isSettled = settled.size === 1 || (settled.size === 0 && open.size === 0);
  if (isSettled) return [];
  const possible = settled.size > 1 ? settled : open;
  const choices = DATE_ORDERS.filter((order) => possible.has(order));
  const problem = table.problem(rows[first], times[first]?.at ?? -1, 'ambiguous', 'date-order', times[first]?.got ?? null, { choices }); // biome-ignore format: one thought
  return [{ of: 'dates', choices, problem }];
}

function dayIn(date: WrittenTime['date'], order: DateOrder): number | null {
  const found = dateIn(date, order);
  return found === null ? null : daysOf(found);
}

function zoneQuestions(
  times: readonly RowTime[],
  rows: readonly SeriesRecord[],
  table: Table,
  clock: ZoneClock | null,
): SeriesQuestion[] {
  if (clock !== null) return [];
  const k = times.findIndex(({ time }) => time !== null && time.offsetMinutes === null);
  if (k < 0) return [];
  const { at, got } = times[k] as RowTime;
  return [
    { of: 'zone', choices: [], problem: table.problem(rows[k], at, 'ambiguous', 'zone-of-times', got) },
  ];
}

function columnQuestions(
  missing: readonly ('time' | 'systolic' | 'diastolic')[],
  records: readonly SeriesRecord[],
  headingAt: number | null,
): SeriesQuestion[] {
  if (missing.length === 0) return [];
  const line = records[headingAt ?? 0]?.line ?? 1;
  return missing.map((role) => ({
    of: 'columns',
    choices: SERIES_COLUMNS,
    problem: { ...refusal(role, 'missing', 'column-of-series', null, { line }), column: null },
  }));
}

function numberQuestions(
  rows: readonly SeriesRecord[],
  table: Table,
  unit: 'mmHg' | 'kPa' | null,
  isSure: boolean,
): SeriesQuestion[] {
  const questions: SeriesQuestion[] = [];
  const systolics: number[] = [];
  let [both, swapped] = [0, 0];
  let first: SeriesRecord | undefined;
  for (const row of rows) {
    const { systolic, diastolic } = table.written(row.cells);
    if (systolic === null || Number.isNaN(systolic)) continue;
    systolics.push(systolic);
    if (diastolic === null || Number.isNaN(diastolic)) continue;
    both++;
    if (systolic <= diastolic) {
      swapped++;
      first ??= row;
    }
  }
  if (unit === null && looksLikeKiloPascal(systolics)) {
    const row = rows.find(({ cells }) => {
      const { systolic } = table.written(cells);
      return systolic !== null && systolic < INTAKE_LIMITS.systolic.minimum && !Number.isInteger(systolic);
    });
    const at = table.placeOf('systolic');
    const choices = ['kPa', 'mmHg'];
    const problem = table.problem(row, at, 'ambiguous', 'unit-of-pressures', row?.cells[at] ?? null, {
      choices,
    });
    questions.push({ of: 'unit', choices, problem });
  }
  if (!isSure && swapped > both / 2) {
    const at = table.placeOf('diastolic');
    const problem = table.problem(
      first,
      at,
      'ambiguous',
      'systolic-over-diastolic',
      first?.cells[at] ?? null,
      {
        figures: { rows: both, swapped },
      },
    );
    questions.push({ of: 'swapped', choices: [], problem });
  }
  return questions;
}

/** The unit that the headings of pressures name, or the first cells. */
function namedUnit(
  { headings, columns }: SeriesMapping,
  rows: readonly SeriesRecord[],
): 'mmHg' | 'kPa' | null {
  const [first] = rows;
  for (const [at, role] of columns.entries()) {
    if (role !== 'systolic' && role !== 'diastolic' && role !== 'pressure') continue;
    const named = unitNamed(headings?.[at] ?? '') ?? unitNamed(first?.cells[at] ?? '');
    if (named !== null) return named;
  }
  return null;
}

const DAY_MS = 86_400_000;
const MINUTE_MS = 60_000;

type Numbers = { systolic: number | null; diastolic: number | null; pulse: number | null };
type Settled = {
  readonly order: DateOrder | null;
  readonly clock: ZoneClock | null;
  readonly unit: 'mmHg' | 'kPa';
};
type Place = { atMs: number; localMs: number; moved: 'not-there' | 'twice' | null };

/** Cells of rows under the columns that were found. */
class Table {
  private readonly mapping: SeriesMapping;
  private readonly kind: SeriesChoices['kind'];
  private readonly places: Readonly<Record<SeriesColumn, number>>;
  private readonly width: number;

  constructor(mapping: SeriesMapping, kind: SeriesChoices['kind']) {
    this.mapping = mapping;
    this.kind = kind;
    this.width = mapping.columns.length;
    this.places = Object.fromEntries(
      SERIES_COLUMNS.map((role) => [role, mapping.columns.indexOf(role)]),
    ) as Record<SeriesColumn, number>;
  }

  placeOf(role: SeriesColumn): number {
    return this.places[role] >= 0 ? this.places[role] : this.places.pressure;
  }

  /** A problem of a cell; its field is the heading, or what the column is where there is none. */
  problem(
    row: SeriesRecord | undefined,
    at: number,
    code: RefusalCode,
    expected: string,
    got: string | null,
    more: Partial<Pick<Refusal, 'figures' | 'choices'>> = {},
  ): SeriesProblem {
    const heading = this.mapping.headings?.[at];
    const field = heading === undefined || heading === '' ? (this.mapping.columns[at] ?? '') : heading;
    return {
      ...refusal(field, code, expected, got, { ...more, line: row?.line ?? null }),
      column: at < 0 ? null : at + 1,
    };
  }

  timeOf(cells: readonly string[]): RowTime {
    const { time, date, clock } = this.places;
    if (time >= 0) {
      const cell = cells[time] ?? '';
      return { time: cell === '' ? null : readTime(cell), got: cell === '' ? null : cell, at: time };
    }
    const [dateCell, clockCell] = [cells[date] ?? '', cells[clock] ?? ''];
    if (dateCell === '') return { time: null, got: null, at: date };
    const writtenDate = readDate(dateCell);
    if (writtenDate === null) return { time: null, got: dateCell, at: date };
    const writtenClock = clockCell === '' ? null : readClock(clockCell);
    if (writtenClock === null) return { time: null, got: clockCell === '' ? null : clockCell, at: clock };
    const both = { date: writtenDate, clock: writtenClock, offsetMinutes: null, isUtc: false };
    return { time: both, got: dateCell, at: date };
  }

  /** The pressures as written; null for a blank, NaN for what is no number. */
  written(cells: readonly string[]): Pick<Numbers, 'systolic' | 'diastolic'> {
    const slashed = this.slashed(cells);
    if (slashed !== null) return slashed;
    const { systolic, diastolic } = this.places;
    return { systolic: this.number(cells, systolic), diastolic: this.number(cells, diastolic) };
  }

  private number(cells: readonly string[], at: number): number | null {
    const cell = at < 0 ? '' : (cells[at] ?? '');
    if (cell === '') return null;
    const value = numberOf(cell);
    if (!Number.isNaN(value)) return value;
    if (isNoNumber(cell) || (this.kind === 'ambulatory' && isErrorCode(cell))) return null;
    return value;
  }

  /** Both numbers in one cell, in the column that is for it or wherever the pressure should be. */
  private slashed(cells: readonly string[]): (Numbers & { readonly at: number }) | null {
    const { pressure, systolic, diastolic } = this.places;
    for (const at of [pressure, systolic, diastolic]) {
      const cell = at < 0 ? '' : (cells[at] ?? '');
      const found = cell.length < 4 ? null : pressureOf(cell);
      if (found !== null) return { ...found, at };
    }
    // A pressure typed into a column that is not read is understood where no other number is there.
    if ((cells[this.placeOf('systolic')] ?? '') !== '') return null;
    for (const [at, role] of this.mapping.columns.entries()) {
      if (role !== null && role !== 'note' && role !== 'pulse') continue;
      const cell = cells[at] ?? '';
      const found = cell.length < 4 ? null : pressureOf(cell);
      if (found !== null) return { ...found, at };
    }
    return null;
  }

  read(rows: readonly SeriesRecord[], times: readonly RowTime[], settled: Settled) {
    const readings: SeriesReading[] = [];
    const refused: RefusedRow[] = [];
    const beside: BesideReading[] = [];
    const moved: Record<'not-there' | 'twice', number[]> = { 'not-there': [], twice: [] };
    const utc: number[] = [];
    const hasBeside = this.places.note >= 0 || this.places.arm >= 0 || this.places.device >= 0;
    for (let k = 0; k < rows.length; k++) {
      const row = rows[k] as SeriesRecord;
      const index = k + 1;
      const problems: SeriesProblem[] = [];
      const place = this.placeIn(row, times[k] as RowTime, settled, problems);
      const numbers = this.numbersOf(row, settled.unit, problems);
      const asleep = this.asleepIn(row, problems);
      const part = this.partIn(row, problems);
      if (place === null || problems.length > 0) {
        const { systolic, diastolic } = numbers;
        refused.push({ index, line: row.line, problems, systolic, diastolic });
        continue;
      }
      if (place.moved !== null) moved[place.moved].push(row.line);
      if (settled.clock === null && times[k]?.time?.isUtc === true) utc.push(row.line);
      const localDay = Math.floor(place.localMs / DAY_MS);
      readings.push({
        index,
        atMs: place.atMs,
        localDay,
        minuteOfDay: Math.floor((place.localMs - localDay * DAY_MS) / MINUTE_MS),
        systolic: numbers.systolic,
        diastolic: numbers.diastolic,
        pulse: numbers.pulse,
        asleep,
        part,
        site: this.isAtWrist(row) ? 'wrist' : 'upper-arm',
      });
      if (hasBeside) {
        const text = (role: SeriesColumn) => row.cells[this.places[role]] || null;
        const one = { index, note: text('note'), arm: text('arm'), device: text('device') };
        if (one.note !== null || one.arm !== null || one.device !== null) beside.push(one);
      }
    }
    const flags: SeriesFlag[] = [];
    if (moved['not-there'].length > 0) flags.push({ code: 'time-not-there', lines: moved['not-there'] });
    if (moved.twice.length > 0) flags.push({ code: 'time-twice', lines: moved.twice });
    if (utc.length > 0) flags.push({ code: 'times-in-utc', lines: utc });
    if (settled.unit === 'kPa' && readings.length > 0) flags.push({ code: 'from-kilopascal', lines: [] });
    return { readings, refused, beside, flags };
  }

  /** Instant and wall clock of a row; the wall clock is that of the zone, else that of the offset as written. */
  private placeIn(
    row: SeriesRecord,
    { time, got, at }: RowTime,
    { order, clock }: Settled,
    problems: SeriesProblem[],
  ): Place | null {
    const { cells } = row;
    if (cells.length > this.width && cells.slice(this.width).some((cell) => cell !== '')) {
      const figures = { cells: cells.length, wanted: this.width };
      problems.push({
        ...this.problem(row, -1, 'contradicts', 'cells-as-headings', String(cells.length), { figures }),
      });
    }
    const date = time === null ? null : dateIn(time.date, order ?? 'ymd');
    if (time === null || date === null) {
      problems.push(this.problem(row, at, got === null ? 'missing' : 'not-a-time', 'time-of-reading', got));
      return null;
    }
    const writtenMs = daysOf(date) * DAY_MS + time.clock.ms;
    if (time.offsetMinutes !== null) {
      const atMs = writtenMs - time.offsetMinutes * MINUTE_MS;
      return { atMs, localMs: clock === null ? writtenMs : atMs + clock.offsetMs(atMs), moved: null };
    }
    if (clock === null) return { atMs: writtenMs, localMs: writtenMs, moved: null };
    const { atMs, moved } = clock.instantOf(writtenMs);
    return { atMs, localMs: moved === 'not-there' ? atMs + clock.offsetMs(atMs) : writtenMs, moved };
  }

  private numbersOf(row: SeriesRecord, unit: 'mmHg' | 'kPa', problems: SeriesProblem[]): Numbers {
    const { cells } = row;
    const slashed = this.slashed(cells);
    const places = {
      systolic: slashed?.at ?? this.placeOf('systolic'),
      diastolic: slashed?.at ?? this.placeOf('diastolic'),
      pulse: this.places.pulse,
    };
    const found: Numbers = {
      systolic: slashed === null ? this.number(cells, places.systolic) : slashed.systolic,
      diastolic: slashed === null ? this.number(cells, places.diastolic) : slashed.diastolic,
      pulse: this.number(cells, places.pulse),
    };
    if (slashed !== null) {
      // A cell that was read as a pressure is none of its column, and what stands beside it must not say otherwise.
      if (places.pulse === slashed.at) found.pulse = null;
      const other = this.number(cells, this.places.diastolic);
      const isOther = this.places.diastolic >= 0 && this.places.diastolic !== slashed.at;
      if (isOther && other !== null && other !== slashed.diastolic) {
        problems.push(this.problem(row, this.places.diastolic, 'contradicts', 'same-pressure', cells[this.places.diastolic] ?? null)); // biome-ignore format: one thought
      }
      if (slashed.pulse !== null) {
        if (found.pulse !== null && found.pulse !== slashed.pulse) {
          problems.push(
            this.problem(row, places.pulse, 'contradicts', 'same-pulse', cells[places.pulse] ?? null),
          );
        } else found.pulse = slashed.pulse;
      }
    }
    const checked = (role: keyof Numbers, perUnit: number): number | null => {
      const { minimum, maximum } = INTAKE_LIMITS[role];
      const value = found[role];
      if (value === null) return null;
      const at = places[role] >= 0 ? places[role] : (slashed?.at ?? -1);
      const got = cells[at] ?? null;
      if (Number.isNaN(value)) {
        problems.push(this.problem(row, at, 'not-a-number', 'number-of-cell', got));
        return null;
      }
      const converted = value * perUnit;
      if (converted >= minimum && converted <= maximum) return converted;
      problems.push(
        this.problem(row, at, 'out-of-range', 'number-within', got, { figures: { minimum, maximum } }),
      );
      return null;
    };
    const per = unit === 'kPa' ? SCORE_FIGURES.mmHgPerKiloPascal.value : 1;
    const numbers = {
      systolic: checked('systolic', per),
      diastolic: checked('diastolic', per),
      pulse: checked('pulse', 1),
    };
    if (this.kind === 'home') this.checkPair(row, found, numbers, places, problems);
    return numbers;
  }

  /** At home a row without any pressure, or with its pressures the wrong way round, is refused; a recorder's are edited later. */
  private checkPair(
    row: SeriesRecord,
    found: Numbers,
    { systolic, diastolic }: Numbers,
    places: Numbers,
    problems: SeriesProblem[],
  ): void {
    if (found.systolic === null && found.diastolic === null) {
      problems.push(this.problem(row, places.systolic as number, 'missing', 'pressure-of-row', null));
    } else if (systolic !== null && diastolic !== null && diastolic >= systolic) {
      const at = places.diastolic as number;
      problems.push(this.problem(row, at, 'not-below-systolic', 'diastolic-below-this', row.cells[at] ?? null, { figures: { systolic } })); // biome-ignore format: one thought
    }
  }

  private asleepIn(row: SeriesRecord, problems: SeriesProblem[]): boolean | null {
    const at = this.places.asleep;
    const cell = at < 0 ? '' : (row.cells[at] ?? '');
    if (cell === '') return null;
    const asleep = asleepOf(cell);
    if (asleep !== undefined) return asleep;
    problems.push(this.problem(row, at, 'unknown-id', 'yes-or-no', cell));
    return null;
  }

  private partIn(row: SeriesRecord, problems: SeriesProblem[]): DayPart | null {
    const at = this.places.part;
    const cell = at < 0 ? '' : (row.cells[at] ?? '');
    if (cell === '') return null;
    const part = partOf(cell);
    if (part !== undefined) return part;
    problems.push(this.problem(row, at, 'unknown-id', 'part-of-day', cell));
    return null;
  }

  private isAtWrist({ cells }: SeriesRecord): boolean {
    const { site, arm } = this.places;
    return (site >= 0 && isWrist(cells[site] ?? '')) || (arm >= 0 && isWrist(cells[arm] ?? ''));
  }
}
