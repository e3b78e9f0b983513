import { createReadStream } from 'node:fs';
import { access, constants } from 'node:fs/promises';
import { refusal } from '@evenfall/clinical';
import type { Problem } from '@evenfall/words';
import { type Answer, refused } from '../answer.js';
import { command } from '../command.js';
import { STANDARD_INPUT } from '../input/readInput.js';
import { controlRequest, textOf } from '../keeper/controlRequest.js';
import { type FileAndRecord, fileAndRecord, RECORD_OPTIONS, withKeeper } from '../keeper/withKeeper.js';

/** `evenfall restore FILE`: a backup into an empty record, all or nothing; into a new folder, the record is made there. */
export const restore = command<FileAndRecord>({
  name: 'restore',
  summary: 'commands.restore',
  options: RECORD_OPTIONS,
  operands: { hint: 'FILE|-', least: 1, most: 1, expected: 'one-file' },
  parse: fileAndRecord,

  async run({ file, ...record }, context) {
    const { words, stdin } = context;
    if (file !== STANDARD_INPUT && !(await isReadable(file))) {
      return refused([words.problem(refusal('', 'missing', 'readable-file', null), { file })]);
    }
    const into = async (controlSocket: string): Promise<Answer> => {
      const bytes = file === STANDARD_INPUT ? stdin : (createReadStream(file) as AsyncIterable<Uint8Array>);
      const body = { type: 'application/json', bytes };
      const answer = await controlRequest(controlSocket, 'POST', '/control/restore', body);
      const said = JSON.parse(await textOf(answer)) as {
        lines: { [line: string]: number };
        problems: Problem[];
      };
      if (answer.statusCode === 422) return refused(said.problems.map((problem) => ({ ...problem, file })));
      if (answer.statusCode !== 200) throw new Error(`the server answered ${answer.statusCode}`);
      const { lines } = said;
      const figures = { entries: lines.entry ?? 0, persons: lines.person ?? 0 };
      return { kind: 'one', json: { file, lines }, lines: [words.sentence('commandLine.restored', figures)] };
    };
    return await withKeeper(record, context, into, { makes: true });
  },
});

async function isReadable(path: string): Promise<boolean> {
  return await access(path, constants.R_OK).then(
    () => true,
    () => false,
  );
}
