import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { nothingText } from './nothingText.js';

const words = wordsFor('en');
const reported = (is: 'reported' | 'not-reported' | 'not-here') => [
  { code: 'both-numbers', is: 'reported' } as const,
  { code: 'second-reading', is } as const,
];

// Assessment handbook 14 (specific feedback, one thing to change): praise does not contradict what is left out.
test.each(['none', 'small'] as const)('%s: the same again only where nothing was left out', (nothing) => {
  expect(nothingText(nothing, reported('reported'), words)).toMatch(/Do it the same way again\.$/);
  expect(nothingText(nothing, reported('not-here'), words)).toMatch(/Do it the same way again\.$/);
  const left = nothingText(nothing, reported('not-reported'), words);
  expect(left).not.toContain('same way again');
  expect(left).toMatch(/stands at the end\.$/);
});

test('a reading that is off is no praise, whatever was reported', () => {
  expect(nothingText('unexplained', reported('reported'), words)).not.toContain('same way');
});
