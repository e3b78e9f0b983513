import { wordsFor } from '@evenfall/words';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { commands } from '../commands/index.js';
import { optionsOf } from '../options/option.js';
import { helpOf, helpOfAll } from './help.js';
import { listed } from './items.js';
import { beside, WIDTH, wrap } from './wrap.js';

const words = wordsFor('en');
const word = fc.string({ minLength: 1, maxLength: 30, unit: fc.constantFrom('a', 'b', '-') });

test('a text is cut between words, loses none, and no line is wider than it must be', () => {
  fc.assert(
    fc.property(
      fc.array(word, { minLength: 1, maxLength: 60 }),
      fc.integer({ min: 0, max: 40 }),
      (all, indent) => {
        const lines = wrap(all.join(' '), indent);
        expect(lines.flatMap((line) => line.trim().split(' '))).toEqual(all);
        for (const line of lines) {
          expect(line.slice(0, indent).trim()).toBe('');
          expect(line.length).toBeLessThanOrEqual(WIDTH);
        }
      },
    ),
  );
  expect(wrap('x'.repeat(90), 2)).toEqual([`  ${'x'.repeat(90)}`]);
});

test('a meaning stands beside its name, and below one that is too long', () => {
  const long = `--${'y'.repeat(40)}`;
  expect(
    beside([
      ['--n', 'one'],
      ['--window', 'two'],
      [long, 'three'],
      ['--x', 'word '.repeat(20).trim()],
    ]),
  ).toEqual([
    '--n       one',
    '--window  two',
    long,
    '          three',
    `--x       ${'word '.repeat(14).trim()}`,
    `          ${'word '.repeat(6).trim()}`,
  ]);
});

test.each(commands.map((command) => [command.name, command] as const))(
  '%s: help and list fit a terminal',
  (_name, command) => {
    const answers = [
      helpOf(command, optionsOf(command), words),
      ...(command.list === undefined ? [] : [listed(command.list(words), words)]),
      helpOfAll(commands, words),
    ];
    for (const answer of answers) {
      const lines = answer.kind === 'one' ? answer.lines : [];
      expect(lines.length).toBeGreaterThan(0);
      for (const line of lines) expect(line.length, line).toBeLessThanOrEqual(WIDTH);
    }
  },
);
