import { refusal } from '@evenfall/clinical';
import { TEMPLATE_IDS } from '@evenfall/exchange';
import { BOOKS } from '@evenfall/record';
import type { Problem } from '@evenfall/words';
import { refused } from '../answer.js';
import { command, NO_OPERANDS } from '../command.js';
import { controlRequest, textOf } from '../keeper/controlRequest.js';
import { RECORD_OPTIONS, type Record, recordOf, withKeeper } from '../keeper/withKeeper.js';

const FORMATS = ['csv', 'fhir', 'text'] as const;

type Asked = Record & {
  readonly person: string;
  readonly book: string;
  readonly as: string;
  readonly template: string;
  readonly isWithIdentity: boolean;
};

/** `evenfall export --person ID --as csv|fhir|text`: one person's chart as a file. */
export const exportCommand = command<Asked>({
  name: 'export',
  summary: 'commands.export',
  options: [
    { name: 'person', kind: 'value', means: 'options.person', hint: 'ID', required: true },
    { name: 'as', kind: 'value', means: 'options.as', choices: FORMATS, required: true },
    { name: 'template', kind: 'value', means: 'options.template', choices: TEMPLATE_IDS },
    { name: 'with-identity', kind: 'switch', means: 'options.withIdentity' },
    { name: 'book', kind: 'value', means: 'options.book', choices: BOOKS },
    ...RECORD_OPTIONS,
  ],
  operands: NO_OPERANDS,
  list: (words) => [
    {
      id: 'csv',
      title: words.title('format', 'csv'),
      source: 'RFC 4180',
      status: 'found',
      typed: '--as csv',
    },
    {
      id: 'fhir',
      title: words.title('format', 'fhir'),
      source: 'HL7 FHIR R4 (4.0.1)',
      status: 'found',
      typed: '--as fhir',
    },
    ...TEMPLATE_IDS.map((id) => ({
      id: `text ${id}`,
      title: words.sentence(`handover.${id}`),
      source: words.title('format', 'text'),
      status: 'decision',
      typed: `--as text --template ${id}`,
    })),
  ],

  parse(given) {
    const person = given.text('person');
    const as = given.text('as');
    const missing = [
      ...(person === null ? [refusal('/person', 'missing', 'person-id', null)] : []),
      ...(as === null ? [refusal('/as', 'missing', 'one-of', null, { choices: FORMATS })] : []),
    ];
    if (person === null || as === null) return { ok: false, refusals: missing };
    const isWithIdentity = given.isOn('with-identity');
    const book = given.text('book') ?? 'care';
    const template = given.text('template');
    if (template !== null && as !== 'text')
      return { ok: false, refusals: [refusal('/template', 'contradicts', 'with-as-text', template)] };
    return {
      ok: true,
      value: { ...recordOf(given), person, as, book, template: template ?? 'handover', isWithIdentity },
    };
  },

  run: ({ person, as, book, template, isWithIdentity, ...record }, context) =>
    withKeeper(record, context, async (controlSocket) => {
      const identity = isWithIdentity ? 'with' : 'without';
      const asked = new URLSearchParams({ as, template, identity });
      const path = `/api/books/${book}/persons/${encodeURIComponent(person)}/export?${asked}`;
      const answer = await controlRequest(controlSocket, 'GET', path);
      const text = await textOf(answer);
      if (answer.statusCode === 200) {
        const entries = Number(answer.headers['evenfall-unreadable'] ?? 0);
        const notes = [
          ...(answer.headers['evenfall-empty'] === 'true'
            ? [context.words.sentence('commandLine.nothingWritten')]
            : []),
          ...(entries === 0 ? [] : [context.words.sentence('commandLine.leftOut', { entries })]),
        ];
        return { kind: 'document', text, ...(notes.length === 0 ? {} : { note: notes.join('\n') }) };
      }
      if (answer.statusCode !== 404 && answer.statusCode !== 422)
        throw new Error(`the server answered ${answer.statusCode}`);
      const problems = (JSON.parse(text) as { problems: Problem[] }).problems;
      const isId = problems.length === 0;
      const expected = isId ? 'person-in-book' : 'person-id';
      return refused([context.words.problem(refusal('--person', 'unknown-id', expected, person))]);
    }),
});
