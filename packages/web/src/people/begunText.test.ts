import { USUAL_MANNER, wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { begunText } from './begunText.js';

const words = wordsFor('en', USUAL_MANNER);
const severe = {
  pressures: ['192/124'],
  condition: null,
  others: 0,
  isUnasked: false,
  recheck: 'recheck-severe',
};

// Bedside handbook 3.16: a severe pressure alone is repeated after a rest; with features of an emergency it is acted on.
test('acting now is said of what is acted on, or not answered for yet, and not of a severe pressure alone', () => {
  expect(begunText(severe, words)).not.toMatch(/Act now/);
  expect(begunText(severe, words)).toMatch(/^192\/124, .*; taken, not signed$/);
  expect(begunText({ ...severe, isUnasked: true }, words)).toMatch(/^Act now: 192\/124/);
  expect(begunText({ ...severe, condition: 'unresponsive' }, words)).toMatch(/^Act now: 192\/124/);
});

// A tick of an emergency whose numbers are on the keypad still, or somebody unwell whose pressure is not severe.
test('unwell without a severe number is acted on, and nothing begins with a comma', () => {
  const unwell = { ...severe, pressures: [], recheck: 'recheck-at-once' };
  expect(begunText(unwell, words)).toMatch(/^Act now: unwell/);
  expect(begunText({ ...unwell, pressures: ['128/76'] }, words)).toMatch(/^Act now: 128\/76, unwell/);
  expect(begunText({ ...severe, pressures: [] }, words)).not.toMatch(/^,/);
});
