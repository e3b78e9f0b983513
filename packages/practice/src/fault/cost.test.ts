import {
  bladderFor,
  type Circumstances,
  PROPER,
  SCENARIOS,
  type Scenario,
  SOUND_INSTRUMENT,
  scenarioOf,
} from '@evenfall/physiology';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Debrief, debrief } from '../exercise/debrief.js';
import { demonstrate } from '../exercise/demonstrate.js';
import { GOOD_OBSERVER as GOOD, type Observer } from '../observer/observer.js';
import type { Costs } from './cost.js';

const quiet = scenarioOf('quiet-morning') as Scenario;
const stiff = scenarioOf('stiff-pipe') as Scenario;

function costs(
  scenario: Scenario,
  observer: Observer,
  some: Partial<Circumstances> = {},
  more: Partial<typeof SOUND_INSTRUMENT> = {},
  seed = 1,
): Costs & Pick<Debrief, 'entered' | 'isByMuffled'> {
  const instrument = { ...SOUND_INSTRUMENT, bladder: bladderFor(scenario.armCm), ...more };
  const exercise = demonstrate(observer, scenario, seed, { ...PROPER, ...some }, instrument);
  const { costs: found, entered, isByMuffled } = debrief(exercise);
  return { ...found, entered, isByMuffled };
}
const hand = (some: Partial<Observer['hand']>): Observer => ({ ...GOOD, hand: { ...GOOD.hand, ...some } });
const reader = (some: Partial<Observer['reader']>): Observer => ({
  ...GOOD,
  reader: { ...GOOD.reader, ...some },
});

test('a good observer has no fault, and reads the best obtainable within a mark', () => {
  const { costs: found, best, entered } = costs(quiet, GOOD);
  expect(found).toEqual([]);
  expect(Math.abs((entered.systolic ?? 0) - (best?.systolic ?? 0))).toBeLessThanOrEqual(2);
  expect(Math.abs((entered.diastolic ?? 0) - (best?.diastolic ?? 0))).toBeLessThanOrEqual(2);
});

describe('a fault alone costs what the book says, to a beat of the fall', () => {
  // Physiology handbook 12: .776 mmHg per cm on both numbers.
  test('the arm 10 cm low', () => {
    // A later beat with another breath is met, so one reading may be off by several mmHg and the mean of twelve by 2.
    const found = Array.from(
      { length: 12 },
      (_, seed) => costs(quiet, GOOD, { armBelowHeartCm: 10 }, {}, seed).costs,
    );
    for (const one of found) expect(one).toMatchObject([{ code: 'arm-height', doInstead: 'arm-at-heart' }]);
    const mean = (of: 'systolic' | 'diastolic') =>
      found.reduce((sum, [one]) => sum + (one?.[of] ?? 0), 0) / 12;
    expect(Math.abs(mean('systolic') - 7.76)).toBeLessThanOrEqual(2.5);
    expect(Math.abs(mean('diastolic') - 7.76)).toBeLessThanOrEqual(2.5);
  });

  // Physiology handbook 9: faster falls read the systolic low and the diastolic high.
  test('let down at 8 mmHg a second', () => {
    const [first] = costs(quiet, hand({ rateMmHgPerSecond: 8, mostPerBeatMmHg: null })).costs;
    expect(first?.code).toBe('too-fast');
    expect(first?.systolic).toBeLessThan(0);
    expect(first?.diastolic).toBeGreaterThan(0);
  });

  // Physiology handbook 8.5: pumped to 160 into a gap the systolic is low by some 25 to 56.
  test('pumped up into a gap', () => {
    const [first] = costs(stiff, hand({ palpatesFirst: false, peakMmHg: 160 })).costs;
    expect(first).toMatchObject({ code: 'not-felt-first', doInstead: 'feel-first' });
    expect(first?.systolic).toBeLessThan(-20);
    expect(first?.systolic).toBeGreaterThan(-60);
  });

  test('a needle read a second late: at about the rate of the fall, downwards', () => {
    const [first] = costs(quiet, reader({ reactionSeconds: 1 })).costs;
    expect(first?.code).toBe('read-late');
    expect(first?.systolic).toBeLessThan(-1);
    expect(first?.systolic).toBeGreaterThan(-3);
  });

  test('written to the nearest ten: a habit of the pen, up to 6', () => {
    const [first] = costs(quiet, reader({ tenShare: 1 })).costs;
    expect(first?.code).toBe('digit-habit');
    expect(Math.abs(first?.systolic ?? 99)).toBeLessThanOrEqual(6);
  });

  test('a gauge that stands at 6 with no pressure on it', () => {
    const [first] = costs(quiet, GOOD, {}, { zeroOffsetMmHg: 6 }).costs;
    expect(first?.code).toBe('gauge-off');
    expect(first?.systolic).toBeCloseTo(6, 9);
    expect(first?.diastolic).toBeCloseTo(6, 9);
  });
});

test('whatever is done wrong, shares and what is left sum to entered minus best', () => {
  const faulty = fc.record({
    scenario: fc.constantFrom(...SCENARIOS.slice(0, 20)),
    isTalking: fc.boolean(),
    armBelowHeartCm: fc.constantFrom(0, 8, -6),
    rate: fc.constantFrom(2.5, 5, 9),
    peak: fc.constantFrom(0, 150, 200),
    tens: fc.boolean(),
  });
  fc.assert(
    fc.property(faulty, ({ scenario, isTalking, armBelowHeartCm, rate, peak, tens }) => {
      const habits = peak === 0 ? {} : { palpatesFirst: false, peakMmHg: peak };
      const observer: Observer = {
        ...GOOD,
        reader: { ...GOOD.reader, tenShare: tens ? 1 : 0 },
        hand: { ...GOOD.hand, rateMmHgPerSecond: rate, mostPerBeatMmHg: null, ...habits },
      };
      const one = costs(scenario, observer, { isTalking, armBelowHeartCm });
      const { costs: found, best, left, entered, isByMuffled } = one;
      const diastolic = isByMuffled ? (entered.muffled ?? entered.diastolic) : entered.diastolic;
      const written = { systolic: entered.systolic, diastolic };
      for (const side of ['systolic', 'diastolic'] as const) {
        const shares = found.map((one) => one[side]);
        if (best === null || left?.[side] == null || written[side] === null || shares.includes(null))
          continue;
        const sum = shares.reduce<number>((all, one) => all + (one ?? 0), left[side]);
        expect(sum).toBeCloseTo(written[side] - best[side], 9);
      }
    }),
    { numRuns: 25 },
  );
});
