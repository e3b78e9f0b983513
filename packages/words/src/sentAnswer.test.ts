import { parseCount, type Refusal, refusal } from '@evenfall/clinical';
import { describe, expect, test } from 'vitest';
import { english } from './english/index.js';
import type { SentAnswer, SentProblem } from './sentAnswer.js';
import { spanish } from './spanish/index.js';
import { wordsFor, wordsIn } from './words.js';

const servers = wordsFor('en-GB');
const words = wordsIn(spanish, 'es');

/** A refusal as the server sends it. */
function sent(refused: Refusal): SentProblem {
  const { expected: rule, figures, choices } = refused;
  return { ...servers.problem(refused), rule, figures, choices };
}
function answer(
  status: number,
  problems: readonly SentProblem[],
  more: Partial<SentAnswer> = {},
): SentAnswer {
  return { status, title: 'A title of the server', detail: null, problems, ...more };
}
function refusalsOf(input: unknown): readonly Refusal[] {
  const parsed = parseCount(input);
  return parsed.ok ? [] : parsed.refusals;
}

describe('a problem that a server sent in English, on a Spanish screen', () => {
  test.each([
    refusal('/passPhrase', 'out-of-range', 'pass-phrase-long', null, {
      figures: { minimum: 12, maximum: 128 },
    }),
    refusal('/signIn', 'repeated', 'new-sign-in-name', 'ada'),
    refusal('/signIn', 'out-of-range', 'try-later', null, { figures: { minutes: 1 } }),
    refusal('/entries/0/role', 'contradicts', 'kind-of-role', null, { choices: ['owner', 'supervisor'] }),
    ...refusalsOf({ n: 'x', windowSeconds: 400 }),
  ])('is what a Spanish program says of it itself: $code $expected', (refused) => {
    const told = words.sentProblem(sent(refused));
    const own = words.problem(refused);
    expect([told.expected, told.message]).toEqual([own.expected, own.message]);
    expect(told.message).not.toBe(servers.problem(refused).message);
  });

  test('stays in the server’s words where this program has none for its code, or not its figures', () => {
    const message = 'Something of tomorrow.';
    const newer = { ...sent(refusal('/n', 'missing', 'a-value', null)), code: 'of-tomorrow', message };
    expect(words.sentProblem(newer).message).toBe(message);
    const limits = { figures: { minimum: 12, maximum: 128 } };
    const long = sent(refusal('/p', 'out-of-range', 'pass-phrase-long', null, limits));
    expect(words.sentProblem({ ...long, figures: {} }).message).toBe(long.message);
    // A server of before says no rule.
    const { rule: _rule, ...older } = sent(refusal('/n', 'missing', 'a-value', null));
    expect(words.sentProblem(older).message).toBe(older.message);
    expect(words.sentProblem({ ...older, code: 'toString', rule: 'x' }).message).toBe(older.message);
  });

  test('of a rule that this program does not know it says what its code says', () => {
    const newer = sent(refusal('/n', 'not-whole', 'a-rule-of-tomorrow', '1.5'));
    expect(words.sentProblem(newer).expected).toBe('un número entero');
  });
});

describe('an answer that is none', () => {
  const missing = sent(refusal('/n', 'missing', 'a-value', null));

  test('says each problem, in order', () => {
    const said = words.sentAnswer(answer(422, [missing, missing]));
    expect(said).toBe(`${words.sentProblem(missing).message} ${words.sentProblem(missing).message}`);
  });

  test('else its reason, else what the server said, else its status, else its title', () => {
    const { answers } = spanish.sections;
    const byReason = answer(403, [], {
      code: 'not-of-role',
      detail: english.sections.answers['not-of-role'],
    });
    expect(words.sentAnswer(byReason)).toBe(answers['not-of-role']);
    expect(words.sentAnswer(answer(403, [], { code: 'of-tomorrow', detail: 'Tomorrow.' }))).toBe('Tomorrow.');
    expect(words.sentAnswer(answer(429, []))).toBe(answers['429']);
    expect(words.sentAnswer(answer(418, []))).toBe('A title of the server');
  });
});
