import { type Parsed, type Refusal, type RefusalCode, refusal } from '@evenfall/clinical';
import {
  type Identity,
  identity,
  REPORTED_STATUSES,
  type ReportedContent,
  type ReportedValue,
  refusalsOf,
  reportedContent,
  reportedValue,
  stamp,
} from '@evenfall/record';
import type { Reported } from '../../reading/reported.js';
import { afterSittingMs, READING_OF_SITTING } from '../readingOfSitting.js';
import { CSV_SCHEMA_NUMBER } from '../schemaNumber.js';
import { ReadingNames } from './readingNames.js';
import { readTable, type Table, type TableRecord } from './records.js';

/** What a table holds for this record. */
export type ReadChartCsv = {
  /** The person whom every row is of. */
  readonly person: string;
  readonly birthDate: string | null;
  /** Who the person is, where the table was written with that and every row says the same. */
  readonly identity: Identity | null;
  /** Whether the person's number stands bare on some row: a spreadsheet may have made another number of it. */
  readonly isNumberBare: boolean;
  readonly notices: readonly string[];
  /** Values as they stand, each with the entry that it was in the record that wrote it. */
  readonly reported: readonly FromRow[];
  /** Readings of series that the table says were replaced, with nothing in their place: a value that was brought as one of them stands no more. */
  readonly takenBack: readonly FromRow[];
  readonly refused: readonly Refusal[];
  /** Rows that hold no value to take in, by why: their number. */
  readonly passedOver: Readonly<Record<string, number>>;
};

/** A value of a row. A reading of a series gives two where a pulse stands beside its pressure. */
export type FromRow = Reported & {
  /** The entry that it was; null where the row names none. */
  readonly entry: string | null;
  /** The series that it is a reading of, by the entry that first said it; null for any other value. */
  readonly series: string | null;
};

/** Headings without which no row can be read. */
const NEEDED = ['schema', 'person', 'entry', 'sign', 'standing', 'measuredAt'] as const;

/**
 * Reads a table that `evenfall export --as csv` wrote, also after a spreadsheet saved it. A row holds no evidence, so
 * its value is one from elsewhere. Rows that were replaced, or that say what was not done, are passed over and counted.
 *
 * Errors: no heading that can be used, rows of several people. A row that cannot be read, is of nobody or has a newer
 * schema is in `refused` with its line and heading, and the rest is read all the same.
 */
export function readChartCsv(text: string): Parsed<ReadChartCsv> {
  const table = readTable(text);
  if (!table.ok) return table;
  const [heading, ...records] = table.value.records;
  const wrong = wrongHeading(heading);
  if (heading === undefined || wrong.length > 0) return { ok: false, refusals: wrong };
  const rows = records
    .map((record) => new Row(record, heading.cells, table.value))
    .filter((row) => !row.isEmpty());
  // A row that is cut, or says nobody, is one bad row: whom the file is of the others say.
  const shaped = rows.filter((row) => row.cells.length === heading.cells.length);
  const persons = new Set(shaped.flatMap((row) => row.text('person') ?? []));
  const [person = null] = persons;
  if (person === null || persons.size > 1) {
    const refused = refusal('person', person === null ? 'missing' : 'contradicts', 'one-subject', null);
    return { ok: false, refusals: [refused] };
  }
  const reported: FromRow[] = [];
  const refused: Refusal[] = [];
  const passedOver: Record<string, number> = {};
  const names = new ReadingNames();
  const replaced: Row[] = [];
  const pass = (why: string) => {
    passedOver[why] = (passedOver[why] ?? 0) + 1;
  };
  for (const row of rows) {
    const newer = row.newerSchema();
    if (newer !== null) refused.push(newer);
    else if (row.cells.length !== heading.cells.length) refused.push(row.misshapen(heading.cells.length));
    else if (row.text('person') === null) refused.push(row.ofNobody());
    else {
      const why = passedOverBecause(row);
      if (why !== null) {
        pass(why);
        if (why === 'replaced' && row.text('series') !== null) replaced.push(row);
      } else {
        reported.push(...readRow(row, names));
        refused.push(...row.refusals);
      }
    }
  }
  const said = (heading: string) => shaped.flatMap((row) => row.text(heading) ?? []);
  return {
    ok: true,
    value: {
      person,
      birthDate: said('birthDate')[0] ?? null,
      identity: identityIn(said),
      isNumberBare: shaped.some((row) => row.isBare('number')),
      notices: [...new Set(said('notice').flatMap((notice) => notice.split(' ')))].filter(
        (one) => one !== '',
      ),
      ...counted(reported, replacedIn(replaced)),
      refused,
      passedOver,
    },
  };
}

