import { expect, test } from 'vitest';
import { readingTexts } from './readingTexts.js';
import { wordsFor } from './words.js';

const UPRIGHT = { uprightMinutes: 1, unwellUpright: null, lyingMinutes: null };
const NOTHING = { uprightMinutes: null, unwellUpright: null, lyingMinutes: null };

// Bedside handbook 3.14: pressure and pulse at each step are part of the record.
test('the pulse of a reading stands beside it, before how long somebody had stood; none where there was none', () => {
  const english = wordsFor('en');
  const [pulse, ...others] = readingTexts(96, UPRIGHT, english);
  expect(pulse).toBe('pulse 96');
  expect(others).toHaveLength(1);
  expect(readingTexts(null, NOTHING, english)).toEqual([]);
});
