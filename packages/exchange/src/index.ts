export type { Exported } from './csv/chartCsv.js';
export { chartCsv } from './csv/chartCsv.js';
export type { Cell } from './csv/csv.js';
export { csv } from './csv/csv.js';
export type { FromRow, ReadChartCsv } from './csv/read/readChartCsv.js';
export { columnOf, readChartCsv } from './csv/read/readChartCsv.js';
export { CSV_SCHEMA_NUMBER } from './csv/schemaNumber.js';
export type { BundleOf, ProtocolKept } from './fhir/chartBundle.js';
export { chartBundle } from './fhir/chartBundle.js';
export type { AsKept } from './fhir/provenanceOf.js';
export type { ReadBundle } from './fhir/read/readBundle.js';
export { readBundle } from './fhir/read/readBundle.js';
export type { OwnEntry } from './fhir/read/readOwn.js';
export { noticesOf } from './notices.js';
export { byOrderOfFiles } from './reading/byOrderOfFiles.js';
export type { Bringing, Placed, Read, Reported } from './reading/reported.js';
export { reportedEntries, takenBackEntries, uuidOf } from './reading/reported.js';
export type { BundleTable } from './series/bundleTable.js';
export { bundleTable } from './series/bundleTable.js';
export type { WrittenPressure } from './series/pressureText.js';
export { pressureOf } from './series/pressureText.js';
export { readSeries } from './series/readSeries.js';
export type { SeriesMapping } from './series/seriesColumns.js';
export { areSameHeadings } from './series/seriesColumns.js';
export type {
  BesideReading,
  ReadSeries,
  RefusedRow,
  SeriesChoices,
  SeriesFlag,
  SeriesFlagCode,
  SeriesProblem,
  SeriesQuestion,
} from './series/seriesRead.js';
export { NOTHING_SAID } from './series/seriesRead.js';
export type { SeriesColumn } from './series/seriesWords.js';
export { SERIES_COLUMNS } from './series/seriesWords.js';
export { sideOf } from './series/sideWords.js';
export type { DateOrder } from './series/timeText.js';
export { DATE_ORDERS, daysOf } from './series/timeText.js';
export { isZone } from './series/zoneClock.js';
export type { TextField, TextOf } from './text/roundFields.js';
export { TEXT_FIELDS } from './text/roundFields.js';
export type { SaidUnder, TemplateId } from './text/roundText.js';
export { broughtTemplate, leftOutOfText, roundText, TEMPLATE_IDS } from './text/roundText.js';
export { seriesTexts } from './text/seriesTexts.js';
