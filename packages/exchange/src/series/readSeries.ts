import { plainSeries } from './plainSeries.js';
import { findColumns } from './seriesColumns.js';
import {
  columnQuestions,
  dateQuestions,
  namedUnit,
  numberQuestions,
  settledOrder,
  zoneQuestions,
} from './seriesQuestions.js';
import type { ReadSeries, SeriesChoices } from './seriesRead.js';
import { type SeriesRecord, seriesRecords } from './seriesRecords.js';
import { SeriesTable } from './seriesTable.js';
import { SPACED_COLUMNS, spacedCells } from './spacedLine.js';
import { zoneClock } from './zoneClock.js';

/**
 * Reads a table, a paste or typed lines of readings. Reads no clock; what cannot be told is asked, never guessed: the order of a date,
 * the zone of a time without offset, kPa, columns that look swapped, columns that nothing names.
 *
 * @param given a text, or its bytes in UTF-8: of a large file they are read in less time
 *
 * Errors: none; what cannot be read is in `refused` or `questions`. A zone that does not exist is as if none were given:
 * check it first (`isZone`).
 * Source: docs/conventions.md sections 2 and 8; out-of-office handbook 20.
 */
export function readSeries(given: string | Uint8Array, choices: SeriesChoices): ReadSeries {
  const plain = choices.isTyped === true ? null : plainSeries(given, choices);
  if (plain === null)
    return readAnySeries(typeof given === 'string' ? given : new TextDecoder().decode(given), choices);
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
  const table = new SeriesTable(mapping, choices.kind, choices.isTyped);
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
