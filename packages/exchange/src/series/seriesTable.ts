import {
  type DayPart,
  INTAKE_LIMITS,
  type Refusal,
  type RefusalCode,
  refusal,
  SCORE_FIGURES,
  type SeriesReading,
} from '@evenfall/clinical';
import { afterSittingMs, READING_OF_SITTING } from '../csv/readingOfSitting.js';
import { numberOf, pressureOf } from './pressureText.js';
import type { SeriesMapping } from './seriesColumns.js';
import type { BesideReading, RefusedRow, SeriesChoices, SeriesFlag, SeriesProblem } from './seriesRead.js';
import type { SeriesRecord } from './seriesRecords.js';
import {
  asleepOf,
  irregularOf,
  isErrorCode,
  isNoNumber,
  isNotedByHand,
  isWrist,
  partOf,
  SERIES_COLUMNS,
  type SeriesColumn,
  startedByHandOf,
} from './seriesWords.js';
import { sideOf } from './sideWords.js';
import {
  type DateOrder,
  dateIn,
  daysOf,
  readClock,
  readDate,
  readTime,
  type WrittenTime,
} from './timeText.js';
import type { ZoneClock } from './zoneClock.js';

/** The time of a row as it is written, with what stood there and in which column. */
export type RowTime = { readonly time: WrittenTime | null; readonly got: string | null; readonly at: number };

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
export class SeriesTable {
  private readonly mapping: SeriesMapping;
  private readonly kind: SeriesChoices['kind'];
  private readonly places: Readonly<Record<SeriesColumn, number>>;
  private readonly width: number;
  private readonly isTyped: boolean;
  /** Where a table of an Evenfall says which reading of its sitting a row is; under 0 in any other. */
  private readonly sitting: number;

  constructor(mapping: SeriesMapping, kind: SeriesChoices['kind'], isTyped = false) {
    this.mapping = mapping;
    this.kind = kind;
    this.isTyped = isTyped;
    this.width = mapping.columns.length;
    this.sitting = mapping.headings?.indexOf(READING_OF_SITTING) ?? -1;
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
    const value = this.isSlip(cell) ? Number.NaN : numberOf(cell);
    if (!Number.isNaN(value)) return value;
    if (isNoNumber(cell) || (this.kind === 'ambulatory' && isErrorCode(cell))) return null;
    return value;
  }

  /** A number that was typed and begins with a 0. */
  private isSlip(cell: string): boolean {
    return this.isTyped && /^0\d/.test(cell);
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
    const marked: number[] = [];
    const notUnderstood: number[] = [];
    const byHand: number[] = [];
    const startsUnread: number[] = [];
    const moved: Record<'not-there' | 'twice', number[]> = { 'not-there': [], twice: [] };
    const utc: number[] = [];
    const { note, arm, site, device, irregular, started } = this.places;
    const hasBeside = [note, arm, site, device, irregular, started].some((at) => at >= 0);
    for (let k = 0; k < rows.length; k++) {
      const row = rows[k] as SeriesRecord;
      const index = k + 1;
      const problems: SeriesProblem[] = [];
      const place = this.placeIn(row, times[k] as RowTime, settled, problems);
      const numbers = this.numbersOf(row, settled.unit, problems);
      const asleep = this.asleepIn(row, problems);
      const part = this.partIn(row, problems);
      const irregularPulse = this.irregularIn(row);
      const start = this.startIn(row);
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
        ...(start.isByHand === null ? {} : { startedByHand: start.isByHand }),
      });
      if (hasBeside) {
        const text = (role: SeriesColumn) => row.cells[this.places[role]] || null;
        const one = {
          index,
          note:
            [text('note'), irregularPulse.asWritten, start.asWritten]
              .filter((part) => part !== null)
              .join('; ') || null,
          arm: text('arm') ?? this.sidedSite(row),
          device: text('device'),
          irregular: irregularPulse.is,
        };
        if (one.note !== null || one.arm !== null || one.device !== null || one.irregular !== null)
          beside.push(one);
        if (irregularPulse.asWritten !== null) notUnderstood.push(row.line);
        else if (one.irregular === true) marked.push(row.line);
        if (start.asWritten !== null) startsUnread.push(row.line);
        if (start.isByHand === true) byHand.push(row.line);
      }
    }
    const flags: SeriesFlag[] = [];
    if (marked.length > 0) flags.push({ code: 'irregular-pulse', lines: marked });
    if (notUnderstood.length > 0) flags.push({ code: 'irregular-not-understood', lines: notUnderstood });
    if (byHand.length > 0) flags.push({ code: 'marked-by-hand', lines: byHand });
    if (startsUnread.length > 0) flags.push({ code: 'start-not-understood', lines: startsUnread });
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
    const after = this.sitting < 0 ? 0 : afterSittingMs(cells[this.sitting]);
    const writtenMs = daysOf(date) * DAY_MS + time.clock.ms + after;
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
        const expected = this.isSlip(got ?? '') ? 'number-without-zero' : 'number-of-cell';
        problems.push(this.problem(row, at, 'not-a-number', expected, got));
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

  /** A mark says something of a reading and never takes it away: one that nobody understands counts, and is kept as written. */
  private irregularIn({ cells }: SeriesRecord): { is: boolean | null; asWritten: string | null } {
    const at = this.places.irregular;
    const cell = at < 0 ? '' : (cells[at] ?? '');
    const irregular = irregularOf(cell);
    return irregular === undefined ? { is: true, asWritten: cell } : { is: irregular, asWritten: null };
  }

  /** Who started a reading of a recorder, by its column, else by its note; at home nobody asks. */
  private startIn({ cells }: SeriesRecord): { isByHand: boolean | null; asWritten: string | null } {
    if (this.kind === 'home') return { isByHand: null, asWritten: null };
    const { started, note } = this.places;
    const cell = started < 0 ? '' : (cells[started] ?? '');
    const said = startedByHandOf(cell, this.mapping.headings?.[started] ?? '');
    if (said === undefined) return { isByHand: null, asWritten: cell };
    if (said !== null) return { isByHand: said, asWritten: null };
    return { isByHand: note >= 0 && isNotedByHand(cells[note] ?? '') ? true : null, asWritten: null };
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

  /** What stands under the site, where it names an arm as well; else null. */
  private sidedSite({ cells }: SeriesRecord): string | null {
    const cell = cells[this.places.site] ?? '';
    return sideOf(cell) === null ? null : cell;
  }

  private isAtWrist({ cells }: SeriesRecord): boolean {
    const { site, arm } = this.places;
    return (site >= 0 && isWrist(cells[site] ?? '')) || (arm >= 0 && isWrist(cells[arm] ?? ''));
  }
}
