import type { SeriesFlag } from '@evenfall/exchange';
import type { Words } from '@evenfall/words';

/** Something that was settled by a rule while a table was read. */
export function flagText({ code, lines }: SeriesFlag, words: Words): string {
  return words.sentence(`series.${code}` as 'series.time-twice', {
    lines: linesText(lines),
    count: lines.length,
  });
}

/** Line numbers with runs joined: `2-5, 9`. */
export function linesText(lines: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const line of lines.toSorted((a, b) => a - b)) {
    const last = runs.at(-1);
    if (last !== undefined && line <= last[1] + 1) last[1] = line;
    else runs.push([line, line]);
  }
  return runs.map(([from, to]) => (from === to ? String(from) : `${from}-${to}`)).join(', ');
}
