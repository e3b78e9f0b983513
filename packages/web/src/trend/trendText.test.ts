import type { TrendRound, TrendValue } from '@evenfall/record';
import { loadWords, wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { drawnAverage, isUpOrLying } from './bands.js';
import { averageText, readText } from './trendText.js';

const words = wordsFor('en-GB');
const pressure = (systolic: number, diastolic: number | null, written: string): TrendValue => ({
  of: 'pressure',
  systolic,
  diastolic,
  written,
  isAveraged: true,
  side: 'left',
  posture: 'sit',
});

function round(values: readonly TrendValue[], average: TrendRound['average'] = null): TrendRound {
  const at = '2026-03-02T09:30:00.000Z';
  const points = values.map((value, of) => ({
    entry: `${of}`,
    at,
    value,
    isContested: false,
    isByHand: false,
    isAmended: false,
    failedGauge: null,
    flags: 0,
  }));
  return { round: 'r', at, isPreliminary: false, isNotReliedOn: false, points, average, elsewhere: null };
}

test('a pressure is read out as the trade writes it: no zero where there is no diastolic', () => {
  expect(readText(round([pressure(122, null, '122/P')]), 'pressure', words)).toBe('122/P');
  expect(readText(round([pressure(118, 62, '118/62/0')]), 'pressure', words)).toBe('118/62/0');
});

test('a mean comes first, with its readings; one beside a limit is not rounded onto it', () => {
  const readings = [pressure(140, 88, '140/88'), pressure(139, 86, '139/86')];
  const shown = { systolic: '139.5', diastolic: '87' };
  const both = round(readings, {
    systolic: 139.5,
    diastolic: 87,
    readings: 2,
    used: [],
    shown,
    posture: 'sit',
  });
  expect(readText(both, 'pressure', words)).toBe('mean of 2: 139.5/87 (140/88, 139/86)');
  expect(averageText(round(readings), words)).toBeNull();
});

test('another sign in its own figures', () => {
  const taken = round([
    { of: 'temperature', celsius: 38 },
    { of: 'consciousness', level: 'confusion' },
    { of: 'pulse', perMinute: 76.4 },
  ]);
  expect(readText(taken, 'temperature', words)).toBe('38.0');
  expect(readText(taken, 'pulse', words)).toBe('76');
  expect(readText(taken, 'consciousness', words)).toMatch(/confus/i);
});

// 148/92 sitting and 112/70 standing are no swing: the posture stands beside the number (common practice, no source).
test('a pressure that was not taken sitting says in what posture', () => {
  const standing = { ...pressure(112, 70, '112/70'), posture: 'stand' } as TrendValue;
  const lying = { ...pressure(140, 86, '140/86'), posture: 'lie' } as TrendValue;
  expect(readText(round([pressure(148, 92, '148/92'), standing, lying]), 'pressure', words)).toBe(
    '148/92, 112/70 (standing), 140/86 (lying on the back)',
  );
});

test('a mean of readings that were all taken lying says so, and is drawn as they are', async () => {
  const shown = { systolic: null, diastolic: null };
  const mean = { systolic: 111, diastolic: 70, readings: 2, used: [], shown, posture: 'lie' } as const;
  expect(averageText(round([], mean), words)).toBe('mean of 2, lying on the back: 111/70');
  expect(averageText(round([], mean), await loadWords('es'))).toBe('media de 2, en decúbito supino: 111/70');
  expect(isUpOrLying(drawnAverage(mean))).toBe(true);
  expect(isUpOrLying(drawnAverage({ ...mean, posture: 'sit' }))).toBe(false);
  expect(isUpOrLying(drawnAverage({ ...mean, posture: null }))).toBe(false);
});

test('a value from elsewhere that may have been corrected, or is a correction of nobody knows which, says so', () => {
  const said = round([pressure(148, 92, '148/92')]);
  const is = (unclear: 'may-be-corrected' | 'correction') =>
    readText({ ...said, points: said.points.map((one) => ({ ...one, unclear })) }, 'pressure', words);
  expect(is('may-be-corrected')).toBe('148/92 (may have been corrected since)');
  expect(is('correction')).toBe('148/92 (a correction, nobody knows of which)');
});
