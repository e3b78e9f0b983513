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

test('a pulse that was amended since is said as it stands, with what it was', () => {
  const english = wordsFor('en');
  expect(readingTexts({ perMinute: 83, was: 76 }, NOTHING, english)).toEqual(['pulse 83 (amended, was 76)']);
  expect(readingTexts({ perMinute: null, was: 76 }, NOTHING, english)).toEqual([
    'pulse 76, since marked as entered in error',
  ]);
  expect(readingTexts({ perMinute: 76, was: null }, NOTHING, english)).toEqual(['pulse 76']);
});
