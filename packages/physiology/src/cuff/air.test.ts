import { expect, test } from 'vitest';
import { Air } from './air.js';
import { Bulb } from './bulb.js';
import { Gauge } from './gauge.js';
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

// Physiology handbook 6.1, its formulas written out: air in bladder and tubes, 60 mL x .85, less as the pressure is higher.
test('two full squeezes at 100 raise it as the formulas of the book do', () => {
  const amount = (mmHg: number) => {
    const volume = 60 + ((270 - 60) * (1 - Math.exp(-mmHg / 40))) / (1 - Math.exp(-4.5));
    return ((volume + 25) * (760 + mmHg)) / 760;
  };
  const after = (mmHg: number) => {
    const wanted = amount(mmHg) + (60 * 0.85 * 760) / (760 + mmHg);
    let [low, high] = [mmHg, 400];
    for (let i = 0; i < 60; i++) {
      const middle = (low + high) / 2;
      if (amount(middle) < wanted) low = middle;
      else high = middle;
    }
    return low;
  };
  const bulb = new Bulb(SOUND_INSTRUMENT, false);
  bulb.act({ tick: 0, kind: 'steady-rise', mmHgPerSecond: 60, toMmHg: 100 }, 0);
  for (let tick = 0; tick < 800; tick++) bulb.tick(tick);
  let wanted = 100;
  for (const from of [800, 900]) {
    wanted = after(wanted);
    bulb.act({ tick: from, kind: 'squeeze', share: 1 }, from);
    for (let tick = from; tick < from + 100; tick++) bulb.tick(tick);
    // Air that is warm by 3 % of the rise lies on top and sags again.
    expect(bulb.mmHg - wanted).toBeGreaterThan(-3);
    expect(bulb.mmHg - wanted).toBeLessThan(0.03 * (wanted - 100) + 3);
  }
  expect(wanted).toBeLessThan(300);
});

// Common practice: the scale ends at 300 mmHg; a hand that goes on squeezing blows the rest off.
test('squeezes never bring more than 300 mmHg into a cuff, and the needle stands at the end of its scale', () => {
  const bulb = new Bulb({ ...SOUND_INSTRUMENT, bladder: 'infant' }, false);
  const gauge = new Gauge({ ...SOUND_INSTRUMENT, zeroOffsetMmHg: 6 });
  let highest = 0;
  for (let tick = 0; tick < 3000; tick++) {
    if (tick % 80 === 0) bulb.act({ tick, kind: 'squeeze', share: 1 }, tick);
    bulb.tick(tick);
    gauge.tick(bulb.mmHg);
    highest = Math.max(highest, bulb.mmHg);
    expect(gauge.shown).toBeLessThanOrEqual(300);
  }
  expect(highest).toBe(300);
  expect(gauge.shown).toBe(300);
  // Let down it is read at once again.
  bulb.act({ tick: 3000, kind: 'steady-fall', mmHgPerSecond: 10, toMmHg: 250 }, 3000);
  for (let tick = 3000; tick < 5000; tick++) {
    bulb.tick(tick);
    gauge.tick(bulb.mmHg);
  }
  expect(gauge.shown).toBeCloseTo(256, 0);
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
