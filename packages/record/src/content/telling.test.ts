import { expect, test } from 'vitest';
import { hasWords, isBeforeMeasured } from './tellingText.js';

test('a point, a dash or one letter is nobody that was told and nothing that was said', () => {
  for (const text of ['.', '..', '-', '1', 'x', '12 34', '']) expect(hasWords(text), text).toBe(false);
  for (const text of ['Dr Ó', 'ok', 'bed 7, comes', 'Å. Ek', '医生']) expect(hasWords(text), text).toBe(true);
});

test('nobody was told of a reading before it was taken, to the minute that is typed', () => {
  const at = (time: string) => ({ at: `2026-03-05T${time}+01:00`, zone: 'Europe/Vienna', asEntered: null });
  const saw = [
    { kind: 'run', measuredAt: at('23:01:40.000') },
    { kind: 'count', measuredAt: at('23:05:00.000') },
    { kind: 'round', measuredAt: at('22:50:00.000') },
  ] as const;
  expect(isBeforeMeasured(at('20:00:00.000'), saw)).toBe(true);
  expect(isBeforeMeasured(at('23:00:00.000'), saw)).toBe(true);
  expect(isBeforeMeasured(at('23:01:00.000'), saw)).toBe(false);
  expect(isBeforeMeasured(at('23:03:00.000'), saw)).toBe(false);
  // What came from elsewhere may have been told before it was brought in.
  expect(isBeforeMeasured(at('20:00:00.000'), [{ kind: 'series', measuredAt: at('23:00:00.000') }])).toBe(
    false,
  );
});
