import { expect, test } from 'vitest';
import { keptReading } from '../testing/series.js';
import { seriesAbout } from './seriesAbout.js';

test('each device, arm and zone is said once, in the order of the readings, and nobody’s is none', () => {
  const at = (hour: number, more = {}) =>
    keptReading(`2026-07-01T0${hour}:00:00.000+01:00`, '128/76 60', more);
  const readings = [
    at(6),
    at(7, { device: 'Cuff B (invented)', arm: 'left' }),
    at(8, { device: 'Cuff A (invented)', arm: 'left' }),
    at(9, { device: 'Cuff B (invented)', arm: 'right' }),
  ];
  expect(seriesAbout({ readings })).toEqual({
    devices: ['Cuff B (invented)', 'Cuff A (invented)'],
    arms: ['left', 'right'],
    zones: ['Europe/Lisbon'],
  });
  expect(seriesAbout({ readings: [at(6)] })).toMatchObject({ devices: [], arms: [] });
});