/** What replaced rows said, under the names that each entry gave. */
function replacedIn(rows: readonly Row[]): FromRow[] {
  const ofEntry = new Map<string | null, ReadingNames>();
  return rows.flatMap((row) => {
    const entry = row.text('entry');
    const names = ofEntry.get(entry) ?? new ReadingNames();
    ofEntry.set(entry, names);
    return readRow(row, names);
  });
}

/**
 * What stands and what was taken back, each with how many rows say it; taken back is what replaced rows said under names
 * that no row has any more: a reading that was removed, or whose time was put right.
 */
function counted(
  reported: readonly FromRow[],
  replaced: readonly FromRow[],
): Pick<ReadChartCsv, 'reported' | 'takenBack'> {
  const said = ({ content: { source, value } }: FromRow) => JSON.stringify([source.id, value]);
  const entries = new Map<string, Set<string | null>>();
  for (const row of [...replaced, ...reported])
    entries.set(said(row), (entries.get(said(row)) ?? new Set()).add(row.entry));
  const withTimes = (row: FromRow): FromRow => ({ ...row, timesSaid: entries.get(said(row))?.size ?? 1 });
  const standing = new Set(reported.map(({ content }) => content.source.id));
  const newest = newestOfSeries([...replaced, ...reported]);
  // All that a table says of a series is as new as whatever it says last of it.
  const asOfNow = (row: FromRow): FromRow => {
    if (row.series === null) return row;
    const saidAt = newest.get(row.series) ?? null;
    return { ...row, content: { ...row.content, saidAt } };
  };
  return {
    reported: reported.map((row) => asOfNow(withTimes(row))),
    takenBack: replaced
      .filter(({ content }) => !standing.has(content.source.id))
      .map((row) => asOfNow(withTimes(row))),
  };
}

/** The last instant at which anything was said of each series. */
function newestOfSeries(rows: readonly FromRow[]): ReadonlyMap<string | null, string> {
  const newest = new Map<string | null, string>();
  for (const { series, content } of rows) {
    const before = newest.get(series);
    const { saidAt } = content;
    if (saidAt !== null && (before === undefined || Date.parse(saidAt) > Date.parse(before)))
      newest.set(series, saidAt);
  }
  return newest;
}

/** Null where the rows do not give a name and a second identifier, or do not agree about one. */
function identityIn(said: (heading: string) => readonly string[]): Identity | null {
  const all = (['name', 'birthDate', 'number'] as const).map((part) => [part, new Set(said(part))] as const);
  if (all.some(([, texts]) => texts.size > 1)) return null;
  const read = identity.safeParse(Object.fromEntries(all.map(([part, [text = null]]) => [part, text])));
  return read.success ? read.data : null;
}

function wrongHeading(heading: TableRecord | undefined): Refusal[] {
  const missing = NEEDED.filter((name) => heading?.cells.includes(name) !== true);
  return missing.map((name) =>
    refusal(name, 'missing', 'heading-of-chart', null, { line: heading?.line ?? 1 }),
  );
}

/** A value that stands no more, a sign that was not taken, one that gave no number, or one that has none at all. */
function passedOverBecause(row: Row): string | null {
  if (row.text('notDone') !== null) return 'notDone';
  const standing = row.text('standing');
  if (standing === 'replaced' || standing === 'says-entered-in-error') return standing;
  const sign = row.text('sign');
  if (sign === 'pain' || sign === 'consciousness') return sign;
  const keys = sign !== null && Object.hasOwn(NUMBERS, sign) ? NUMBERS[sign as Sign] : null;
  const isBlank = keys?.every(([heading]) => row.text(heading) === null) && row.text(PULSE_BESIDE) === null;
  return isBlank ? 'withoutNumber' : null;
}

