import { type Protocol, presetProtocol } from '@evenfall/clinical';
import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { presetHint } from './presetHint.js';

const words = wordsFor('en-GB');
const inForce = (presets: Parameters<typeof presetProtocol>[0]): Protocol => {
  const read = presetProtocol(presets);
  if (!read.ok) throw new Error('a preset of this program is refused');
  return read.value;
};

// The home table of the out-of-office handbook, section 2: NICE leaves day 1 out, ACC/AHA 2017 nothing.
test('the set that is in force changes nothing, another says how many values it changes', () => {
  const nice = inForce({ home: 'nice-ng136' });
  expect(presetHint('home', 'nice-ng136', nice, words)).toBe('the values that are in force now');
  expect(presetHint('home', 'acc-aha-2017', nice, words)).toMatch(/^\d+ values other than in force now$/);
});

test('without a protocol in force nothing is said', () => {
  expect(presetHint('home', 'nice-ng136', null, words)).toBeNull();
});
