import { existsSync, readFileSync } from 'node:fs';
import process from 'node:process';
import { fileURLToPath } from 'node:url';
import { program } from './program.js';

/** The process around the program: its real streams, clock and signals. `bin/evenfall.js` imports it. */

const interrupted = new AbortController();
process.once('SIGINT', () => interrupted.abort());
process.once('SIGTERM', () => interrupted.abort());

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
  env: process.env,
  now: () => new Date(),
  interrupted: interrupted.signal,
  version,
  serverMain: fileURLToPath(new URL('../../server/dist/main.js', import.meta.url)),
  pages: existsSync(pages) ? pages : null,
});
process.exit(code);