/** The heading of the pulse beside a pressure of a series, per minute. */
const PULSE_BESIDE = 'pulse';

type Sign = ReportedValue['of'];

/** The headings of the numbers of each sign, with their keys. */
const NUMBERS: Readonly<Record<Sign, readonly (readonly [heading: string, key: string])[]>> = {
  pressure: [
    ['systolic', 'systolic'],
    ['diastolic', 'diastolic'],
  ],
  pulse: [['perMinute', 'perMinute']],
  breaths: [['perMinute', 'perMinute']],
  temperature: [['celsius', 'celsius']],
  'oxygen-saturation': [['oxygenSaturationPercent', 'percent']],
  weight: [['weightKg', 'kg']],
  height: [['heightCm', 'cm']],
};

/** A time as the record keeps it, of a row that has the time of its sitting: as it was named in tables without that number. */
function keptAt(at: string, ofSitting: string | null): string {
  const after = afterSittingMs(ofSitting);
  const ms = Date.parse(at);
  return after === 0 || Number.isNaN(ms) ? at : withOffset(ms + after, at);
}

/** An instant, ms, with the offset that a time was written with. */
function withOffset(atMs: number, written: string): string {
  const [, sign = '+', hours = '0', minutes = '0'] = /([+-])(\d{2}):(\d{2})$/.exec(written) ?? [];
  const offset = (sign === '-' ? -1 : 1) * (Number(hours) * 60 + Number(minutes)) * 60_000;
  const local = new Date(atMs + offset).toISOString().slice(0, -1);
  return `${local}${/[+-]\d{2}:\d{2}$/.exec(written)?.[0] ?? 'Z'}`;
}

function readRow(row: Row, names: ReadingNames): FromRow[] {
  const sign = row.text('sign');
  if (sign === null || !Object.hasOwn(NUMBERS, sign)) {
    row.refuse('sign', sign === null ? 'missing' : 'unknown-id', 'choice', sign, Object.keys(NUMBERS));
    return [];
  }
  const measuredAt = stamp.safeParse({
    at: keptAt(row.text('measuredAt') ?? '', row.text(READING_OF_SITTING)),
    zone: row.text('zone') ?? 'UTC',
    asEntered: null,
  });
  if (!measuredAt.success) {
    const got = row.text('measuredAt');
    row.refuse('measuredAt', got === null ? 'missing' : 'not-a-time', 'datetime', got);
  }
  const until = row.text('meanUntil');
  if (!reportedContent.shape.until.safeParse(until).success)
    row.refuse('meanUntil', 'not-a-time', 'datetime', until);
  const of = sign as Sign;
  const posed = posedIn(row);
  const hasPulse = row.text(PULSE_BESIDE) !== null;
  // A recorder may have counted a pulse where it got no pressure.
  const hasValue = !hasPulse || NUMBERS[of].some(([heading]) => row.text(heading) !== null);
  const value = hasValue ? valueIn(row, of, NUMBERS[of]) : null;
  const pulse = hasPulse ? valueIn(row, 'pulse', [[PULSE_BESIDE, 'perMinute']]) : null;
  if (!measuredAt.success || row.refusals.length > 0) return [];
  const [entry, series] = [row.text('entry'), row.text('series')];
  const name =
    series === null
      ? entry
      : names.of({
          series,
          entry,
          atMs: Date.parse(measuredAt.data.at),
          value: JSON.stringify([value, pulse]),
        });
  const made = (one: ReportedValue, id: string | null): FromRow => ({
    at: `/lines/${row.line}`,
    content: contentOf(row, one, id, posed),
    measuredAt: measuredAt.data,
    isInError: row.text('standing') === 'entered-in-error',
    entry,
    series,
  });
  return [
    ...(value === null ? [] : [made(value, name)]),
    ...(pulse === null ? [] : [made(pulse, name === null ? null : `${name}/pulse`)]),
  ];
}

