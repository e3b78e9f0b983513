import type { Words } from '@evenfall/words';
import type { Answer } from '../answer.js';
import type { AnyCommand } from '../command.js';
import { EVERYWHERE, type Option } from '../options/option.js';
import { beside, wrap } from './wrap.js';

/** What `evenfall --help` shows: every command in one line. */
export function helpOfAll(commands: readonly AnyCommand[], words: Words): Answer {
  const summaries = commands.map(({ name, summary }) => ({ name, summary: words.sentence(summary) }));
  const options = EVERYWHERE.map((option) => described(option, words));
  const lines = [
    `${words.sentence('commandLine.usage')}: evenfall COMMAND`,
    '',
    ...wrap(words.sentence('cautions.aid')),
    '',
    words.sentence('commandLine.commandsHeading'),
    ...beside(summaries.map(({ name, summary }) => [`  ${name}`, summary])),
    '',
    words.sentence('commandLine.optionsHeading'),
    ...optionLines(options),
    '',
    words.sentence('commandLine.moreHelp'),
  ];
  return { kind: 'one', json: { usage: 'evenfall COMMAND', commands: summaries, options }, lines };
}

/** What `evenfall COMMAND --help` shows. */
export function helpOf(command: AnyCommand, options: readonly Option[], words: Words): Answer {
  const rows = options.map((option) => described(option, words));
  const usage = usageOf(command, rows);
  const summary = words.sentence(command.summary);
  const lines = [
    ...wrap(`${words.sentence('commandLine.usage')}: ${usage}`),
    '',
    ...wrap(`${summary}.`),
    '',
    words.sentence('commandLine.optionsHeading'),
    ...optionLines(rows),
  ];
  return { kind: 'one', json: { command: command.name, usage, summary, options: rows }, lines };
}

type Described = {
  readonly name: string;
  /** What stands for the value; null for a switch. */
  readonly value: string | null;
  readonly required: boolean;
  readonly choices: readonly string[];
  readonly means: string;
};

function described(option: Option, words: Words): Described {
  const { name, kind, hint, choices = [], required = false } = option;
  const value = kind === 'switch' ? null : (hint ?? choices.join('|'));
  return { name: `--${name}`, value, required, choices, means: words.sentence(option.means) };
}

function usageOf({ name, operands }: AnyCommand, options: readonly Described[]): string {
  const required = options.filter((option) => option.required).map(asTyped);
  const operand = operands.most === 0 ? [] : [operands.least === 0 ? `[${operands.hint}]` : operands.hint];
  return ['evenfall', name, ...required, '[OPTIONS]', ...operand].join(' ');
}

function asTyped({ name, value }: Described): string {
  return value === null ? name : `${name} ${value}`;
}

/** The choices follow the meaning where a hint stands for them. */
function optionLines(options: readonly Described[]): string[] {
  return beside(
    options.map((option) => {
      const { value, choices, means } = option;
      const hidden = choices.length > 0 && value !== choices.join('|');
      return [`  ${asTyped(option)}`, hidden ? `${means}: ${choices.join(', ')}` : means];
    }),
  );
}
