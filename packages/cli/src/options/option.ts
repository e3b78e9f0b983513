import { LANGUAGE_IDS, type PlainKey } from '@evenfall/words';

/**
 * One option of a command, as data: help, reading and refusals all come from this row.
 * A value stays the text that was typed; the command's `parse` turns it into what it means, once.
 */
export type Option = {
  /** Lower case, joined by `-`, without the dashes: `window`, `age-months`. */
  readonly name: string;
  /** A switch is on when present. A value is the next argument, or follows `=`. */
  readonly kind: 'switch' | 'value';
  readonly means: PlainKey;
  /** What stands for the value in help: `SECONDS`. Choices are shown as they are. */
  readonly hint?: string;
  readonly choices?: readonly string[];
  readonly required?: boolean;
  /** The field that a refusal of the parser names, if it is not the option's name: `/windowSeconds`. */
  readonly field?: string;
};

/** What each option came to: true or false for a switch; the text, or null when absent, for a value. */
export type Given = {
  readonly isOn: (name: string) => boolean;
  readonly text: (name: string) => string | null;
};

/** Options that every command takes. */
export const EVERYWHERE: readonly Option[] = [
  { name: 'json', kind: 'switch', means: 'options.json' },
  { name: 'language', kind: 'value', means: 'options.language', choices: LANGUAGE_IDS },
  { name: 'help', kind: 'switch', means: 'options.help' },
  { name: 'version', kind: 'switch', means: 'options.version' },
];

/** For a command that has a choice to list. */
const LIST: Option = { name: 'list', kind: 'switch', means: 'options.list' };

/** The option whose parser names that field, as it is typed: `/windowSeconds` is `--window`. */
export function typedName(options: readonly Option[], field: string): string {
  const option = options.find((one) => one.field === field || `/${one.name}` === field);
  return option === undefined ? field : `--${option.name}`;
}

/** All that a command takes: its own options, `--list` if there is a choice, and what every command takes. */
export function optionsOf(command: {
  readonly options: readonly Option[];
  readonly list?: unknown;
}): Option[] {
  return [...command.options, ...(command.list === undefined ? [] : [LIST]), ...EVERYWHERE];
}
