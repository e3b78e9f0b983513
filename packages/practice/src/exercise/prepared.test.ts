import {
  type Action,
  type Arranged,
  PROPER,
  type Preparation,
  type Scenario,
  SOUND_INSTRUMENT,
  scenarioOf,
} from '@evenfall/physiology';
import { expect, test } from 'vitest';
import { GOOD_OBSERVER } from '../observer/observer.js';
import { debrief } from './debrief.js';
import { withReading } from './demonstrate.js';
import { EXERCISE_SCHEMA, type Exercise, NO_EVIDENCE, NOTHING_ENTERED } from './exercise.js';

const RUN = (from: number): Action[] => [
  { tick: from, kind: 'steady-rise', mmHgPerSecond: 20, toMmHg: 170 },
  { tick: from + 2000, kind: 'steady-fall', mmHgPerSecond: 2.5, toMmHg: 40 },
  { tick: from + 12_400, kind: 'quick-release' },
];

/** A visit of somebody who comes so, read twice, with something put right between. */
function twice(found: Partial<Preparation>, mended: Arranged | null): Exercise {
  const between: Action[] = mended === null ? [] : [{ tick: 16_000, kind: 'arrange', ...mended }];
  return withReading(
    {
      schema: EXERCISE_SCHEMA,
      model: 1,
      scenario: scenarioOf('quiet-morning') as Scenario,
      seed: 3,
      circumstances: { ...PROPER, ...found },
      instrument: SOUND_INSTRUMENT,
      actions: [...RUN(400), ...between, ...RUN(24_000)],
      seconds: 190,
      earlier: [],
      evidence: NO_EVIDENCE,
      entered: NOTHING_ENTERED,
    },
    GOOD_OBSERVER,
    null,
  );
}

// What coffee (+3 to +14 / +2.1 to +13), smoke (+2.8 to +25 / +2 to +18) and cold (+5 to +32 / +4 to +23) do by the review of 328
// studies, and a cuff one size too small (+4.8/+1.8), which a loose one is read as: physiology handbook 12.
test.each([
  ['hadCaffeine', 'caffeine', [3, 14], [2.1, 13]],
  ['hadNicotine', 'nicotine', [2.8, 25], [2, 18]],
  ['isCold', 'cold', [5, 32], [4, 23]],
  ['isCuffLoose', 'cuff-loose', [3.8, 5.8], [0.8, 2.8]],
] as const)(
  '%s costs what is published, and nothing once it is put right',
  (key, code, systolic, diastolic) => {
    const costOf = (exercise: Exercise) => debrief(exercise).costs.costs.find((one) => one.code === code);
    const cost = costOf(twice({ [key]: true }, null));
    expect(cost?.systolic).toBeGreaterThanOrEqual(systolic[0]);
    expect(cost?.systolic).toBeLessThanOrEqual(systolic[1]);
    expect(cost?.diastolic).toBeGreaterThanOrEqual(diastolic[0]);
    expect(cost?.diastolic).toBeLessThanOrEqual(diastolic[1]);
    expect(costOf(twice({ [key]: true }, { [key]: false }))).toBeUndefined();
  },
);

test('a sleeve is a fault until it is taken off', () => {
  for (const [key, code] of [
    ['hasTightSleeve', 'tight-sleeve'],
    ['isOverSleeve', 'over-sleeve'],
  ] as const) {
    const codes = (mended: Arranged | null) =>
      debrief(twice({ [key]: true }, mended)).costs.costs.map((one) => one.code);
    expect(codes(null)).toContain(code);
    expect(codes({ [key]: false })).not.toContain(code);
  }
});
