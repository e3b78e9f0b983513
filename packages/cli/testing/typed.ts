import { Writable } from 'node:stream';
import { fileURLToPath } from 'node:url';
import type { World } from '../src/command.js';
import { program } from '../src/program.js';

/** The program of the server, as it is bundled. */
export const SERVER_MAIN = fileURLToPath(new URL('../../server/bundle/main.js', import.meta.url));

/** What a command line came to. */
export type Ended = {
  readonly code: number;
  readonly stdout: string;
  readonly stderr: string;
  /** Standard output as JSON, one object a line. */
  readonly json: readonly Record<string, unknown>[];
  /** The problems on standard error with `--json`. */
  readonly problems: readonly Record<string, unknown>[];
};

/** Types a command line into the program, in this process. Arguments are split at spaces. */
export async function typed(line: string, more: Partial<World> & { input?: string } = {}): Promise<Ended> {
  return typedArgs(
    line.split(' ').filter((arg) => arg !== ''),
    more,
  );
}

/** The same, for arguments that hold spaces or nothing. */
export async function typedArgs(
  args: readonly string[],
  { input = '', ...more }: Partial<World> & { input?: string } = {},
): Promise<Ended> {
  const out: string[] = [];
  const err: string[] = [];
  const code = await program(args, {
    stdin: bytesOf(input),
    stdout: collecting(out),
    stderr: collecting(err),
    askLine: null,
    askSecret: null,
    env: {},
    now: () => new Date('2025-03-01T08:00:00Z'),
    interrupted: new AbortController().signal,
    version: '0.0.0-test',
    serverMain: SERVER_MAIN,
    pages: null,
    ...more,
  });
  const stdout = out.join('');
  const stderr = err.join('');
  return { code, stdout, stderr, json: jsonLines(stdout), problems: problemsIn(stderr) };
}

function collecting(into: string[]): Writable {
  return new Writable({
    write(chunk, _encoding, done) {
      into.push(String(chunk));
      done();
    },
  });
}

async function* bytesOf(text: string): AsyncIterable<Uint8Array> {
  yield new TextEncoder().encode(text);
}

function jsonLines(text: string): Record<string, unknown>[] {
  const lines = text.split('\n').filter((line) => line.startsWith('{'));
  return lines.map((line) => JSON.parse(line) as Record<string, unknown>);
}

function problemsIn(text: string): Record<string, unknown>[] {
  return text.startsWith('{') ? (JSON.parse(text) as { problems: Record<string, unknown>[] }).problems : [];
}
