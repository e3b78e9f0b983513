import { parseCount, parseTapLines, type Refusal, refusal } from '@evenfall/clinical';
import { describe, expect, test } from 'vitest';
import { english } from './english/index.js';
import { wordsFor } from './words.js';

const words = wordsFor('en');

function refusalsOf(parsed: { ok: true } | { ok: false; refusals: readonly Refusal[] }): readonly Refusal[] {
  if (parsed.ok) throw new Error('was not refused');
  return parsed.refusals;
}

test('a problem has the keys of docs/conventions.md section 2, in their order, null where they do not apply', () => {
  const [first] = refusalsOf(parseCount({ n: '1.5', windowSeconds: 15 }));
  const problem = words.problem(first!, { nameOf: () => '--n' });
  expect(Object.entries(problem)).toEqual([
    ['file', null],
    ['line', null],
    ['column', null],
    ['field', '--n'],
    ['code', 'not-whole'],
    ['expected', 'a whole number'],
    ['got', '1.5'],
    ['message', '--n is not a whole number (“1.5”): give a whole number.'],
  ]);
});

test('what can only be whole is asked for as such from the first', () => {
  const [first] = refusalsOf(parseCount({ n: '19,5', windowSeconds: 15 }));
  expect(words.problem(first!)).toMatchObject({ code: 'not-a-number', expected: 'a whole number' });
});

test('where nothing that came can be quoted, nothing is', () => {
  expect(words.problem(refusal('/version', 'unknown-id', 'protocol-here', null)).message).toBe(
    '/version is not known here: give a protocol version that is kept here.',
  );
});

test('a line of a file is kept', () => {
  const [first] = refusalsOf(parseTapLines('# taps\n0.0\nx\n'));
  expect(words.problem(first!, { file: 'a.txt' })).toMatchObject({
    file: 'a.txt',
    line: 3,
    code: 'not-a-number',
  });
});

describe('every rule that refuses a count or taps has a phrase of its own', () => {
  test.each([
    [{}],
    [{ n: 'x', windowSeconds: 'y' }],
    [{ n: -1, windowSeconds: 0 }],
    [{ n: 1.5, windowSeconds: 301 }],
    [{ n: 0, windowSeconds: 15, clock: 'beat', first: 1 }],
    [{ n: 200, windowSeconds: 15 }],
    [{ n: 19, windowSeconds: 15, clock: 'often', first: 2, of: 'steps', colour: 'red' }],
    ['text'],
  ])('count %j', (input) => {
    for (const one of refusalsOf(parseCount(input))) {
      expect(Object.keys(english.expected)).toContain(one.expected);
      expect(words.problem(one).message).toMatch(/^\S.*\.$/);
    }
  });

  test.each([[''], ['1\nx'], ['1\n1'], ['1e5'], ['9999999999999'], ['0\n0.01\n0.02']])('taps %j', (text) => {
    for (const one of refusalsOf(parseTapLines(text))) {
      expect(Object.keys(english.expected)).toContain(one.expected);
      expect(words.problem(one, { file: 'a' }).message).toMatch(/^\S.*\.$/);
    }
  });
});

test('a rule without a phrase is still answered, by its code', () => {
  const one = refusal('/age', 'out-of-range', 'a-rule-of-tomorrow', 7, { figures: { minimum: 16 } });
  expect(words.problem(one)).toMatchObject({ expected: 'at least 16', got: '7' });
  const choice = refusal('/role', 'unknown-id', 'choice', 'x', { choices: ['observer', 'teacher'] });
  expect(words.problem(choice).expected).toBe('observer or teacher');
});

test('a whole input without a field is called the input', () => {
  expect(words.problem(refusal('', 'missing', 'a-file', null)).message).toBe(
    'The input is missing: give a file or folder, or - for standard input.',
  );
});
