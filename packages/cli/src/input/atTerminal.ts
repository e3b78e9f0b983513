import { createInterface } from 'node:readline';
import { Writable } from 'node:stream';

type Ask = (prompt: string) => Promise<string>;

/** Asks for a line at the terminal. */
export function askLine(input: NodeJS.ReadStream, output: NodeJS.WritableStream): Ask {
  return asking(input, output, true);
}

/** Asks for a line at the terminal that is not shown while it is typed. */
export function askSecret(input: NodeJS.ReadStream, output: NodeJS.WritableStream): Ask {
  return asking(input, output, false);
}

function asking(input: NodeJS.ReadStream, output: NodeJS.WritableStream, isShown: boolean): Ask {
  return (prompt) =>
    new Promise((resolve) => {
      const silent = new Writable({ write: (_chunk, _encoding, done) => done() });
      const lines = createInterface({ input, output: isShown ? output : silent, terminal: true });
      // Ctrl-C while it is asked for reaches the program as everywhere else.
      lines.on('SIGINT', () => process.kill(process.pid, 'SIGINT'));
      lines.on('close', () => resolve(''));
      if (!isShown) output.write(`${prompt} `);
      lines.question(isShown ? `${prompt} ` : '', (typed) => {
        resolve(typed);
        if (!isShown) output.write('\n');
        lines.close();
      });
    });
}
