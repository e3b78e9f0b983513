import { expect, test } from 'vitest';
import { Air } from './air.js';
import { Bulb } from './bulb.js';
import { SOUND_INSTRUMENT } from './instrument.js';
import { openingOf, outflow } from './valve.js';

const AIR = new Air('adult', false);
const fallAt = (opening: number, mmHg: number) => outflow(opening, mmHg, 0.75) / AIR.complianceAt(mmHg);

// Physiology handbook 6.2 and 15: a valve set for 2.5 mmHg/s at 140 and left alone.
test.each([
  [200, 4.3],
  [180, 3.75],
  [160, 3.1],
  [120, 1.9],
  [100, 1.29],
  [80, 0.8],
  [60, 0.5],
])('at %d mmHg it lets down %f mmHg a second', (mmHg, rate) => {
  const opening = 2.5 / fallAt(1, 140);
  const digit = rate === 1.29 || rate === 3.75 ? 0.0051 : 0.051;
  expect(Math.abs(fallAt(opening, mmHg) - rate)).toBeLessThanOrEqual(digit + 0.01);
});

test('a valve lets nothing out in the first 8 degrees and is wide open at 120', () => {
  expect([0, 7.9, 8].map(openingOf)).toEqual([0, 0, 0]);
  expect(openingOf(8.1)).toBeGreaterThan(0);
  expect([120, 150].map(openingOf)).toEqual([1, 1]);
});

/** Seconds for a wide-open or released cuff to fall from 260 to 15 mmHg. */
function secondsDown(kind: 'quick-release' | 'valve'): number {
  const bulb = new Bulb(SOUND_INSTRUMENT, false);
  bulb.act({ tick: 0, kind: 'steady-rise', mmHgPerSecond: 200, toMmHg: 260 }, 0);
  for (let tick = 0; tick < 400; tick++) bulb.tick(tick);
  bulb.act(kind === 'valve' ? { tick: 400, kind, degrees: 120 } : { tick: 400, kind }, 400);
  for (let tick = 400; tick < 8000; tick++) {
    bulb.tick(tick);
    if (bulb.mmHg <= 15) return (tick - 399) / 200;
  }
  return Number.NaN;
}

// ISO 81060-1 by physiology handbook 6.2, from memory: 260 to 15 mmHg in 10 s or less.
test('a quick release takes at most ten seconds', () => {
  expect(secondsDown('quick-release')).toBeLessThanOrEqual(10);
  expect(secondsDown('valve')).toBeGreaterThan(secondsDown('quick-release'));
});

test('a leak of 12 mmHg a minute lowers a shut cuff by that', () => {
  const bulb = new Bulb({ ...SOUND_INSTRUMENT, leakMmHgPerMinute: 12 }, false);
  bulb.act({ tick: 0, kind: 'steady-rise', mmHgPerSecond: 100, toMmHg: 150 }, 0);
  for (let tick = 0; tick < 400; tick++) bulb.tick(tick);
  bulb.act({ tick: 400, kind: 'valve', degrees: 0 }, 400);
  for (let tick = 400; tick < 400 + 60 * 200; tick++) bulb.tick(tick);
  expect(bulb.mmHg).toBeCloseTo(138, 6);
});