/** The value of a sign from its headings; null, and what is wrong with it refused, for one that cannot be. */
function valueIn(row: Row, of: Sign, headings: (typeof NUMBERS)[Sign]): ReportedValue | null {
  const numbers = headings.map(([heading, key]) => [key, row.number(heading)] as const);
  const value = reportedValue.safeParse({ of, ...Object.fromEntries(numbers) });
  if (value.success) return value.data;
  if (row.refusals.length > 0) return null;
  for (const one of refusalsOf(value.error, { of, ...Object.fromEntries(numbers) })) {
    const heading = headings.find(([, key]) => one.field === `/${key}`)?.[0] ?? 'sign';
    row.refuse(heading, one.code, one.expected, row.text(heading), one.choices, one.figures);
  }
  return null;
}

/** How long somebody had stood or lain at a pressure, and how they felt on their feet. */
type Posed = Pick<ReportedContent, 'uprightMinutes' | 'lyingMinutes' | 'unwellUpright'>;

const NOT_POSED: Posed = { uprightMinutes: null, lyingMinutes: null, unwellUpright: null };

/** The same from a row; what cannot be is refused under its heading. */
function posedIn(row: Row): Posed {
  const minutes = (heading: 'uprightMinutes' | 'lyingMinutes'): number | null => {
    const number = row.number(heading);
    const read = reportedContent.shape[heading].safeParse(number);
    if (read.success) return read.data;
    for (const one of refusalsOf(read.error, number))
      row.refuse(heading, one.code, one.expected, row.text(heading), one.choices, one.figures);
    return null;
  };
  const felt = row.text('unwellUpright')?.trim().toLowerCase() ?? null;
  if (felt !== null && felt !== 'true' && felt !== 'false')
    row.refuse('unwellUpright', 'unknown-id', 'choice', felt, ['true', 'false']);
  return {
    uprightMinutes: minutes('uprightMinutes'),
    lyingMinutes: minutes('lyingMinutes'),
    unwellUpright: felt === null ? null : felt === 'true',
  };
}

function contentOf(row: Row, value: ReportedValue, id: string | null, posed: Posed): ReportedContent {
  const words = (heading: string) => row.text(heading)?.slice(0, LONGEST_WORDS) ?? null;
  const status = row.text('status');
  const isOfSeries = row.text('series') !== null;
  const settled = isOfSeries && status !== null ? settledOf(status) : status;
  return {
    value,
    asSent: (value.of === 'pressure' ? asSent(row) : null) ?? words('sentAs'),
    by: words('saidBy') ?? words('agent'),
    // Where a reading of a series was taken is the most that its reader must know.
    method: isOfSeries ? placeOf(row.text('seriesOf')) : (words('method') ?? words('saidHow')),
    site:
      [words('side'), words('cuffSite') ?? words('temperatureSite')]
        .filter((one) => one !== null)
        .join(' ') || words('saidWhere'),
    posture: words('posture'),
    interpretation: null,
    status: REPORTED_STATUSES.find((one) => one === settled) ?? 'unknown',
    until: untilIn(row),
    note: row.text('note')?.slice(0, LONGEST_NOTE) ?? null,
    source: { format: 'csv', id },
    saidAt: instantIn(row.text('recordedAt')),
    ...(value.of === 'pressure' ? posed : NOT_POSED),
  };
}

/** When the record that wrote the table took the value in; null where a spreadsheet left no instant. */
function instantIn(text: string | null): string | null {
  const read = stamp.shape.at.safeParse(text);
  return read.success ? read.data : null;
}

/** The end of the time that a value from elsewhere is a mean of; null for one reading. */
function untilIn(row: Row): string | null {
  const until = reportedContent.shape.until.safeParse(row.text('meanUntil'));
  return until.success ? until.data : null;
}

function placeOf(seriesOf: string | null): string | null {
  return seriesOf === 'home' ? 'at home' : seriesOf === 'ambulatory' ? 'over 24 hours' : null;
}

/** How far a reading of a series is settled: its status says first where it was taken. */
function settledOf(status: string): string {
  if (status === 'entered-in-error') return status;
  return (['preliminary', 'amended'] as const).find((one) => status.endsWith(`-${one}`)) ?? 'final';
}

