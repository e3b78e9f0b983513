import { expect, test } from 'vitest';
import { Air } from './air.js';
import { Bulb } from './bulb.js';
import { SOUND_INSTRUMENT } from './instrument.js';

const ADULT = new Air('adult', false);

// Physiology handbook 6.2 and 15.
test.each([
  [20, 3.53],
  [40, 2.34],
  [60, 1.61],
  [80, 1.15],
  [100, 0.86],
  [120, 0.68],
  [160, 0.5],
  [200, 0.43],
])('at %d mmHg an adult cuff takes %f mL for one mmHg more', (mmHg, ml) => {
  expect(Math.abs(ADULT.complianceAt(mmHg) - ml)).toBeLessThanOrEqual(0.0051);
  const slope = (ADULT.amountAt(mmHg + 0.001) - ADULT.amountAt(mmHg - 0.001)) / 0.002;
  expect(ADULT.complianceAt(mmHg)).toBeCloseTo(slope, 5);
});

/** Full squeezes, each half a second after the last, until a pressure is reached. */
function squeezesTo(mmHg: number, share: number): number {
  const bulb = new Bulb(SOUND_INSTRUMENT, false);
  for (let n = 1; n < 60; n++) {
    bulb.act({ tick: 100 * n, kind: 'squeeze', share }, 100 * n);
    for (let tick = 100 * n; tick < 100 * (n + 1); tick++) bulb.tick(tick);
    if (bulb.mmHg >= mmHg) return n;
  }
  return Number.NaN;
}

// Physiology handbook 6.1: about 5 full squeezes to 80, 6 to 140, 6 to 7 to 200; ordinary hands take 10 to 15.
test('full squeezes fill the cuff as fast as the book has it, ordinary ones as ordinary hands do', () => {
  expect(Math.abs(squeezesTo(80, 1) - 5)).toBeLessThanOrEqual(1);
  expect(Math.abs(squeezesTo(140, 1) - 6)).toBeLessThanOrEqual(1);
  expect(Math.abs(squeezesTo(200, 1) - 6.5)).toBeLessThanOrEqual(1);
  const ordinary = squeezesTo(160, 0.45 / 0.85);
  expect(ordinary).toBeGreaterThanOrEqual(10);
  expect(ordinary).toBeLessThanOrEqual(15);
});

test('a bulb squeezed again at once has not filled yet', () => {
  const slow = new Bulb(SOUND_INSTRUMENT, false);
  const fast = new Bulb(SOUND_INSTRUMENT, false);
  for (let tick = 0; tick < 600; tick++) {
    if (tick % 100 === 0) slow.act({ tick, kind: 'squeeze', share: 1 }, tick);
    if (tick % 20 === 0) fast.act({ tick, kind: 'squeeze', share: 1 }, tick);
    slow.tick(tick);
    fast.tick(tick);
  }
  // Five times the squeezes at 0.1 s in place of 0.5 s, each of 0.29 of the bulb at most.
  expect(fast.mmHg).toBeGreaterThan(slow.mmHg);
  expect(ADULT.amountAt(fast.mmHg) - ADULT.amountAt(0)).toBeLessThan(
    1.6 * (ADULT.amountAt(slow.mmHg) - ADULT.amountAt(0)),
  );
});

test('warm air sags after pumping, by 2 to 4 percent of the rise', () => {
  const bulb = new Bulb(SOUND_INSTRUMENT, false);
  for (let tick = 0; tick < 1200; tick++) {
    if (tick % 80 === 0 && tick < 560) bulb.act({ tick, kind: 'squeeze', share: 1 }, tick);
    bulb.tick(tick);
  }
  const warm = new Bulb(SOUND_INSTRUMENT, false);
  let highest = 0;
  for (let tick = 0; tick < 6000; tick++) {
    if (tick % 80 === 0 && tick < 560) warm.act({ tick, kind: 'squeeze', share: 1 }, tick);
    warm.tick(tick);
    highest = Math.max(highest, warm.mmHg);
  }
  const sag = (highest - warm.mmHg) / highest;
  expect(sag).toBeGreaterThan(0.005);
  expect(sag).toBeLessThan(0.04);
});
