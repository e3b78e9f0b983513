import { NOTHING_CHOSEN } from '@evenfall/record';
import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { partText } from './partText.js';
import { readTypedSet } from './typedSet.js';

const words = wordsFor('en');

function said(text: string): string {
  const counted = { windowSeconds: 30, clock: 'any', first: 1 } as const;
  const { wrong } = readTypedSet(text, { method: 'auscultation', counted }, NOTHING_CHOSEN);
  if (wrong === null) throw new Error(text);
  return words.problem(wrong, { nameOf: (field) => partText(field, words) }).message;
}

// Bedside handbook 2: what is counted in 30 s goes by steps of 2 a minute, so 91 cannot come out of it.
test('a pulse that its window cannot give is called the pulse, and what it could be is said', () => {
  expect(said('148/92 91')).toMatch(/^Pulse cannot be \(“91”\): give .*90.*92/);
  expect(said('148')).toMatch(/^Pressure .*148\/92/);
  expect(said('400')).toMatch(/^Pressure /);
});
