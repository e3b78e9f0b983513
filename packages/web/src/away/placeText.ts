import type { Words } from '@evenfall/words';
import type { GridTable } from './weekGrid.js';

/** Where a row stands: its place in the grid, or its line. */
export function rowName(line: number, table: GridTable | null, words: Words): string {
  const row = table?.rowOfLine.get(line);
  if (row === undefined) return words.sentence('away.line', { line });
  return words.sentence('away.gridRow', {
    day: row.day,
    part: words.sentence(`away.${row.part}`),
    reading: row.reading,
  });
}
