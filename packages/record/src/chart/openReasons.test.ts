import { expect, test } from 'vitest';
import type { StoredEntry } from '../entry/entry.js';
import { countContent, frame, idOf, kept, tapsContent } from '../testing/work.js';
import { openReasons } from './openReasons.js';
import { projectChart } from './projectChart.js';

const round = idOf(600);
const entry = (kind: 'count' | 'taps', id: number, content: object): StoredEntry =>
  kept(frame(kind, content, { id: idOf(id), sequence: id, round }), id);

const codes = (of: StoredEntry, entries: readonly StoredEntry[]) => {
  const [first] = projectChart(entries).rounds;
  if (first === undefined) throw new Error('no round');
  return openReasons(of, first).map(({ code }) => code);
};

// Bedside handbook 1.5 (common practice): a short count over 100 a minute asks for a full minute.
const fast = entry('count', 1, countContent({ n: 52, windowSeconds: 30 }));
const whole = (of: 'pulse' | 'breaths') => entry('count', 2, countContent({ of, n: 98, windowSeconds: 60 }));

test('why a longer count was asked for stands in the chart, until that count stands beside it', () => {
  expect(codes(fast, [fast])).toEqual(['fast-on-short-count']);
  expect(codes(fast, [fast, whole('pulse')])).toEqual([]);
  expect(codes(whole('pulse'), [fast, whole('pulse')])).toEqual([]);
});

test('a count of something else, a shorter one or one that was broken off does not stand for it', () => {
  expect(codes(fast, [fast, whole('breaths')])).toEqual(['fast-on-short-count']);
  const again = entry('count', 2, countContent({ n: 51, windowSeconds: 30 }));
  expect(codes(fast, [fast, again])).toEqual(['fast-on-short-count']);
  const broken = countContent({ windowSeconds: 60, interrupted: { reason: 'spoken-to', atSeconds: 9 } });
  expect(codes(fast, [fast, entry('count', 2, broken)])).toEqual(['fast-on-short-count']);
  expect(codes(entry('count', 2, broken), [fast, entry('count', 2, broken)])).toEqual([]);
});

// Bedside handbook 1.5, 1.12: taps that go on for a minute are a full minute; what they ask for themselves is not settled by them.
test('a full minute that was tapped stands for the longer count, a shorter one does not', () => {
  const tapped = (taps: number) =>
    entry('taps', 4, tapsContent(Array.from({ length: taps }, (_, k) => k * 0.6 + (k % 2) * 0.01)));
  expect(codes(fast, [fast, tapped(111)])).toEqual([]);
  expect(codes(fast, [fast, tapped(60)])).toEqual(['fast-on-short-count']);
  const one = entry('taps', 4, tapsContent([0]));
  expect(codes(fast, [fast, one])).toEqual(['fast-on-short-count']);
});

test('a rate set by hand has no reasons of the count that it stands over', () => {
  const override = { perMinute: 98, reason: 'heard at the apex' };
  const byHand = entry('count', 1, { ...countContent({ n: 52, windowSeconds: 30 }), override });
  expect(codes(byHand, [byHand])).toEqual([]);
});

test('of taps, what belongs into the story does not stand beside the rate', () => {
  const taps = entry('taps', 3, tapsContent([0, 0.5, 1.01, 1.5, 2, 2.52, 3, 3.5]));
  const said = codes(taps, [taps]);
  expect(said).toContain('fast-on-short-count');
  expect(said).not.toContain('few-intervals');
});
