import { createReadStream } from 'node:fs';
import { access, constants } from 'node:fs/promises';
import { refusal } from '@evenfall/clinical';
import { BOOKS } from '@evenfall/record';
import type { Problem, Words } from '@evenfall/words';
import { type Answer, refused } from '../answer.js';
import { command } from '../command.js';
import { STANDARD_INPUT } from '../input/readInput.js';
import { controlRequest, textOf } from '../keeper/controlRequest.js';
import { RECORD_OPTIONS, type Record, recordOf, withKeeper } from '../keeper/withKeeper.js';
import { problemText } from '../output/problems.js';

type Asked = Record & { readonly file: string; readonly person: string | null; readonly book: string };

/** What the keeper says of a file that it took in. */
type Brought = {
  readonly format: string;
  readonly person: string;
  readonly added: number;
  readonly already: number;
  readonly refused: readonly Problem[];
  readonly passedOver: { readonly [type: string]: number };
  readonly older: number;
  readonly byOrder: number;
  readonly unclear: readonly Problem[];
};

/**
 * `evenfall import FILE`: a FHIR bundle of an Evenfall as the same record, of another system as values from elsewhere,
 * or a table that `export` wrote. What is refused is listed by its place, and the rest is kept.
 */
export const importCommand = command<Asked>({
  name: 'import',
  summary: 'commands.import',
  options: [
    { name: 'person', kind: 'value', means: 'options.importPerson', hint: 'ID' },
    { name: 'book', kind: 'value', means: 'options.book', choices: BOOKS },
    ...RECORD_OPTIONS,
  ],
  operands: { hint: 'FILE|-', least: 1, most: 1, expected: 'one-file' },

  parse: (given, [file = '']) => ({
    ok: true,
    value: { ...recordOf(given), file, person: given.text('person'), book: given.text('book') ?? 'care' },
  }),

  async run({ file, person, book, ...record }, context) {
    const { words, stdin } = context;
    if (file !== STANDARD_INPUT && !(await isReadable(file))) {
      return refused([words.problem(refusal('', 'missing', 'readable-file', null), { file })]);
    }
    return await withKeeper(record, context, async (controlSocket): Promise<Answer> => {
      const bytes = file === STANDARD_INPUT ? stdin : (createReadStream(file) as AsyncIterable<Uint8Array>);
      const asked = new URLSearchParams({ book, ...(person === null ? {} : { person }) });
      const body = { type: 'application/json', bytes };
      const answer = await controlRequest(controlSocket, 'POST', `/control/import?${asked}`, body);
      const text = await textOf(answer);
      if (answer.statusCode === 422) {
        const { problems } = JSON.parse(text) as { problems: Problem[] };
        return refused(problems.map((problem) => ({ ...problem, file })));
      }
      if (answer.statusCode !== 200) throw new Error(`the server answered ${answer.statusCode}`);
      const brought = JSON.parse(text) as Brought;
      const problems = brought.refused.map((problem) => ({ ...problem, file }));
      const { added, already, passedOver, older, byOrder } = brought;
      const unclear = brought.unclear.map((problem) => ({ ...problem, file }));
      const others = Object.entries(passedOver).map(([type, count]) => `${count} ${type}`);
      return {
        kind: 'one',
        json: { file, ...brought, refused: problems, unclear },
        lines: [
          `${file}: ${words.sentence('commandLine.brought', { added, already })}`,
          ...(older === 0 ? [] : [words.sentence('commandLine.olderValues', { values: older })]),
          ...(byOrder === 0 ? [] : [words.sentence('bring.byOrder', { values: byOrder })]),
          ...(unclear.length === 0
            ? []
            : [words.sentence('commandLine.unclearValues', { values: unclear.length })]),
          ...linesOf(unclear, words),
          ...(others.length === 0
            ? []
            : [words.sentence('commandLine.passedOver', { resources: words.say.allOf(others) })]),
          ...(problems.length === 0
            ? []
            : [words.sentence('commandLine.refusedOf', { problems: problems.length })]),
          ...linesOf(problems, words),
        ],
      };
    });
  },
});

/** The first of them in words, and how many more. */
function linesOf(problems: readonly Problem[], words: Words): string[] {
  return problemText(problems, false, words)
    .split('\n')
    .filter((line) => line !== '');
}

async function isReadable(path: string): Promise<boolean> {
  return await access(path, constants.R_OK).then(
    () => true,
    () => false,
  );
}
