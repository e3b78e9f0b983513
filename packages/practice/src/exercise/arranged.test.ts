import {
  type Action,
  type Circumstances,
  PROPER,
  type Scenario,
  SOUND_INSTRUMENT,
  scenarioOf,
} from '@evenfall/physiology';
import { expect, test } from 'vitest';
import { sumOfLedger } from '../ledger/ledger.js';
import { GOOD_OBSERVER } from '../observer/observer.js';
import { debrief } from './debrief.js';
import { withReading } from './demonstrate.js';
import { EXERCISE_SCHEMA, type Exercise, NO_EVIDENCE, NOTHING_ENTERED } from './exercise.js';
import { circumstancesAt, instrumentAt, replay } from './replay.js';
import { reportedOf } from './reportedOf.js';

const quiet = scenarioOf('quiet-morning') as Scenario;
const FOUND = {
  ...PROPER,
  hasLegsCrossed: true,
  isTalking: true,
  armBelowHeartCm: 14,
  isArmUnsupported: true,
};
/** Two inflations, let down evenly; the person is put right, or not, between them. */
const RUN = (from: number): Action[] => [
  { tick: from, kind: 'steady-rise', mmHgPerSecond: 20, toMmHg: 160 },
  { tick: from + 2000, kind: 'steady-fall', mmHgPerSecond: 2.5, toMmHg: 40 },
  { tick: from + 12_000, kind: 'quick-release' },
];
const SECOND = 24_000;

function twice(between: Action[], seed = 3, circumstances = FOUND, scenario = quiet): Exercise {
  const blank: Exercise = {
    schema: EXERCISE_SCHEMA,
    model: 1,
    scenario,
    seed,
    circumstances,
    instrument: SOUND_INSTRUMENT,
    actions: [...RUN(400), ...between, ...RUN(SECOND)],
    seconds: 190,
    earlier: [],
    evidence: NO_EVIDENCE,
    entered: NOTHING_ENTERED,
  };
  return withReading(blank, GOOD_OBSERVER, null);
}

const RIGHT: Action = {
  tick: 16_000,
  kind: 'arrange',
  hasLegsCrossed: false,
  isTalking: false,
  armBelowHeartCm: 0,
  isArmUnsupported: false,
};

test('what was put right between two inflations is no fault of the second, and was one of the first', () => {
  const codes = (exercise: Exercise) => debrief(exercise).costs.costs.map(({ code }) => code);
  const left = twice([]);
  expect(codes(left)).toEqual(
    expect.arrayContaining(['talking', 'legs-crossed', 'arm-height', 'arm-unsupported']),
  );
  const right = twice([RIGHT]);
  for (const code of ['talking', 'legs-crossed', 'arm-height', 'arm-unsupported'])
    expect(codes(right)).not.toContain(code);
  expect(circumstancesAt(right, 79.9, null)).toMatchObject({ hasLegsCrossed: true, armBelowHeartCm: 14 });
  expect(circumstancesAt(right, 80.1, null)).toMatchObject({ hasLegsCrossed: false, armBelowHeartCm: 0 });
});

// Physiology handbook 12: talking 8/6, legs 5/3, arm 14 cm x .776 = 10.9, its muscles 1.5/2.5: 25.4 over 22.4 in all.
test('the reading falls by what the book says of them', () => {
  const mean = (between: Action[]) => {
    let [systolic, diastolic] = [0, 0];
    for (let seed = 0; seed < 12; seed++) {
      const { entered } = twice(between, seed);
      systolic += (entered.systolic ?? 0) / 12;
      diastolic += (entered.diastolic ?? 0) / 12;
    }
    return { systolic, diastolic };
  };
  const [left, right] = [mean([]), mean([RIGHT])];
  expect(Math.abs(left.systolic - right.systolic - 25.4)).toBeLessThan(3);
  expect(Math.abs(left.diastolic - right.diastolic - 22.4)).toBeLessThan(3);
});

test('the ledger still sums to the error, though the pulse went otherwise before', () => {
  const { ledger } = debrief(twice([RIGHT]));
  for (const one of [ledger.systolic, ledger.diastolic]) {
    if (one === null) throw new Error('no ledger');
    expect(sumOfLedger(one)).toBeCloseTo(one.entered - one.longRun, 9);
    expect(one.technique.map(({ code }) => code)).not.toContain('talking');
  }
});

