import { loadWords } from '@evenfall/words';
import { beforeAll, expect, test } from 'vitest';
import { sleepText, windowsText } from './windowsText.js';

let words: Awaited<ReturnType<typeof loadWords>>;
beforeAll(async () => {
  words = await loadWords('en');
});

// ISO 8601 has both ends of a day: 00:00 and 24:00.
test('hours of the clock that end at midnight end at 24:00, and those that begin there at 00:00', () => {
  const of = (from: number, to: number) =>
    windowsText(
      {
        result: { dayNightBy: 'clock' } as never,
        dayNight: { by: 'clock', day: { from: 600, to: 1200 }, night: { from, to } },
      },
      words,
    );
  expect(of(1080, 0)).toBe('day and night by the clock alone: day 10:00-20:00, night 18:00-24:00');
  expect(of(0, 360)).toContain('night 00:00-06:00');
});

test('hours of sleep are said with a nap, and that they are not known is said', () => {
  const asleep = { from: 1380, to: 420 };
  expect(sleepText({ asleep, nap: null }, words)).toBe('asleep 23:00-07:00');
  expect(sleepText({ asleep, nap: { from: 840, to: 900 } }, words)).toBe(
    'asleep 23:00-07:00, a nap 14:00-15:00',
  );
  expect(sleepText({ asleep: null, nap: null }, words)).toBe('not known');
});
