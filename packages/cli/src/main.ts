import { existsSync, readFileSync } from 'node:fs';
import process from 'node:process';
import { fileURLToPath } from 'node:url';
import { askLine, askSecret } from './input/atTerminal.js';
import { program } from './program.js';

/** The process around the program: its real streams, clock and signals. `tools/bundle.mjs` makes one program of it, which `bin/evenfall.js` imports. */

const interrupted = new AbortController();

/** One Ctrl-C may arrive twice: from the terminal, and passed on by npm. A later one is meant. Source: decision. */
const ONE_PRESS_MS = 1_000;
let firstAt: number | null = null;
function interrupt(): void {
  firstAt ??= performance.now();
  if (performance.now() - firstAt > ONE_PRESS_MS) process.exit(130); // a server of ours stops in order all the same
  interrupted.abort();
}
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, interrupt);

// A reader that has seen enough (`| head`) closes the pipe; that is no fault and needs no word.
for (const stream of [process.stdout, process.stderr]) {
  stream.on('error', (fault: NodeJS.ErrnoException) => {
    if (fault.code === 'EPIPE') process.exit(0);
  });
}

const { version } = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8')) as {
  version: string;
};

const pages = fileURLToPath(new URL('../../web/dist', import.meta.url));

const code = await program(process.argv.slice(2), {
  stdin: process.stdin,
  stdout: process.stdout,
  stderr: process.stderr,
  askLine: process.stdin.isTTY ? askLine(process.stdin, process.stderr) : null,
  askSecret: process.stdin.isTTY ? askSecret(process.stdin, process.stderr) : null,
  env: process.env,
  now: () => new Date(),
  interrupted: interrupted.signal,
  version,
  serverMain: fileURLToPath(new URL('../../server/bundle/main.js', import.meta.url)),
  pages: existsSync(pages) ? pages : null,
});
process.exit(code);
