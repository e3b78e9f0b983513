import { expect, test } from 'vitest';
import { clock } from './clock.js';

// ISO 8601 has both ends of a day: 00:00 and 24:00.
test.each([
  [0, '00:00'],
  [510, '08:30'],
  [1440, '24:00'],
] as const)('%d minutes from midnight are %s', (minutes, text) => {
  expect(clock(minutes)).toBe(text);
});
