import {
  type Action,
  MODEL,
  PROPER,
  type Scenario,
  SOUND_INSTRUMENT,
  scenarioOf,
} from '@evenfall/physiology';
import { expect, test } from 'vitest';
import { GOOD_OBSERVER } from '../observer/observer.js';
import { debrief } from './debrief.js';
import { withReading } from './demonstrate.js';
import { type Exercise, NO_EVIDENCE, NOTHING_ENTERED } from './exercise.js';
import { parseActions } from './parseActions.js';

const twoArms = scenarioOf('two-arms') as Scenario;
const run = (from: number, toMmHg: number): Action[] => [
  { tick: from, kind: 'steady-rise', mmHgPerSecond: 20, toMmHg },
  { tick: from + 2200, kind: 'steady-fall', mmHgPerSecond: 2.5, toMmHg: 40 },
  { tick: from + 14_000, kind: 'quick-release' },
];

/** Measured on the right arm, then once more after the cuff was put on what is asked. */
function second(between: Action[], seed: number): Exercise {
  const blank: Exercise = {
    schema: 1,
    model: MODEL,
    scenario: twoArms,
    seed,
    circumstances: PROPER,
    instrument: SOUND_INSTRUMENT,
    actions: [...run(400, 200), ...between, ...run(24_000, 200)],
    seconds: 200,
    evidence: NO_EVIDENCE,
    entered: NOTHING_ENTERED,
  };
  return withReading(blank, GOOD_OBSERVER, null);
}

const TO_LEFT: Action = { tick: 18_000, kind: 'arrange', arm: 'left' };

// Physiology handbook 14, row 28: right 162/88, left 136/82.
test('on the other arm there are other numbers, by what the book says, and they are what is true there', () => {
  const SEEDS = 8;
  const sums = { right: [0, 0], left: [0, 0] };
  for (let seed = 1; seed <= SEEDS; seed++)
    for (const [arm, between] of [
      ['right', []],
      ['left', [TO_LEFT]],
    ] as const) {
      // biome-ignore format: one table
      const { entered } = second([...between], seed);
      sums[arm][0]! += (entered.systolic ?? Number.NaN) / SEEDS;
      sums[arm][1]! += (entered.diastolic ?? Number.NaN) / SEEDS;
    }
  expect(Math.abs(sums.right[0]! - sums.left[0]! - 26)).toBeLessThan(4);
  expect(Math.abs(sums.right[1]! - sums.left[1]! - 6)).toBeLessThan(4);
  const [onRight, onLeft] = [debrief(second([], 3)).reference, debrief(second([TO_LEFT], 3)).reference];
  expect(Math.abs(onRight.systolic - onLeft.systolic - 26)).toBeLessThan(1.5);
  expect(debrief(second([TO_LEFT], 3)).costs.costs).toEqual(debrief(second([], 3)).costs.costs);
});

test('the log says on which arm, and nothing but an arm is taken for one', () => {
  const list = (arm: unknown) => parseActions({ seconds: 200, actions: [{ tick: 5, kind: 'arrange', arm }] });
  expect(list('left')).toMatchObject({ ok: true });
  expect(list('both')).toMatchObject({ ok: false });
});
