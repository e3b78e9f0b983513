import { parseArgs } from 'node:util';
import type { Option } from './option.js';

/** One thing on the command line, in the order typed. `value` is null where an option has none. */
export type Token =
  | { readonly kind: 'option'; readonly name: string; readonly typed: string; readonly value: string | null }
  | { readonly kind: 'operand'; readonly value: string };

/**
 * Splits arguments into options and operands; `--` ends the options. Judges nothing.
 *
 * An option's value is the next argument, unless that is an option itself (`--n --window 15`): then the value is
 * missing and the next option stands. A negative number and `-` are values.
 */
export function tokensOf(args: readonly string[], options: readonly Option[]): Token[] {
  const known = Object.fromEntries(
    options.map(({ name, kind }) => [name, { type: kind === 'switch' ? 'boolean' : 'string' } as const]),
  );
  const { tokens } = parseArgs({
    args: [...args],
    options: known,
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  const found: Token[] = [];
  for (const token of tokens) {
    if (token.kind === 'positional') found.push({ kind: 'operand', value: token.value });
    if (token.kind !== 'option') continue;
    const { name, rawName: typed, index } = token;
    if (token.value !== undefined && !token.inlineValue && isOption(token.value)) {
      found.push({ kind: 'option', name, typed, value: null });
      return [...found, ...tokensOf(args.slice(index + 1), options)];
    }
    found.push({ kind: 'option', name, typed, value: token.value ?? null });
  }
  return found;
}

function isOption(argument: string): boolean {
  return /^-[^\d.]/.test(argument);
}
