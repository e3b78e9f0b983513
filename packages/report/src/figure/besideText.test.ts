import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { besideText, signedText } from './besideText.js';

const words = wordsFor('en-GB');

test('a difference has its sign, and none where nothing of it is left', () => {
  expect(signedText(null, words)).toBe('–');
  expect([5, -2.8, 0, 0.04, -0.04, 0.05].map((one) => signedText(one, words))).toEqual(['+5.0', '−2.8', '0.0', '0.0', '0.0', '+0.1']); // biome-ignore format: one list
});

// docs/conventions.md section 4: shown whole, but never on the other side of its limit.
test('two means beside their limits and how far the second moved, all three to as many decimals', () => {
  const limit = { comparison: '>=', limit: 135 } as const;
  const of = (first: number | null, second: number | null) =>
    besideText(first, second, [limit, limit], words);
  expect(of(142, 130.2)).toEqual({ first: '142', second: '130', moved: '−12' });
  expect(of(134.6, 130.2)).toEqual({ first: '134.6', second: '130.2', moved: '−4.4' });
  // Whole they would be 131, 130 and no change.
  expect(of(130.5, 130.4)).toEqual({ first: '130.5', second: '130.4', moved: '−0.1' });
  expect(of(null, 130.2)).toEqual({ first: '–', second: '130', moved: '–' });
});
