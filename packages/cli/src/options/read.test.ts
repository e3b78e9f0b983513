import { describe, expect, test } from 'vitest';
import type { Option } from './option.js';
import { type Operands, read } from './read.js';

const OPTIONS: readonly Option[] = [
  { name: 'n', kind: 'value', means: 'options.n' },
  { name: 'clock', kind: 'value', means: 'options.clock', choices: ['beat', 'any'] },
  { name: 'json', kind: 'switch', means: 'options.json' },
];
const NONE: Operands = { hint: '', least: 0, most: 0 };
const FILES: Operands = { hint: 'FILE', least: 1, most: 2, expected: 'a-file' };

/** What is wrong, in shorthand: field, code, what came. */
function wrong(line: string, takes: Operands = NONE): string[] {
  const args = line.split(' ').filter((arg) => arg !== '');
  return read(args, OPTIONS, takes).refusals.map(({ field, code, got }) => `${field} ${code} ${got}`);
}

// docs/conventions.md section 1, and the codes of section 2.
describe('what is refused', () => {
  test.each([
    ['--clok any', ['--clok unknown-option --clok']],
    ['-n 5', ['-n unknown-option -n']],
    ['--n 1 --n 2', ['--n repeated 2']],
    ['--json --json', ['--json repeated --json']],
    ['--json=yes', ['--json unknown-id yes']],
    ['--n', ['--n missing null']],
    ['--n=', ['--n missing null']],
    ['--clock often', ['--clock unknown-id often']],
    ['extra', ['argument unknown-option extra']],
    ['--n 1 --clok', ['--clok unknown-option --clok']],
  ])('%s', (line, expected) => {
    expect(wrong(line)).toEqual(expected);
  });

  test('operands too few and too many', () => {
    expect(wrong('', FILES)).toEqual(['FILE missing null']);
    expect(wrong('a b c', FILES)).toEqual(['argument unknown-option c']);
    expect(wrong('a b', FILES)).toEqual([]);
  });

  test('names the nearest real option', () => {
    expect(read(['--clok'], OPTIONS, NONE).refusals[0]?.choices).toEqual(['--clock']);
  });
});

test('gives what was typed, and nothing for what was not', () => {
  const { given, operands } = read(['--n', '19', '--json', 'file', '--', '--n'], OPTIONS, FILES);
  expect(given.text('n')).toBe('19');
  expect(given.isOn('json')).toBe(true);
  expect(given.text('clock')).toBeNull();
  expect(given.isOn('list')).toBe(false);
  expect(operands).toEqual(['file', '--n']);
});

test('knows the place of each option', () => {
  const { placeOf } = read(['--json', '--n', '1', '--n', '2'], OPTIONS, NONE);
  expect([placeOf('--json'), placeOf('--n')]).toEqual([0, 1]);
  expect(placeOf('--clock')).toBeGreaterThan(placeOf('--n'));
});
