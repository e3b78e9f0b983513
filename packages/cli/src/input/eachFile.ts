import { type Parsed, refusal } from '@evenfall/clinical';
import { type Answer, type FileLines, refused } from '../answer.js';
import type { Context } from '../command.js';
import { fileLines, type Maker, madeOf, problemsOf } from './fileLines.js';
import { filesOf, type Named } from './filesOf.js';
import { linesByThreads, type Threads, threadsFor } from './linesByThreads.js';
import { bytesOfFile, readBytes, textIn } from './readInput.js';

/** What a command makes of one file, and how it shows what it made to programs and to people. */
export type Answerer<Value> = Maker<Value> & { readonly lines: (value: Value) => readonly string[] };

/** What is made of a file that is text to the command. */
export function ofText<Value>(of: (text: string) => Parsed<Value>): Maker<Value>['of'] {
  return (bytes) => of(textIn(bytes));
}

/**
 * Answers for one file, or for several and folders: then one JSON object a line, each with `file`, in order of path, and a
 * refused file does not stop the rest. Source: docs/conventions.md section 2.
 *
 * @param threads where the same is made by other threads of many files; null for a command that is done in this one
 */
export async function eachFile<Value>(
  operands: readonly string[],
  answerer: Answerer<Value>,
  context: Context,
  threads: Threads | null = null,
): Promise<Answer> {
  const named = await filesOf(operands);
  if (named.kind === 'several') return { kind: 'files', lines: linesOf(named, answerer, context, threads) };
  const bytes = await readBytes(named.file, context.stdin);
  const parsed = bytes.ok ? answerer.of(bytes.value) : bytes;
  if (!parsed.ok) return refused(problemsOf(named.file, parsed.refusals, context.words));
  return { kind: 'one', json: answerer.json(parsed.value), lines: answerer.lines(parsed.value) };
}

async function* linesOf<Value>(
  { files, emptyFolders }: Extract<Named, { kind: 'several' }>,
  answerer: Answerer<Value>,
  { stdin, words }: Context,
  threads: Threads | null,
): AsyncIterable<FileLines> {
  for (const file of emptyFolders) {
    yield fileLines(file, { ok: false, refusals: [refusal('', 'missing', 'files-in-folder', null)] }, words);
  }
  const count = threads === null ? 1 : threadsFor(files, threads);
  if (threads !== null && count > 1) {
    const here = (file: string) => fileLines(file, madeOf(answerer, bytesOfFile(file)), words);
    yield* linesByThreads(files, threads, count, here);
    return;
  }
  // One at a time, so that a folder of any size fits.
  for (const file of files) yield fileLines(file, madeOf(answerer, await readBytes(file, stdin)), words);
}
