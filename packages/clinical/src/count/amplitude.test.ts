import { expect, test } from 'vitest';
import { AMPLITUDE_SCALES, amplitudeWord } from './amplitude.js';

const wordsOf = (scale: (typeof AMPLITUDE_SCALES)[number]) =>
  [0, 1, 2, 3, 4].map((grade) => amplitudeWord(scale, grade));

// Bedside handbook 1.9 (second-hand), the three scales in use.
test('a grade means what its own scale says', () => {
  expect(wordsOf('to-four-two-normal')).toEqual(['absent', 'weak', 'normal', 'full', 'bounding']);
  expect(wordsOf('to-four-three-normal')).toEqual([
    'absent',
    'barely-felt',
    'below-normal',
    'normal',
    'bounding',
  ]);
  expect(wordsOf('to-three-two-normal')).toEqual(['absent', 'weak', 'normal', 'bounding', null]);
});

// Bedside handbook 8, C014 (second-hand): 2+ is normal on scale A and below normal on scale B.
test('C014: the same grade is normal on one scale and below normal on another', () => {
  expect(amplitudeWord('to-four-two-normal', 2)).toBe('normal');
  expect(amplitudeWord('to-four-three-normal', 2)).toBe('below-normal');
});

test('a grade that no scale has means nothing', () => {
  for (const scale of AMPLITUDE_SCALES)
    for (const grade of [-1, 5, 1.5, Number.NaN]) expect(amplitudeWord(scale, grade)).toBeNull();
});
