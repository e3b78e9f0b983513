import type { SeriesColumn } from './seriesWords.js';
import { readClock, readDate, readTime } from './timeText.js';

/** What the cells of a line of words are, once it was cut. */
export const SPACED_COLUMNS: readonly SeriesColumn[] = ['time', 'systolic', 'diastolic', 'pulse', 'note'];

const SLASHED =
  /(?<=^|[\s,;])(\d{1,3}(?:[.,]\d+)?)\s?[/\\]\s?(\d{1,3}(?:[.,]\d+)?)(?![\d/\\.-]\d?)(?:[\s,;x@p]+(\d{2,3})(?![\d/:.]))?/gi;
const APART =
  /^(.*?)[\s,;]+(\d{2,3}(?:[.,]\d+)?)[\s,;]+(\d{2,3}(?:[.,]\d+)?)(?:[\s,;]+(\d{2,3})(?![\d/:.]))?(?:[\s,;]+(\D.*))?$/;

/** Nobody types a longer line of one reading, and to look through one takes long. Characters; source: decision. */
const LONGEST_LINE = 500;

/**
 * Cuts a line such as `2025-03-01 07:30 142/88 74 after coffee` into time, numbers and a note. The whole line is the
 * first cell where no numbers can be told, so that it is refused and seen.
 */
export function spacedCells(line: string): string[] {
  if (line.length > LONGEST_LINE) return [line, '', '', '', ''];
  for (const found of line.matchAll(SLASHED)) {
    const before = trimmed(line.slice(0, found.index));
    if (before !== '' && !isTime(before)) continue;
    const [whole, systolic = '', diastolic = '', pulse = ''] = found;
    return [before, systolic, diastolic, pulse, trimmed(line.slice(found.index + whole.length))];
  }
  const apart = APART.exec(line);
  if (apart !== null && isTime(trimmed(apart[1] as string))) {
    const [, time = '', systolic = '', diastolic = '', pulse = '', note = ''] = apart;
    return [trimmed(time), systolic, diastolic, pulse, note];
  }
  return [line, '', '', '', ''];
}

function trimmed(text: string): string {
  return text.replace(/^[\s,;:]+|[\s,;:]+$/g, '');
}

function isTime(text: string): boolean {
  return readTime(text) !== null || readDate(text) !== null || readClock(text) !== null;
}
