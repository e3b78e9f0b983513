import type { Parsed, Refusal } from '@evenfall/clinical';
import type { Problem, Words } from '@evenfall/words';
import type { FileLines, Json } from '../answer.js';
import { jsonLine } from '../output/json.js';

/** What is made of one file, for programs. */
export type Maker<Value> = {
  readonly of: (bytes: Uint8Array) => Parsed<Value>;
  readonly json: (value: Value) => Json;
};

/** The answer for programs to a file that was read, or what is wrong. */
export function madeOf<Value>({ of, json }: Maker<Value>, bytes: Parsed<Uint8Array>): Parsed<Json> {
  const parsed = bytes.ok ? of(bytes.value) : bytes;
  return parsed.ok ? { ok: true, value: json(parsed.value) } : parsed;
}

/** The line of one file among several: its answer, or what is wrong with it. */
export function fileLines(file: string, answered: Parsed<Json>, words: Words): FileLines {
  if (answered.ok) return { text: jsonLine({ file, ...answered.value }), problems: [] };
  const problems = problemsOf(file, answered.refusals, words);
  return { text: jsonLine({ file, problems }), problems };
}

/** What is wrong with a file, with the number of the column where its text was a table and its reader said one. */
export function problemsOf(file: string, refusals: readonly Refusal[], words: Words): Problem[] {
  return refusals.map((one) => words.problem(one, { file, column: columnOf(one) }));
}

function columnOf(one: Refusal): number | null {
  return 'column' in one && typeof one.column === 'number' ? one.column : null;
}
