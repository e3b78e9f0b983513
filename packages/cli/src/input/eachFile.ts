import { type Parsed, type Refusal, refusal } from '@evenfall/clinical';
import type { Problem } from '@evenfall/words';
import { type Answer, type FileRow, type Json, refused } from '../answer.js';
import type { Context } from '../command.js';
import { filesOf, type Named } from './filesOf.js';
import { readInput } from './readInput.js';

/** What a command makes of one file's text. */
export type OfText<Value> = (text: string) => Parsed<Value>;

/** How it shows what it made. */
export type Shown<Value> = {
  readonly json: (value: Value) => Json;
  readonly lines: (value: Value) => readonly string[];
};

/**
 * Answers for one file, or for several and folders: then one JSON object a line, each with `file`, and a refused
 * file does not stop the rest. Source: docs/conventions.md section 2.
 */
export async function eachFile<Value>(
  operands: readonly string[],
  ofText: OfText<Value>,
  shown: Shown<Value>,
  context: Context,
): Promise<Answer> {
  const named = await filesOf(operands);
  if (named.kind === 'several') return { kind: 'files', rows: rowsOf(named, ofText, shown, context) };
  const parsed = await parsedFile(named.file, ofText, context);
  if (!parsed.ok) return refused(problemsOf(named.file, parsed.refusals, context));
  return { kind: 'one', json: shown.json(parsed.value), lines: shown.lines(parsed.value) };
}

async function* rowsOf<Value>(
  { files, emptyFolders }: Extract<Named, { kind: 'several' }>,
  ofText: OfText<Value>,
  { json }: Shown<Value>,
  context: Context,
): AsyncIterable<FileRow> {
  for (const file of emptyFolders) {
    const none = refusal('', 'missing', 'files-in-folder', null);
    yield { file, problems: problemsOf(file, [none], context) };
  }
  // The next file is opened while this one is worked out; never more than that one, so that a folder of any size fits.
  let next = textOf(files[0], context);
  for (const [at, file] of files.entries()) {
    const text = await next;
    next = textOf(files[at + 1], context);
    // A fault of the next is thrown when its turn comes, and is no fault of this one.
    next.catch(() => undefined);
    const parsed = text.ok ? ofText(text.value) : text;
    yield parsed.ok
      ? { file, json: json(parsed.value) }
      : { file, problems: problemsOf(file, parsed.refusals, context) };
  }
}

/** The text of a file, or of none as if it were empty: nobody reads what comes after the last. */
async function textOf(file: string | undefined, { stdin }: Context): Promise<Parsed<string>> {
  return file === undefined ? { ok: true, value: '' } : await readInput(file, stdin);
}

async function parsedFile<Value>(
  file: string,
  ofText: OfText<Value>,
  { stdin }: Context,
): Promise<Parsed<Value>> {
  const text = await readInput(file, stdin);
  return text.ok ? ofText(text.value) : text;
}

function problemsOf(file: string, refusals: readonly Refusal[], { words }: Context): Problem[] {
  return refusals.map((one) => words.problem(one, { file, column: columnOf(one) }));
}

/** The number of the column, where the text was a table and its reader said one. */
function columnOf(one: Refusal): number | null {
  return 'column' in one && typeof one.column === 'number' ? one.column : null;
}
