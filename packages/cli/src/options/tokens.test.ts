import { expect, test } from 'vitest';
import type { Option } from './option.js';
import { tokensOf } from './tokens.js';

const OPTIONS: readonly Option[] = [
  { name: 'n', kind: 'value', means: 'options.n' },
  { name: 'window', kind: 'value', means: 'options.window' },
  { name: 'json', kind: 'switch', means: 'options.json' },
];

/** Tokens in shorthand: `--n=19` for an option and its value, `--json` without one, bare for an operand. */
function split(line: string): string[] {
  return tokensOf(line.split(' '), OPTIONS).map((token) => {
    if (token.kind === 'operand') return token.value;
    return token.value === null ? token.typed : `${token.typed}=${token.value}`;
  });
}

// docs/conventions.md section 1: `-` is standard input; `--` ends options.
test.each([
  ['--n 19 --window 15', ['--n=19', '--window=15']],
  ['--n=19', ['--n=19']],
  ['--n -5', ['--n=-5']],
  ['--n -', ['--n=-']],
  ['--n --window 15', ['--n', '--window=15']],
  ['--n --json', ['--n', '--json']],
  ['--n', ['--n']],
  ['--json a b', ['--json', 'a', 'b']],
  ['a - b', ['a', '-', 'b']],
  ['a -- --n 19', ['a', '--n', '19']],
  ['--n -- 19', ['--n', '19']],
  ['--json=yes', ['--json=yes']],
  ['--widow 15', ['--widow', '15']],
])('%s', (line, tokens) => {
  expect(split(line)).toEqual(tokens);
});
