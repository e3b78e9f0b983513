import { tapResult } from '@evenfall/clinical';
import { expect, test } from 'vitest';
import { countStrip, STRIP_WIDTH, tapsStrip } from './stripGeometry.js';

test('a count is drawn as so many marks, evenly, inside its window', () => {
  const { marks } = countStrip(4);
  expect(marks.map(({ x }) => x)).toEqual([40, 120, 200, 280]);
  expect(marks.every(({ is }) => is === 'even')).toBe(true);
  expect(countStrip(0).marks).toEqual([]);
});

test('taps stand at their own moments', () => {
  const { marks } = tapsStrip([10, 10.5, 12], []);
  expect(marks).toEqual([
    { x: 0, is: 'timed' },
    { x: 80, is: 'timed' },
    { x: STRIP_WIDTH, is: 'timed' },
  ]);
});

test('what clinical repaired is drawn where it was repaired', () => {
  // A steady pulse of 60 a minute with its tap at 6 s missed and the one at 9 s tapped twice.
  const seconds = [0, 1, 2, 3, 4, 5, 7, 8, 9, 9.2, 10, 11, 12, 13];
  const { repairs } = tapResult({ of: 'pulse', source: 'touch', seconds }, { repair: true });
  const { marks } = tapsStrip(seconds, repairs);
  const secondsOf = (is: string) =>
    marks.filter((mark) => mark.is === is).map(({ x }) => Math.round((x / STRIP_WIDTH) * 130) / 10);
  expect(secondsOf('missed')).toEqual([6]);
  expect(secondsOf('doubled')).toEqual([9.2]);
  expect(secondsOf('timed')).toHaveLength(13);
});

test('a gap whose next tap is taken out reaches to the one that stays', () => {
  const { marks } = tapsStrip(
    [0, 1, 3, 3.1, 4],
    [
      { index: 2, what: 'missed', added: 1 },
      { index: 3, what: 'doubled', added: -1 },
    ],
  );
  expect(marks.find(({ is }) => is === 'missed')?.x).toBeCloseTo((2.05 / 4) * STRIP_WIDTH, 2);
});

test('one tap alone stands in the middle', () => {
  expect(tapsStrip([4], []).marks).toEqual([{ x: STRIP_WIDTH / 2, is: 'timed' }]);
});
