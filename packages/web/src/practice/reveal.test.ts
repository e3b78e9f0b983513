import { expect, test } from 'vitest';
import { notAsked, revealNext } from './reveal.js';

test('while the cuff comes down the truth is shown by the second touch; when that is over, by the first', () => {
  expect(revealNext('hidden', false)).toBe('asked');
  expect(revealNext('asked', false)).toBe('shown');
  expect(revealNext('hidden', true)).toBe('shown');
});

test('it is hidden without a question, and any other touch takes the question back', () => {
  expect([revealNext('shown', false), revealNext('shown', true)]).toEqual(['hidden', 'hidden']);
  expect([notAsked('asked'), notAsked('shown'), notAsked('hidden')]).toEqual(['hidden', 'shown', 'hidden']);
});
