import { classIdentity } from '@evenfall/record';
import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { ID } from '../round/testing.js';
import { readSubject, suggestPseudonym } from './subjectForm.js';

const read = (pseudonym: string, ageYears = '', taken: string[] = []) =>
  readSubject({ pseudonym, ageYears }, taken);

test('a pseudonym is enough, and a blank age is not known, never 0', () => {
  expect(read(' Heron ').identity).toEqual({ pseudonym: 'Heron', ageYears: null });
  expect(read('Heron', '0').identity).toEqual({ pseudonym: 'Heron', ageYears: 0 });
  expect(read(' ').wrong).toEqual({ pseudonym: 'pseudonymMissing' });
});

test('two of a session never have one pseudonym, however it is written', () => {
  expect(read('heron', '', ['Plover', 'Heron']).wrong).toEqual({ pseudonym: 'pseudonymTaken' });
  expect(read('Heron 2', '', ['Heron']).wrong).toEqual({});
});

// The record is the other side of each limit: what is read here it takes, and what is refused here it refuses.
test.each([
  ['x'.repeat(40), '125', true],
  ['x'.repeat(41), '', false],
  ['Heron', '126', false],
  ['Heron', '-1', false],
  ['Heron', '24.5', false],
  ['Heron', 'old', false],
])('%s aged %s is taken: %s', (pseudonym, age, isTaken) => {
  const { identity } = read(pseudonym, age);
  expect(identity !== null).toBe(isTaken);
  const ageYears = age === '' ? null : Number(age);
  expect(classIdentity.safeParse({ pseudonym, ageYears }).success).toBe(isTaken);
});

test('a suggestion is never taken, also when every bird is', () => {
  const birds = wordsFor('en').sentence('class.birds').split(', ');
  expect(new Set(birds).size).toBe(birds.length);
  const taken: string[] = [];
  for (let person = 0; person < 2 * birds.length + 1; person += 1) {
    const name = suggestPseudonym(birds, ID(1), taken);
    expect(readSubject({ pseudonym: name, ageYears: '' }, taken).wrong).toEqual({});
    taken.push(name);
  }
  expect(new Set(taken.slice(0, birds.length))).toEqual(new Set(birds));
  expect(taken.at(-1)).toMatch(/ 3$/);
});

test('sessions begin at different birds, and one session always at the same', () => {
  const birds = wordsFor('en').sentence('class.birds').split(', ');
  const firsts = Array.from({ length: 20 }, (_, n) => suggestPseudonym(birds, ID(n), []));
  expect(new Set(firsts).size).toBeGreaterThan(5);
  expect(suggestPseudonym(birds, ID(7), [])).toBe(firsts[7]);
});
