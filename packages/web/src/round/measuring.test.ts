import { parseCount } from '@evenfall/clinical';
import { describe, expect, test } from 'vitest';
import {
  isLate,
  isOver,
  isSameTouch,
  isTimed,
  lastTapUndone,
  type Measuring,
  READY,
  secondsRun,
  tapped,
  tapSeconds,
  typedText,
  windowOver,
} from './measuring.js';

const stamp = { at: '2026-03-05T10:00:00.000+00:00', zone: 'UTC', asEntered: null };
const start = { windowSeconds: 15, clock: 'any', first: 1 } as const;
const running = { at: 'running', session: 's', startedAtMs: 1000, start, measuredAt: stamp } as const;
const tapping = (tapsMs: number[]) =>
  ({ at: 'tapping', session: 's', measuredAt: stamp, source: 'key', tapsMs }) as const;

test('the window ends when its seconds are over and not a millisecond before', () => {
  expect(isOver(running, 15_999)).toBe(false);
  expect(isOver(running, 16_000)).toBe(true);
  expect(secondsRun(running, 900)).toBe(0);
  expect(secondsRun(running, 8_500)).toBe(7.5);
  expect(secondsRun(running, 99_000)).toBe(15);
});

test('after the window the keypad is blank and knows the window', () => {
  expect(windowOver(running)).toEqual({ at: 'typing', start, measuredAt: stamp, typed: '' });
});

test('only what runs on the clock can be broken off', () => {
  const typing: Measuring = windowOver(running);
  expect([READY, running, typing, tapping([1])].map(isTimed)).toEqual([false, true, false, true]);
});

test('taps are in seconds from the first, by the time of the event', () => {
  const taps = tapped(tapped(tapping([5000.5]), 5800.5, 'key'), 6601, 'key');
  expect(tapSeconds(taps)).toEqual([0, 0.8, 1.6005]);
});

test('the same event twice is one tap', () => {
  expect(tapped(tapping([5000, 5800]), 5800, 'key').tapsMs).toEqual([5000, 5800]);
});

test('one touch among keys makes the series a touched one, which may bounce', () => {
  const mixed = tapped(tapped(tapping([0]), 800, 'touch'), 1600, 'key');
  expect(mixed.source).toBe('touch');
});

test('the last tap is taken back; without the only one nothing has begun', () => {
  expect(lastTapUndone(tapping([1, 2]))).toMatchObject({ at: 'tapping', tapsMs: [1] });
  expect(lastTapUndone(tapping([1]))).toEqual({ at: 'ready', way: 'taps', windowSeconds: null });
});

describe('what is typed or pasted for a count', () => {
  test.each([
    ['19', '19'],
    [' 19 ', '19'],
    ['04', '4'],
    ['000', '0'],
    ['', ''],
  ])('“%s” is “%s”', (text, typed) => {
    expect(typedText(text)).toBe(typed);
  });

  // docs/conventions.md section 1: anything that is no number is refused, never guessed.
  test.each(['19.5', '19,5', '-19', '1e2', '19beats', '1234567', '19.555555555'])(
    '“%s” never becomes a number: it is refused in words',
    (text) => {
      let typed = '';
      for (const sign of text) typed = typedText(typed + sign);
      for (const one of [typed, typedText(text)]) {
        const parsed = parseCount({ n: one, windowSeconds: 300 });
        expect(parsed.ok, one).toBe(false);
      }
    },
  );

  test('a gap inside what is pasted is no number either', () => {
    expect(parseCount({ n: typedText('1 9'), windowSeconds: 300 }).ok).toBe(false);
  });
});

test('the touch that starts the clock does not break it off', () => {
  expect(isSameTouch(running, 1_120)).toBe(true);
  expect(isSameTouch(running, 1_600)).toBe(false);
});

test('an end that is met late is no end: whoever counts has counted on', () => {
  const start = { windowSeconds: 15, clock: 'any', first: 1 } as const;
  const running = { at: 'running', startedAtMs: 1_000, start } as unknown as Parameters<typeof isLate>[0];
  expect([isLate(running, 16_000), isLate(running, 17_000), isLate(running, 17_001)]).toEqual([
    false,
    false,
    true,
  ]);
});
