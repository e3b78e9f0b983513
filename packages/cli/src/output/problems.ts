import type { Problem, Words } from '@evenfall/words';
import { jsonLine } from './json.js';

/**
 * Problems as standard error has them: one object with `--json`, else a line each,
 * `FILE:LINE: FIELD: expected ..., got ...`. Source: docs/conventions.md section 2.
 */
export function problemText(problems: readonly Problem[], json: boolean, words: Words): string {
  if (json) return jsonLine({ problems });
  return problems.map((problem) => `${problemLine(problem, words)}\n`).join('');
}

function problemLine({ file, line, field, code, expected, got, message }: Problem, words: Words): string {
  const place = file === null ? [] : [line === null ? file : `${file}:${line}`];
  if (code === 'fault') return `evenfall: ${message}`;
  if (expected === null) return [...(line === null ? ['evenfall'] : place), message].join(': ');
  // Of a whole file, or where something came that cannot be quoted, "nothing" would not be true.
  const isUnquoted = got === null && (code !== 'missing' || field === null);
  const said = isUnquoted
    ? words.sentence('commandLine.expected', { expected })
    : words.sentence('commandLine.expectedGot', { expected, got });
  return [...place, ...(field === null ? [] : [field]), said].join(': ');
}
