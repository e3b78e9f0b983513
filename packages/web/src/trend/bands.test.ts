import type { TrendRound, TrendValue } from '@evenfall/record';
import { expect, test } from 'vitest';
import { bandsOf } from './bands.js';

function round(...values: TrendValue[]): TrendRound {
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
  return {
    round: 'r',
    at,
    isPreliminary: false,
    isNotReliedOn: false,
    points,
    average: null,
    elsewhere: null,
  };
}

const pressure = (systolic: number, diastolic: number | null): TrendValue => ({
  of: 'pressure',
  systolic,
  diastolic,
  written: '',
  isAveraged: true,
  side: 'right',
  posture: 'sit',
});

test('only what was taken has a scale; pressure and pulse share one, as on paper', () => {
  expect(bandsOf([])).toEqual([]);
  const bands = bandsOf([
    round({ of: 'pulse', perMinute: 76 }, pressure(148, 92), { of: 'temperature', celsius: 38.4 }),
  ]);
  expect(bands.map(({ id, points }) => [id, points.length])).toEqual([
    ['circulation', 2],
    ['temperature', 1],
  ]);
});

test('a scale shows its least, and goes on in whole steps to whatever was measured', () => {
  expect(bandsOf([round(pressure(148, 92))])[0]?.range).toEqual([40, 180]);
  expect(bandsOf([round(pressure(233, 31))])[0]?.range).toEqual([20, 240]);
  expect(bandsOf([round({ of: 'oxygen-saturation', percent: 71, onOxygen: true })])[0]?.range).toEqual([
    68, 100,
  ]);
  expect(bandsOf([round({ of: 'temperature', celsius: 33.2 })])[0]?.range).toEqual([33, 39]);
});

test('a pressure by feel draws one number and no zero', () => {
  expect(bandsOf([round(pressure(122, null))])[0]?.range).toEqual([40, 180]);
});

test('temperatures stand on a scale in the unit of the reader', () => {
  const warm = round({ of: 'temperature', celsius: 38 }, { of: 'temperature', celsius: 39.5 });
  // 39.5 degC are 103.1 degF, exact (UCUM 2.1).
  const [band] = bandsOf([warm], '[degF]');
  expect(band?.range).toEqual([96, 104]);
  expect(band?.onScale(38)).toBe(100.4);
  const [kept] = bandsOf([warm]);
  expect(kept?.range).toEqual([35.5, 39.5]);
  expect(kept?.onScale(38)).toBe(38);
});
