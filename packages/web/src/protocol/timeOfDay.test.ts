import { clock } from '@evenfall/words';
import { expect, test } from 'vitest';
import { minutesOf } from './timeOfDay.js';

// ISO 8601 has both ends of a day: 00:00 and 24:00.
test.each([
  [0, '00:00'],
  [510, '08:30'],
  [1260, '21:00'],
  [1440, '24:00'],
] as const)('%d minutes from midnight are %s, and back', (minutes, text) => {
  expect(clock(minutes)).toBe(text);
  expect(minutesOf(text)).toBe(minutes);
});

test.each([
  ['8:30', 510],
  ['8.30', 510],
  ['8h30', 510],
  [' 8 ', 480],
  ['0830', 510],
  ['2330', 1410],
] as const)('a time is typed as %j', (text, minutes) => {
  expect(minutesOf(text)).toBe(minutes);
});

test.each(['', '25:00', '24:01', '8:60', '8:3', 'eight', '3000', '860', '30', '510', '830', '540'])(
  '%j is no time of day',
  (text) => {
    expect(minutesOf(text)).toBeNull();
  },
);
