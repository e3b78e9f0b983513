import { expect, test } from 'vitest';
import { H1, keptReading } from '../testing/series.js';
import { newReadings } from './newReadings.js';

test('readings that another series of the person has are said to be there, and nothing is added twice', () => {
  const known = [{ series: 'a', readings: [...H1] }];
  const twice = newReadings(known, H1);
  expect(twice.fresh).toEqual([]);
  expect(twice.already).toHaveLength(28);
  expect(twice.already.every(({ series }) => series === 'a')).toBe(true);
  expect(newReadings([], H1).fresh).toHaveLength(28);
});

test('the same instant written with another offset is the same; another number, pulse or site is not', () => {
  const known = [{ series: 'a', readings: [keptReading('2026-07-01T08:00:00+01:00', '142/90 78')] }];
  const count = (reading: ReturnType<typeof keptReading>) => newReadings(known, [reading]).fresh.length;
  expect(count(keptReading('2026-07-01T07:00:00Z', '142/90 78'))).toBe(0);
  expect(count(keptReading('2026-07-01T08:01:00+01:00', '142/90 78'))).toBe(1);
  expect(count(keptReading('2026-07-01T08:00:00+01:00', '142/91 78'))).toBe(1);
  expect(count(keptReading('2026-07-01T08:00:00+01:00', '142/90'))).toBe(1);
  expect(count(keptReading('2026-07-01T08:00:00+01:00', '142/90 78', { site: 'wrist' }))).toBe(1);
});
