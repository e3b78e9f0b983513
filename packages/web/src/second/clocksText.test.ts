import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { clocksText } from './clocksText.js';

const words = wordsFor('en-GB');

// Physiology handbook 11: a thumb scatters by 0.05 s.
test('clocks that agree better than a thumb are said in passing, coarser ones with what follows from it', () => {
  expect(clocksText(0.2, words)).toBe('The clocks of the two devices agree within 1 ms.');
  expect(clocksText(50, words)).toBe('The clocks of the two devices agree within 50 ms.');
  expect(clocksText(50.1, words)).toMatch(
    /agree only within 51 ms, more than a thumb scatters by itself \(50 ms\)/,
  );
});
