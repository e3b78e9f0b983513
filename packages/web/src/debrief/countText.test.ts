import type { CountDebrief, RateRow } from '@evenfall/practice';
import { wordsFor } from '@evenfall/words';
import { describe, expect, test } from 'vitest';
import { rateTexts, rateVerdict, rhythmText, strengthText } from './countText.js';

const words = wordsFor('en');
const COUNT = {
  n: 8,
  there: 5,
  windowSeconds: 30,
  rhythm: { ofPerson: 'irregular', inWindow: 'irregular' },
  noticed: null,
} as unknown as CountDebrief;
const ROW: RateRow = {
  of: 'breaths',
  written: 16,
  had: 10,
  truth: 10,
  error: 6,
  withinPerMinute: 2,
  isAccepted: false,
  isTrue: false,
  isGrave: true,
  count: COUNT,
  taps: null,
};

test('sixteen breaths written where ten were: said, with what the window allows', () => {
  expect(rateVerdict(ROW, words)).toBe(
    'Not accepted yet: you wrote 16 a minute; a perfect count of the same 30 s gives 10.',
  );
  expect(rateTexts(ROW, words)).toEqual([
    'In your 30 s you counted 8; there were 5.',
    'In a window of 30 s one more or less is 2 a minute; a difference up to 2 a minute is accepted.',
    'Over the minute about it there were 10.',
    expect.stringContaining('more than 4 a minute'),
  ]);
});

test('taps are said as taps: what was there between the first and the last, and what went by without one', () => {
  const taps: NonNullable<RateRow['taps']> = {
    startSeconds: 10,
    windowSeconds: 30,
    taps: [
      { atSeconds: 10, isExtra: false },
      { atSeconds: 11, isExtra: true },
      { atSeconds: 40, isExtra: false },
    ],
    events: [10, 25, 40],
    wanted: [10, 25, 40],
    missed: [25],
    herePerMinute: 4,
    truePerMinute: 4,
    heartPerMinute: null,
    wristPerMinute: null,
  };
  const row: RateRow = {
    ...ROW,
    count: null,
    taps,
    had: 4,
    written: 4,
    isAccepted: true,
    isTrue: true,
    isGrave: false,
  };
  expect(rateVerdict(row, words)).toBe(
    'Accepted, the rate alone: you wrote 4 a minute; one tap for each gives 4.',
  );
  expect(rateTexts(row, words)[0]).toBe(
    '3 taps; from the first of them to the last there were 3 to tap. 1 had no tap; taps too many: 1.',
  );
  // One thing to do: what was let by before what was one too many.
  expect(rateTexts(row, words)[1]).toMatch(/^Next time: tap at each one/);
  const all = { ...taps, missed: [] };
  expect(rateTexts({ ...row, taps: all }, words)[1]).toMatch(/^Next time: one tap for each/);
  const clean = { ...all, taps: all.taps.filter(({ isExtra }) => !isExtra) };
  expect(rateTexts({ ...row, taps: clean }, words).join(' ')).not.toContain('Next time');
});

test('a right count of the wrong window, and a wrong one that comes out right, are told apart', () => {
  const texts = (more: Partial<RateRow>) => rateTexts({ ...ROW, isGrave: false, ...more }, words).join(' ');
  expect(texts({ isAccepted: true, isTrue: false })).toContain('could not have had from this window');
  expect(texts({ isAccepted: false, isTrue: true })).toContain('by luck');
  expect(texts({ isAccepted: true, isTrue: true })).not.toMatch(/luck|could not/);
});

describe('what was noted beside what it was', () => {
  const noted = (rhythmFelt: 'regular' | 'irregular' | null, more: Partial<CountDebrief> = {}) =>
    rhythmText({ ...COUNT, noticed: { rhythmFelt, strength: null, site: null }, ...more }, words);
  test('rhythm', () => {
    expect(noted('irregular')).toContain('So it was');
    expect(noted('regular')).toContain('It was irregular');
    expect(noted(null)).toContain('you did not note it');
    const even = { rhythm: { ofPerson: 'irregular', inWindow: 'regular' } as const };
    expect(noted('regular', even)).toContain('a longer window shows it');
    expect(noted('irregular', even)).toContain('So it was');
  });

  test('strength, where the person has one to tell', () => {
    const one = (strength: 'weak' | 'strong' | null) =>
      strengthText({ ...COUNT, noticed: { rhythmFelt: null, strength, site: null } }, ['pulse-weak'], words);
    expect([one('weak'), one('strong'), one(null)]).toEqual([
      'You noted its strength as weak. So it was.',
      'You noted its strength as strong. It was weak.',
      'It was weak, and you did not note its strength.',
    ]);
    expect(strengthText(COUNT, ['pulse-rate'], words)).toBeNull();
  });
});
