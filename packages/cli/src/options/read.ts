import { type Refusal, refusal } from '@evenfall/clinical';
import type { Rule } from '@evenfall/words';
import { nearest } from './nearest.js';
import type { Given, Option } from './option.js';
import { type Token, tokensOf } from './tokens.js';

/** How many operands (words that are no options) a command takes, and what to ask for when one is missing. */
export type Operands = {
  readonly hint: string;
  readonly least: number;
  readonly most: number;
  readonly expected?: Rule;
};

export type Read = {
  readonly given: Given;
  readonly operands: readonly string[];
  /** Everything wrong with the options and operands themselves. */
  readonly refusals: readonly Refusal[];
  /** Where an option was typed, for putting refusals in order; after all others if it was not. */
  readonly placeOf: (typed: string) => number;
};

/**
 * Reads a command's arguments by its table: unknown options with the nearest real one, an option given twice, a
 * value that is missing, unwanted or not among the choices, operands too few or too many.
 * Source: docs/conventions.md section 1.
 */
export function read(args: readonly string[], options: readonly Option[], takes: Operands): Read {
  const tokens = tokensOf(args, options);
  const typed = tokens.filter((token) => token.kind === 'option');
  const values = new Map<string, string | true>();
  const refusals: Refusal[] = [];
  for (const token of typed) {
    const fault = faultOf(token, options, values);
    if (fault !== null) refusals.push(fault);
    else values.set(token.name, token.value ?? true);
  }
  refusals.push(...operandFaults(tokens, options, takes));
  const places = new Map(typed.map((token, place) => [token.typed, place] as const).reverse());
  return {
    given: {
      isOn: (name) => values.get(name) === true,
      text: (name) => asText(values.get(name)),
    },
    operands: tokens.flatMap((token) => (token.kind === 'operand' ? [token.value] : [])),
    refusals,
    placeOf: (name) => places.get(name) ?? tokens.length,
  };
}

function asText(value: string | true | undefined): string | null {
  return typeof value === 'string' ? value : null;
}

type OptionToken = Extract<Token, { kind: 'option' }>;

function faultOf(
  { name, typed, value }: OptionToken,
  options: readonly Option[],
  values: ReadonlyMap<string, unknown>,
): Refusal | null {
  const option = options.find((one) => one.name === name);
  if (option === undefined || !typed.startsWith('--')) {
    const close = nearest(name, options.map((one) => one.name)); // biome-ignore format: one thought
    return refusal(typed, 'unknown-option', 'nearest-option', typed, { choices: [`--${close}`] });
  }
  if (values.has(name)) return refusal(typed, 'repeated', 'once', value ?? typed);
  if (option.kind === 'switch') {
    return value === null ? null : refusal(typed, 'unknown-id', 'no-value', value);
  }
  if (value === null || value === '') return refusal(typed, 'missing', 'value-after-it', null);
  if (option.choices === undefined || option.choices.includes(value)) return null;
  return refusal(typed, 'unknown-id', 'one-of', value, { choices: option.choices });
}

function operandFaults(tokens: readonly Token[], options: readonly Option[], takes: Operands): Refusal[] {
  const { hint, least, most, expected = 'a-value' } = takes;
  const operands = tokens.filter((token) => token.kind === 'operand');
  if (operands.length < least) return [refusal(hint, 'missing', expected, null)];
  const rule: Rule = most === 0 ? 'no-argument' : 'fewer-arguments';
  // A word after an unknown option may have been meant as its value; one complaint is enough.
  const surplus = operands.slice(most).filter((token) => !followsUnknown(token, tokens, options));
  return surplus.map(({ value }) => refusal('argument', 'unknown-option', rule, value));
}

function followsUnknown(operand: Token, tokens: readonly Token[], options: readonly Option[]): boolean {
  const before = tokens[tokens.indexOf(operand) - 1];
  return before?.kind === 'option' && !options.some(({ name }) => name === before.name);
}