/** A pressure of three numbers as it was written, `118/62/0`: where sounds muffled has no place of its own in a value from elsewhere. */
function asSent(row: Row): string | null {
  const numbers = ['systolic', 'muffled', 'diastolic'].map((heading) => row.text(heading));
  return numbers.includes(null) ? null : numbers.join('/');
}

/** Longer words than these are cut. Characters; source: decision of this project. */
const LONGEST_WORDS = 200;
const LONGEST_NOTE = 1000;

/** A number as this program and spreadsheets write one: never hexadecimal, never with a thousands sign. */
const NUMBER = /^-?\d+(\.\d+)?$/;
const NUMBER_WITH_COMMA = /^-?\d+([.,]\d+)?$/;

/** The cells of one record under their headings, and what is wrong with them. */
class Row {
  readonly line: number;
  readonly cells: readonly string[];
  readonly refusals: Refusal[] = [];
  private readonly headings: readonly string[];
  private readonly hasDecimalComma: boolean;

  constructor({ line, cells }: TableRecord, headings: readonly string[], { hasDecimalComma }: Table) {
    this.line = line;
    this.cells = cells;
    this.headings = headings;
    this.hasDecimalComma = hasDecimalComma;
  }

  /** The text under a heading, without the apostrophe that keeps a spreadsheet from running it; null for an empty cell. */
  text(heading: string): string | null {
    const cell = this.cells[this.headings.indexOf(heading)] ?? '';
    const isGuarded = heading === 'number' ? cell.startsWith("'") : /^'[=+\-@\t\r]/.test(cell);
    const plain = isGuarded ? cell.slice(1) : cell;
    return plain.trim() === '' ? null : plain;
  }

  /** Whether a cell says something without the apostrophe that keeps a spreadsheet from making a number of it. */
  isBare(heading: string): boolean {
    const cell = this.cells[this.headings.indexOf(heading)] ?? '';
    return cell.trim() !== '' && !cell.startsWith("'");
  }

  /** The number under a heading; null for an empty cell, and for one that is refused. */
  number(heading: string): number | null {
    const text = this.text(heading)?.trim() ?? null;
    if (text === null) return null;
    if (!(this.hasDecimalComma ? NUMBER_WITH_COMMA : NUMBER).test(text)) {
      this.refuse(heading, 'not-a-number', 'a-number', text);
      return null;
    }
    return Number(text.replace(',', '.'));
  }

  refuse(
    heading: string,
    code: RefusalCode,
    expected: string,
    got: unknown,
    choices: readonly string[] = [],
    figures: Refusal['figures'] = {},
  ): void {
    this.refusals.push(refusal(heading, code, expected, got, { line: this.line, choices, figures }));
  }

  newerSchema(): Refusal | null {
    const schema = this.text('schema');
    const number = Number(/^evenfall-chart-(\d+)$/.exec(schema ?? '')?.[1] ?? Number.NaN);
    if (number <= CSV_SCHEMA_NUMBER) return null;
    const figures = { newest: CSV_SCHEMA_NUMBER };
    return refusal('schema', schema === null ? 'missing' : 'unknown-id', 'schema-of-chart', schema, {
      line: this.line,
      figures,
    });
  }

  /** A line of separators alone, as spreadsheets leave them under a table. */
  isEmpty(): boolean {
    return this.cells.every((cell) => cell.trim() === '');
  }

  /** A row of nobody is of nobody's chart. */
  ofNobody(): Refusal {
    return refusal('person', 'missing', 'one-subject', null, { line: this.line });
  }

  /** A row of another width: a delimiter within a cell, or a line that was cut. */
  misshapen(wanted: number): Refusal {
    const figures = { cells: this.cells.length, wanted };
    return refusal('', 'contradicts', 'cells-as-headings', this.cells.length, { line: this.line, figures });
  }
}

/** The number of a heading's column from 1, in a table; null where it has no such heading. */
export function columnOf(text: string, heading: string): number | null {
  const table = readTable(text);
  const at = table.ok ? (table.value.records[0]?.cells.indexOf(heading) ?? -1) : -1;
  return at < 0 ? null : at + 1;
}
