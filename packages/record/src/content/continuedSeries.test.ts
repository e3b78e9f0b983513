import { expect, test } from 'vitest';
import { H1, homeEvidence, inForceBy, keptReading, seriesContentOf } from '../testing/series.js';
import { addedEvidence, continuedSeries } from './continuedSeries.js';
import type { SeriesEvidence } from './series.js';
import { seriesMade } from './seriesMade.js';

const ISH = inForceBy({ home: 'ish-2020' });
const reading = (day: string, more = {}) => keptReading(`2026-07-${day}T07:30:00+01:00`, '138/86 74', more);

/** Whether readings on a day of July go on with the first days of July. */
function goesOn(
  day: string,
  more: Partial<SeriesEvidence> = {},
  before: Partial<SeriesEvidence> = {},
): boolean {
  const first = { id: 'a', content: seriesContentOf(homeEvidence(H1.slice(0, 20), before), ISH) };
  const evidence = homeEvidence([reading(day)], more);
  return continuedSeries([first], evidence, ISH)?.id === 'a';
}

// Days 1 to 5 are there; two days without a reading are the most (decision of this project).
test.each([
  ['05', true],
  ['06', true],
  ['08', true],
  ['09', false],
])('readings from 2026-07-%s on go on with the first to the fifth: %s', (day, isSo) => {
  expect(goesOn(day)).toBe(isSo);
});

test('readings of another device, site, kind, diary or treatment are apart; what one does not say parts nothing', () => {
  expect(goesOn('06', { treated: true })).toBe(true);
  expect(goesOn('06', { treated: true }, { treated: false })).toBe(false);
  expect(goesOn('06', { of: 'ambulatory' })).toBe(false);
  expect(goesOn('06', { readings: [reading('06', { site: 'wrist' })] })).toBe(false);
  const named = { readings: H1.slice(0, 20).map((one) => ({ ...one, device: 'A' })) };
  expect(goesOn('06', { readings: [reading('06', { device: 'A' })] }, named)).toBe(true);
  expect(goesOn('06', { readings: [reading('06', { device: 'B' })] }, named)).toBe(false);
  expect(goesOn('06', {}, named)).toBe(true);
});

// Out-of-office handbook 19, H1: days 2 to 7 are 136.5833/84.9583 (n 24).
test('both together come to what they would have come to at once: one first day is left out, not two', () => {
  const content = seriesContentOf(homeEvidence(H1.slice(0, 20)), ISH);
  const more = homeEvidence(H1.slice(20), { note: 'second half' });
  const both = seriesMade(addedEvidence(content, more), ISH, 'test');
  expect(both.value.mean.systolic).toBeCloseTo(136.5833, 4);
  expect(both.value.mean.diastolic).toBeCloseTo(84.9583, 4);
  expect([both.value.used, both.readings.length, both.note]).toEqual([24, 28, 'second half']);
  expect(both.readings.slice(0, 20)).toEqual(H1.slice(0, 20));
});

test('a refused row that the file has again is kept once', () => {
  const row = { line: 9, got: 'x;y', code: 'not-a-number', systolic: null, diastolic: null };
  const content = seriesContentOf(homeEvidence(H1.slice(0, 20), { refused: [row] }), ISH);
  const other = { ...row, line: 30 };
  const { refused } = addedEvidence(content, homeEvidence(H1.slice(20), { refused: [row, other] }));
  expect(refused).toEqual([row, other]);
});
