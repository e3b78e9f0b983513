import { createInterface } from 'node:readline';
import { Writable } from 'node:stream';

/** Asks for a line at the terminal that is not shown while it is typed. */
export function askSecret(
  input: NodeJS.ReadStream,
  output: NodeJS.WritableStream,
): (prompt: string) => Promise<string> {
  return (prompt) =>
    new Promise((resolve) => {
      output.write(`${prompt} `);
      const silent = new Writable({ write: (_chunk, _encoding, done) => done() });
      const lines = createInterface({ input, output: silent, terminal: true });
      // Ctrl-C while it is asked for reaches the program as everywhere else.
      lines.on('SIGINT', () => process.kill(process.pid, 'SIGINT'));
      lines.on('close', () => resolve(''));
      lines.question('', (typed) => {
        resolve(typed);
        output.write('\n');
        lines.close();
      });
    });
}
