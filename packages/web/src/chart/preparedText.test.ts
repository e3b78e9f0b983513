import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { preparedText } from './preparedText.js';

const words = wordsFor('en');

test('how the person was made ready says what it is of', () => {
  expect(preparedText([], words)).toBe('Made ready: all as it should be before the pressure.');
  expect(preparedText(['not-talking'], words)).toBe('Made ready, but for: talking.');
  expect(preparedText(null, words)).toBe('Nobody looked whether the person was made ready.');
});
