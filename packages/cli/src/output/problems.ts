import type { Problem, Words } from '@evenfall/words';
import { jsonLine } from './json.js';

/** Most problems of one file that are read one by one, and most of what came that is quoted. Source: decision. */
const MOST_OF_FILE = 10;
const MOST_QUOTED = 60;

/**
 * Problems as standard error has them: one object with `--json`, else a line each, `FILE:LINE: FIELD: expected ..., got ...`;
 * of a file that is something else altogether the first ones, and how many more. Source: docs/conventions.md section 2.
 */
export function problemText(problems: readonly Problem[], json: boolean, words: Words): string {
  if (json) return jsonLine({ problems });
  const lines: string[] = [];
  for (const file of new Set(problems.map((problem) => problem.file))) {
    const ofFile = problems.filter((problem) => problem.file === file);
    const shown = file === null ? ofFile : ofFile.slice(0, MOST_OF_FILE);
    lines.push(...shown.map((problem) => problemLine(problem, words)));
    const more = ofFile.length - shown.length;
    if (more > 0) lines.push(`${file}: ${words.sentence('commandLine.moreProblems', { problems: more })}`);
  }
  return lines.map((line) => `${line}\n`).join('');
}

function quoted(got: string | null): string | null {
  return got === null || got.length <= MOST_QUOTED ? got : `${got.slice(0, MOST_QUOTED - 1)}…`;
}

function problemLine({ file, line, field, code, expected, got, message }: Problem, words: Words): string {
  const place = file === null ? [] : [line === null ? file : `${file}:${line}`];
  if (code === 'fault') return `evenfall: ${message}`;
  if (expected === null) return [...(line === null ? ['evenfall'] : place), message].join(': ');
  // Of a whole file, or where something came that cannot be quoted, "nothing" would not be true.
  const isUnquoted = got === null && (code !== 'missing' || field === null);
  const said = isUnquoted
    ? words.sentence('commandLine.expected', { expected })
    : words.sentence('commandLine.expectedGot', { expected, got: quoted(got) });
  return [...place, ...(field === null ? [] : [field]), said].join(': ');
}
