import { refusal } from '@evenfall/clinical';
import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { problemText } from './problems.js';

const words = wordsFor('en');

// docs/conventions.md section 2: a line each, `FILE:LINE: FIELD: expected ..., got ...`.
test.each([
  [{ file: 'a.txt' }, 3, '/seconds', 'a.txt:3: /seconds: expected a whole number, got 1.5\n'],
  [{ file: 'a.txt' }, null, '/seconds', 'a.txt: /seconds: expected a whole number, got 1.5\n'],
  [{ file: 'a.txt' }, null, '', 'a.txt: expected a whole number, got 1.5\n'],
  [{}, null, '--n', '--n: expected a whole number, got 1.5\n'],
])('in %j at line %s', (place, line, field, text) => {
  const problem = words.problem(refusal(field, 'not-whole', 'a-whole-number', '1.5', { line }), place);
  expect(problemText([problem], false, words)).toBe(text);
});

test('nothing that came is called nothing', () => {
  const problem = words.problem(refusal('--n', 'missing', 'a-whole-number', null));
  expect(problemText([problem], false, words)).toBe('--n: expected a whole number, got nothing\n');
});

test.each([
  ['', 'missing', 'readable-file', 'a.txt: expected a file or folder that exists and can be read\n'],
  ['', 'contradicts', 'json-line', 'a.txt: expected a line of JSON\n'],
  ['/seconds', 'impossible', 'a-value', 'a.txt: /seconds: expected a value\n'],
] as const)('what came and cannot be quoted is not called nothing: %s %s', (field, code, expected, text) => {
  const problem = words.problem(refusal(field, code, expected, null), { file: 'a.txt' });
  expect(problemText([problem], false, words)).toBe(text);
  expect(problem.message).not.toContain('nothing');
});

test.each([
  [10, 10, null],
  [11, 11, 'a.txt: 1 problem more of this file'],
  [42, 11, 'a.txt: 32 problems more of this file'],
])(
  'of %d problems of a file the first are shown and the rest counted; with --json all',
  (many, lines, last) => {
    const of = (file: string) =>
      Array.from({ length: many }, (_, at) =>
        words.problem(refusal('/seconds', 'not-a-number', 'a-number', 'x'.repeat(200), { line: at + 1 }), {
          file,
        }),
      );
    const shown = problemText(of('a.txt'), false, words).trimEnd().split('\n');
    expect(shown).toHaveLength(lines);
    if (last !== null) expect(shown.at(-1)).toBe(last);
    expect(Math.max(...shown.map(({ length }) => length))).toBeLessThan(200);
    expect(problemText([...of('a.txt'), ...of('b.txt')], false, words).match(/\n/g)).toHaveLength(2 * lines);
    expect(JSON.parse(problemText(of('a.txt'), true, words)).problems).toEqual(of('a.txt'));
  },
);

test('with --json one object on one line', () => {
  const problem = words.problem(refusal('--n', 'missing', 'a-whole-number', null));
  const text = problemText([problem, problem], true, words);
  expect(text.match(/\n/g)).toHaveLength(1);
  expect(JSON.parse(text)).toEqual({ problems: [problem, problem] });
});
