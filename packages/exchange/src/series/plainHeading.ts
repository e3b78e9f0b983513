import { findColumns } from './seriesColumns.js';
import { seriesRecords } from './seriesRecords.js';
import { roleOfHeading } from './seriesWords.js';

/** What a column of a plain table can be. */
export const PLAIN_COLUMNS = ['time', 'systolic', 'diastolic', 'pulse'] as const;
export type PlainColumn = (typeof PLAIN_COLUMNS)[number];

export type PlainHeading = {
  readonly headings: readonly string[];
  readonly columns: readonly PlainColumn[];
};

/**
 * Headings that were found plain, by their text: a folder has thousands of files with the same. What a plain heading says of its
 * columns no plain row changes; a row that is not plain, and a table without rows, is left to the long way.
 */
const known = new Map<string, PlainHeading>();
const MOST_KNOWN = 100;

/** Longer headings are left to the long way. Characters; source: decision. */
const LONGEST = 400;

const LINE_FEED = 10;
const decoder = new TextDecoder();

/** The heading and the columns of a table in UTF-8, if they are plain; the rows begin on the second line. */
export function plainHeading(bytes: Uint8Array): PlainHeading | null {
  const end = bytes.indexOf(LINE_FEED);
  if (end < 0 || end > LONGEST) return null;
  const text = decoder.decode(bytes.subarray(0, end));
  const before = known.get(text);
  if (before !== undefined) return before;
  const second = bytes.indexOf(LINE_FEED, end + 1);
  const found = headingOf(text, decoder.decode(second < 0 ? bytes : bytes.subarray(0, second)));
  if (found !== null && known.size < MOST_KNOWN) known.set(text, found);
  return found;
}

/**
 * The words of the heading and the first row say what the columns are: every other row is held against that as it is read, and
 * one that says otherwise is not plain.
 */
function headingOf(text: string, start: string): PlainHeading | null {
  const { delimiter, records } = seriesRecords(start);
  if (delimiter !== ',' || records[0]?.line !== 1) return null;
  const { mapping, headingAt, missing, isByContent } = findColumns(records, null);
  const { headings } = mapping;
  if (isByContent || headingAt !== 0 || headings === null || missing.length > 0) return null;
  if (text !== headings.join(',') || headings.some((heading) => /pa\b/i.test(heading))) return null;
  const columns = mapping.columns.map((role) => PLAIN_COLUMNS.find((one) => one === role) ?? null);
  // What many rows together say of a number that no heading names, one row cannot.
  const isNamed = columns.every(
    (role, at) => role === 'time' || roleOfHeading(headings[at] as string) === role,
  );
  return isNamed && isWhole(columns) ? { headings, columns } : null;
}

function isWhole(columns: readonly (PlainColumn | null)[]): columns is readonly PlainColumn[] {
  return !columns.includes(null);
}