// Physiology handbook 12: one size too small reads 4.8/1.8 higher; the gauge and the hose stay the same.
test('another cuff between two inflations is the one that is judged', () => {
  const small = { ...SOUND_INSTRUMENT, bladder: 'child' as const };
  const exercise = withReading(
    { ...twice([{ tick: 16_000, kind: 'cuff', bladder: 'adult' }], 3, PROPER), instrument: small },
    GOOD_OBSERVER,
    null,
  );
  expect(instrumentAt(exercise, 79)).toEqual(small);
  expect(instrumentAt(exercise, 81)).toEqual({ ...small, bladder: 'adult' });
  expect(debrief(exercise).costs.costs.map(({ code }) => code)).not.toContain('cuff-size');
  const kept = withReading({ ...exercise, actions: [...RUN(400), ...RUN(SECOND)] }, GOOD_OBSERVER, null);
  expect(debrief(kept).costs.costs.map(({ code }) => code)).toContain('cuff-size');
});

// The scenario of the book (physiology handbook 14, 27): lying 144/80, at one minute 116/72, at three 120/74.
test('somebody who stands up falls from that moment on', () => {
  const scenario = scenarioOf('up-too-fast') as Scenario;
  const up: Action = { tick: 12_000, kind: 'arrange', posture: 'standing' };
  const base = { ...twice([], 5, PROPER), scenario, seconds: 260 };
  const [stays, stands] = [replay({ ...base, actions: [] }), replay({ ...base, actions: [up] })];
  const systolic = ({ beats }: typeof stays, from: number, to: number) => {
    const [first, last] = [Math.round(from / 0.8), Math.round(to / 0.8)];
    const some = beats.slice(first, last).map((one) => one.systolic);
    return some.reduce((sum, one) => sum + one, 0) / some.length;
  };
  expect(systolic(stands, 10, 55)).toBeCloseTo(systolic(stays, 10, 55), 6);
  expect(Math.abs(systolic(stays, 100, 140) - systolic(stands, 100, 140) - 28)).toBeLessThan(6);
  expect(circumstancesAt({ ...base, actions: [up] }, 61, null).standingMinutes).toBeCloseTo(-1, 9);
});

const between = (arranged: Partial<Circumstances>): Action => ({
  tick: 16_000,
  kind: 'arrange',
  ...arranged,
});
const FRESH = { ...PROPER } as typeof FOUND;

// Physiology handbook 11 and 14, row 33: noise hides the softest sounds, so that the first comes low and the last high.
test('quiet that is asked for takes the noise away, and its cost with it', () => {
  const bay = { ...(scenarioOf('noisy-bay') as Scenario), noiseDbA: 78 };
  const both = [[], [between({ isQuieter: true })]].map((asked) => {
    const all = [1, 2, 3, 4, 5, 6].map((seed) => twice(asked, seed, FRESH, bay));
    const costs = all.flatMap((one) => debrief(one).costs.costs.filter(({ code }) => code === 'noise'));
    const mean = (of: 'systolic' | 'diastolic') =>
      all.reduce((sum, { entered }) => sum + (entered[of] ?? 0) / all.length, 0);
    return { costs, systolic: mean('systolic'), diastolic: mean('diastolic') };
  });
  const [loud, still] = both;
  expect(loud?.costs).toHaveLength(6);
  for (const one of loud?.costs ?? []) {
    expect(one.doInstead).toBe('quiet-place');
    expect(one.systolic).toBeLessThanOrEqual(0);
    expect(one.diastolic).toBeGreaterThan(0);
  }
  expect(still?.costs).toEqual([]);
  expect(still?.systolic).toBeGreaterThanOrEqual(loud?.systolic ?? 999);
  expect(still?.diastolic).toBeLessThan((loud?.diastolic ?? 0) - 2);
  const [asked, not] = [[between({ isQuieter: true })], []].map((done) =>
    reportedOf(twice(done, 3, FRESH, bay), []).find(({ code }) => code === 'noise-of-place'),
  );
  expect([asked?.is, not?.is]).toEqual(['reported', 'not-reported']);
});

// Physiology handbook 8.5: an arm raised before pumping leaves 0.4 of the width of a gap.
test('an arm that is raised before pumping shortens the gap of that run', () => {
  const stiff = scenarioOf('stiff-pipe') as Scenario;
  const width = (done: Action[]) => {
    const { gap, isArmRaised } = debrief(twice(done, 3, FRESH, stiff));
    return { isArmRaised, mmHg: (gap?.topMmHg ?? 0) - (gap?.bottomMmHg ?? 0) };
  };
  expect(width([])).toEqual({ isArmRaised: false, mmHg: 26 });
  const raised = width([between({ wasArmRaised: true })]);
  expect(raised.isArmRaised).toBe(true);
  expect(raised.mmHg).toBeCloseTo(10.4, 9);
});
