import { actFirstIn, type Flag, type Parsed, type Refusal } from '@evenfall/clinical';
import {
  type BundleTable,
  bundleTable,
  type ReadSeries,
  readSeries,
  type SeriesChoices,
  type SeriesQuestion,
} from '@evenfall/exchange';
import type { SentenceKey, Words } from '@evenfall/words';
import { textIn } from '../../input/readInput.js';

/**
 * The readings of a text in UTF-8, or what must be said first: a question that is open refuses the file. Of a FHIR bundle, a
 * line is the place of an Observation among those of pressures, the first being 2.
 */
export function seriesOfText(bytes: Uint8Array, choices: SeriesChoices): Parsed<ReadSeries> {
  const bundle = looksLikeJson(bytes) ? bundleTable(textIn(bytes), choices.kind) : null;
  const read = bundle === null ? readSeries(bytes, choices) : ofBundle(bundle, choices);
  const refusals: Refusal[] = read.questions.map(asked);
  return refusals.length > 0 ? { ok: false, refusals } : { ok: true, value: read };
}

/** Whether the first byte that is no blank and no byte-order mark opens an object: what does not is read as a table, by its bytes. */
function looksLikeJson(bytes: Uint8Array): boolean {
  const first = bytes.find((byte) => byte > SPACE && !BYTE_ORDER_MARK.includes(byte));
  return first === OPENING_BRACE;
}

const SPACE = 32;
const OPENING_BRACE = 123;
const BYTE_ORDER_MARK = [0xef, 0xbb, 0xbf];

/** A table of our own making: of its columns and units nothing is asked, and what is wrong is said as of the bundle. */
function ofBundle({ text, problems }: BundleTable, choices: SeriesChoices): ReadSeries {
  const sure: SeriesChoices = { ...choices, unit: 'mmHg', mapping: null, areColumnsSure: true };
  const read = readSeries(text, sure);
  const refused = read.refused.map((row) => {
    const wrong = problems.get(row.line)?.map((one) => ({ ...one, column: null }));
    return wrong === undefined ? row : { ...row, problems: wrong };
  });
  return { ...read, refused };
}

function asked({ problem }: SeriesQuestion): Refusal {
  return problem;
}

/** A reading that somebody must act on, whatever the mean; used or not. */
export type ActFirst = {
  readonly row: number;
  readonly systolic: number | null;
  readonly diastolic: number | null;
  readonly flag: Flag;
};

/**
 * Readings that may be an emergency or are very low, also of rows that are left out or refused. A child's low
 * pressure has other limits, which need a height. Source: bedside handbook 3.16; docs/hazards.md.
 */
export function actFirstOf(read: ReadSeries, isPregnant: boolean, isChild: boolean): ActFirst[] {
  const ofReadings = read.readings.map(({ index, systolic, diastolic }) => {
    return { line: read.lines[index - 1] as number, systolic, diastolic };
  });
  const rows = [...ofReadings, ...read.refused];
  return actFirstIn(rows, isPregnant, isChild)
    .map(({ row: { line, systolic, diastolic }, flag }) => ({ row: line, systolic, diastolic, flag }))
    .sort((a, b) => a.row - b.row);
}

export function actFirstJson(found: readonly ActFirst[], words: Words) {
  return found.map(({ row, systolic, diastolic, flag }) => ({
    row,
    systolic,
    diastolic,
    ...words.flagged(flag),
  }));
}

/** Each kind once, with its lines. */
export function actFirstRows(found: readonly ActFirst[], words: Words): string[][] {
  const codes = [...new Set(found.map(({ flag }) => flag.code))];
  return codes.map((code) => {
    const ofCode = found.filter(({ flag }) => flag.code === code);
    const [first] = ofCode as [ActFirst];
    const pressure = ofCode
      .slice(0, MOST_SHOWN)
      .map(({ systolic, diastolic }) => `${systolic ?? '-'}/${diastolic ?? '-'}`)
      .join(', ');
    const lines = linesText(ofCode.map(({ row }) => row));
    const detail = words.detail(first.flag);
    return [
      words.sentence('series.actFirst'),
      words.sentence('series.linePressure', { lines, count: ofCode.length, pressure, detail }),
    ];
  });
}

const MOST_SHOWN = 5;

/** Line numbers with runs joined: `2-5, 9`. */
export function linesText(lines: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const line of [...lines].sort((a, b) => a - b)) {
    const last = runs.at(-1);
    if (last !== undefined && line <= last[1] + 1) last[1] = line;
    else runs.push([line, line]);
  }
  return runs.map(([from, to]) => (from === to ? String(from) : `${from}-${to}`)).join(', ');
}

/** A row that is not in the mean, with the first reason; `reason` is for programs, `detail` for people. */
export type NotUsed = {
  readonly row: number;
  readonly reason: string;
  readonly detail: string;
  readonly figures: Flag['figures'];
  readonly field: string | null;
  readonly column: number | null;
  readonly expected: string | null;
  readonly got: string | null;
};

/** Rows that could not be read, each with its first problem. */
export function refusedRows(read: ReadSeries, words: Words): NotUsed[] {
  return read.refused.map(({ line, problems }) => {
    const [first] = problems;
    if (first === undefined) throw new Error(`line ${line} was refused for nothing`);
    const { message, expected, field } = words.problem(first);
    const { code: reason, figures, column, got } = first;
    return { row: line, reason, detail: message, figures, field, column, expected, got };
  });
}

/** A reading that a rule leaves out. */
export function leftOut(
  { index, code, figures }: Flag & { index: number },
  read: ReadSeries,
  words: Words,
): NotUsed {
  const row = read.lines[index - 1] as number;
  const detail = words.detail({ code, figures });
  return { row, reason: code, detail, figures, field: null, column: null, expected: null, got: null };
}

/** Lines of a text for everything left out: what has one reason stands together. */
export function leftOutRows(found: readonly NotUsed[], words: Words): string[][] {
  const details = [...new Set(found.map(({ detail }) => detail))];
  return details.map((detail) => {
    const rows = found.filter((one) => one.detail === detail).map(({ row }) => row);
    return [words.sentence('series.leftOut'), words.sentence('series.lines', { lines: linesText(rows), count: rows.length, detail })]; // biome-ignore format: one thought
  });
}

/** What was settled by a rule while the file was read, as every answer says it. */
export function readFlags(read: ReadSeries, words: Words) {
  return read.flags.map(({ code, lines }) => {
    const key: SentenceKey = `series.${code}`;
    const detail = words.sentence(key as 'series.time-twice', {
      lines: linesText(lines),
      count: lines.length,
    });
    return { code, detail, figures: { rows: lines.length } };
  });
}

/** A date from days since 1970-01-01. */
export function dateText(day: number): string {
  return new Date(day * 86_400_000).toISOString().slice(0, 10);
}
