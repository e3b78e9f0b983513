import { expect, test } from 'vitest';
import { Gauge } from './gauge.js';
import { SOUND_INSTRUMENT } from './instrument.js';

/** How far a gauge is behind on a steady fall, mmHg. */
function lagAt(rate: number, gauge: 'aneroid' | 'liquid-column'): number {
  const one = new Gauge({ ...SOUND_INSTRUMENT, gauge, frictionMmHg: 0 });
  for (let tick = 0; tick < 2000; tick++) one.tick(200);
  let mmHg = 200;
  for (let tick = 0; tick < 1000; tick++) {
    mmHg -= rate * 0.005;
    one.tick(mmHg);
  }
  return one.shown - mmHg;
}

// Physiology handbook 6.3: 0.16 at 2 and 0.8 at 10 mmHg/s for an aneroid; a column 0.25 s.
test.each([
  [2, 'aneroid', 0.16],
  [10, 'aneroid', 0.8],
  [2, 'liquid-column', 0.5],
] as const)('at %d mmHg/s a gauge (%s) is %f behind', (rate, gauge, lag) => {
  // A step of the fall is within a tick.
  expect(Math.abs(lagAt(rate, gauge) - lag)).toBeLessThan(rate * 0.0051);
});

test('a column overshoots and an aneroid does not', () => {
  const most = (gauge: 'aneroid' | 'liquid-column') => {
    const one = new Gauge({ ...SOUND_INSTRUMENT, gauge, frictionMmHg: 0 });
    let highest = 0;
    for (let tick = 0; tick < 1000; tick++) {
      one.tick(100);
      highest = Math.max(highest, one.shown);
    }
    return highest;
  };
  expect(most('aneroid')).toBeLessThanOrEqual(100);
  expect(most('liquid-column')).toBeGreaterThan(105);
});

test('zero, scale and friction', () => {
  const worn = new Gauge({ ...SOUND_INSTRUMENT, zeroOffsetMmHg: 6, scaleError: 0.01, frictionMmHg: 0 });
  expect(worn.shown).toBe(6);
  for (let tick = 0; tick < 2000; tick++) worn.tick(100);
  expect(worn.shown).toBeCloseTo(107, 6);
  const stiff = new Gauge(SOUND_INSTRUMENT);
  for (let tick = 0; tick < 2000; tick++) stiff.tick(0.5);
  expect(stiff.shown).toBe(0);
  for (let tick = 0; tick < 2000; tick++) stiff.tick(0.52);
  expect(stiff.shown).toBeGreaterThan(0.5);
});
