import type { Words } from '@evenfall/words';
import { command, NO_OPERANDS } from '../command.js';
import { controlRequest, textOf } from '../keeper/controlRequest.js';
import { RECORD_OPTIONS, type Record, recordOf, withKeeper } from '../keeper/withKeeper.js';
import { jsonLine } from '../output/json.js';

type Finding = {
  readonly entry: string;
  readonly kind: string;
  readonly state:
    | 'differs'
    | 'changed'
    | 'unreadable'
    | 'rests-on-unreadable'
    | 'names-another'
    | 'unknown-rule'
    | 'unknown-protocol'
    | 'impossible-evidence';
  readonly at: string | null;
  readonly kept: unknown;
  readonly computed: unknown;
};
type Checked = { readonly entries: number; readonly values: number; readonly findings: readonly Finding[] };

/** `evenfall check`: every value computed again from its evidence with the rule it names. Changes nothing. */
export const check = command<Record>({
  name: 'check',
  summary: 'commands.check',
  options: RECORD_OPTIONS,
  operands: NO_OPERANDS,
  parse: (given) => ({ ok: true, value: recordOf(given) }),

  run: (record, context) =>
    withKeeper(record, context, async (controlSocket) => {
      const answer = await controlRequest(controlSocket, 'GET', '/control/check');
      const text = await textOf(answer);
      if (answer.statusCode !== 200) throw new Error(`the server answered ${answer.statusCode}`);
      const { entries, values, findings } = JSON.parse(text) as Checked;
      return {
        kind: 'one',
        json: { entries, values, findings },
        lines: linesOf({ entries, values, findings }, context.words),
      };
    }),
});

function linesOf({ entries, values, findings }: Checked, words: Words): string[] {
  const found = findings.map(({ entry, kind, state, at, kept, computed }) => {
    const what = words.sentence(`commandLine.${state === 'differs' ? 'differing' : state}`);
    const values = state === 'differs' ? `\n  ${jsonLine({ kept, computed }).trim()}` : '';
    return `${kind} ${entry}${at === null ? '' : ` ${at}`}: ${what}${values}`;
  });
  const heading =
    findings.length === 0
      ? words.sentence('commandLine.nothingDiffers')
      : words.sentence('commandLine.differs', { findings: findings.length });
  return [words.sentence('commandLine.checked', { values, entries }), heading, ...found];
}
