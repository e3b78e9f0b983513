import { expect, test } from 'vitest';
import {
  keepPractice,
  movePractice,
  type PracticeDraft,
  type PracticeShelf,
  readPractice,
} from './keptPractice.js';

/** As much of an exercise as is looked at here. */
const draftOf = (exercise: string) =>
  ({
    version: 1,
    exercise,
    visit: { seed: 1, scenario: { id: 'quiet-morning' }, actions: [] },
    round: { pressure: {} },
    step: 'room',
    marks: [],
  }) as unknown as PracticeDraft;

function shelfOf(most = Number.POSITIVE_INFINITY): PracticeShelf & { readonly kept: Map<string, string> } {
  const kept = new Map<string, string>();
  return {
    kept,
    getItem: (key) => kept.get(key) ?? null,
    setItem: (key, text) => {
      if (kept.size >= most && !kept.has(key)) throw new Error('full');
      kept.set(key, text);
    },
    removeItem: (key) => {
      kept.delete(key);
    },
  };
}

test('somebody else who is chosen in the middle goes on with the exercise', () => {
  const shelf = shelfOf();
  keepPractice(shelf, 'wren', draftOf('one'));
  movePractice(shelf, 'wren', 'sol', draftOf('one'));
  expect(readPractice(shelf, 'sol')?.exercise).toBe('one');
  expect(readPractice(shelf, 'wren')).toBeNull();
});

test('an exercise of theirs is not written over, and neither is lost', () => {
  const shelf = shelfOf();
  keepPractice(shelf, 'wren', draftOf('one'));
  keepPractice(shelf, 'sol', draftOf('two'));
  movePractice(shelf, 'wren', 'sol', draftOf('one'));
  expect(readPractice(shelf, 'sol')?.exercise).toBe('two');
  expect(readPractice(shelf, 'wren')?.exercise).toBe('one');
});

test('a full shelf leaves it where it was', () => {
  const shelf = shelfOf(1);
  keepPractice(shelf, null, draftOf('one'));
  movePractice(shelf, null, 'sol', draftOf('one'));
  expect(readPractice(shelf, null)?.exercise).toBe('one');
});
