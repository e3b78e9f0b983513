import type { Problem, Words } from '@evenfall/words';
import type { Answer, FileLines } from '../answer.js';
import type { World } from '../command.js';
import { jsonLine } from './json.js';
import { problemText } from './problems.js';
import { write } from './stream.js';

/** What the program ends with. Source: docs/conventions.md section 2. */
export const EXIT = { answered: 0, fault: 1, refused: 2, interrupted: 130 } as const;

type Streams = Pick<World, 'stdout' | 'stderr'>;

/** Puts an answer on the streams it belongs to and says the exit code. The only place that decides either. */
export async function deliver(
  answer: Answer,
  json: boolean,
  words: Words,
  streams: Streams,
): Promise<number> {
  switch (answer.kind) {
    case 'one':
      await write(streams.stdout, json ? jsonLine(answer.json) : answer.lines.map((line) => `${line}\n`).join('')); // biome-ignore format: one thought
      return EXIT.answered;
    case 'document':
      await write(streams.stdout, answer.text);
      if (answer.note !== undefined) await write(streams.stderr, `evenfall: ${answer.note}\n`);
      return EXIT.answered;
    case 'done':
      return EXIT.answered;
    case 'unsound':
      await write(streams.stderr, problemText(answer.problems, json, words));
      return EXIT.fault;
    case 'refused':
      await write(streams.stderr, problemText(answer.problems, json, words));
      return EXIT.refused;
    case 'files':
      return deliverFiles(answer.lines, json, words, streams);
  }
}

/** Lines as soon as their files are done; the problems of all files together at the end. */
async function deliverFiles(
  lines: AsyncIterable<FileLines>,
  json: boolean,
  words: Words,
  streams: Streams,
): Promise<number> {
  const problems: Problem[] = [];
  for await (const { text, problems: found } of lines) {
    problems.push(...found);
    await write(streams.stdout, text);
  }
  if (problems.length === 0) return EXIT.answered;
  await write(streams.stderr, problemText(problems, json, words));
  return EXIT.refused;
}

/** A fault of the program or the machine: standard output stays empty. */
export async function deliverFault(
  fault: unknown,
  json: boolean,
  words: Words,
  { stderr }: Streams,
): Promise<number> {
  const cause = fault instanceof Error ? fault.message : String(fault);
  const message = words.sentence('commandLine.fault', { cause });
  const nowhere = { file: null, line: null, column: null, field: null, expected: null, got: null };
  await write(stderr, problemText([{ ...nowhere, code: 'fault', message }], json, words));
  return EXIT.fault;
}
