import { type Taps, UNKNOWN_CIRCUMSTANCES } from '@evenfall/clinical';
import { chartTaps, NOTHING_CHOSEN } from '@evenfall/record';
import { expect, test } from 'vitest';
import { faceFlags } from './faceFlags.js';

/** The codes beside taps with these intervals, in seconds, while the value is being taken. */
function beside(intervals: readonly number[], felt: 'irregular' | null = null, repair = true): string[] {
  const seconds = [0];
  for (const interval of intervals) seconds.push((seconds.at(-1) ?? 0) + interval);
  const taps: Taps = { of: 'pulse', source: 'key', seconds };
  const circumstances = { ...UNKNOWN_CIRCUMSTANCES, rhythmFelt: felt };
  const done = { taps, repair, circumstances, override: null, note: null };
  const content = chartTaps(done, NOTHING_CHOSEN, 'evenfall 0.0.0');
  return faceFlags({ kind: 'taps', content }).map(({ code }) => code);
}

test('even taps need nothing beside them', () => {
  expect(beside(new Array(30).fill(0.8))).toEqual([]);
});

test('felt irregular is told with the longer count it asks for', () => {
  expect(beside(new Array(30).fill(0.8), 'irregular')).toEqual(['rhythm-irregular', 'irregular']);
});

test('a rhythm too uneven to be named is told, though it has no word', () => {
  // A pulse that slows from 100 to 60 a minute: each interval like the last, and over all too wide for regular.
  const uneven = Array.from({ length: 40 }, (_, i) => 0.6 + 0.01 * i);
  expect(beside(uneven, null, false)).toEqual(['rhythm-not-clear']);
});

test('a count of one tap says why there is no rate', () => {
  expect(beside([])).toEqual(['too-few']);
});
