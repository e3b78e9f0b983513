import { loadWords } from '@evenfall/words';
import { expect, test } from 'vitest';
import { clockSays, isTooSoon, satAfter } from './clockSays.js';

// Five quiet minutes before a first reading (bedside handbook 3.1), a minute or more between two (3.6).
test('the clock offers what a touch of it does, and where it does nothing it says why', async () => {
  const words = await loadWords('en');
  expect(words.sentence(clockSays(1, 'rest'))).toMatch(/five minutes/);
  expect(words.sentence(clockSays(7, 'rest'))).toMatch(/a minute go by/);
  for (const minutes of [1, 7, 20]) {
    expect(words.sentence(clockSays(minutes, 'cuff-is-up'))).toMatch(/cuff is up/);
    expect(words.sentence(clockSays(minutes, 'at-end'))).toMatch(/twenty minutes/);
    expect(words.sentence(clockSays(minutes, 'at-end'))).not.toMatch(/go by/);
  }
  expect([1, 5, 9].map(satAfter)).toEqual([5, 6, 10]);
  expect(isTooSoon(4, 'rest')).toBe(true);
  expect(isTooSoon(4, 'at-end')).toBe(false);
});
