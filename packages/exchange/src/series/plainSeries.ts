import type { SeriesReading } from '@evenfall/clinical';
import { type PlainHeading, plainHeading } from './plainHeading.js';
import { plainRows } from './plainRows.js';
import type { SeriesChoices } from './seriesRead.js';

/** A table that is exactly as it should be; null of one that is not in any way, which is then read the long way. */
export type PlainSeries = PlainHeading & {
  readonly readings: readonly SeriesReading[];
  readonly lines: readonly number[];
};

/**
 * The fast way for bulk files: commas, a heading, `2025-03-09T01:30+01:00`, whole numbers or blanks, and nothing else. It answers
 * what the long way would, or null.
 *
 * @param given a text, or the bytes of one in UTF-8: to look at a sign of a text costs several times as much as at a byte, and no
 *   sign of a plain row has two
 */
export function plainSeries(given: string | Uint8Array, choices: SeriesChoices): PlainSeries | null {
  if (choices.mapping !== null || choices.zone !== null || choices.unit === 'kPa') return null;
  const bytes = typeof given === 'string' ? new TextEncoder().encode(given) : given;
  const heading = plainHeading(bytes);
  if (heading === null) return null;
  const rows = plainRows(bytes, heading.columns, choices.kind === 'home');
  return rows === null ? null : { ...rows, headings: heading.headings, columns: heading.columns };
}
