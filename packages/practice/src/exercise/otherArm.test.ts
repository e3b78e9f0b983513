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
import { EXERCISE_SCHEMA, type Exercise, NO_EVIDENCE, NOTHING_ENTERED } from './exercise.js';
import { type FallOf, lastFall, MEANT_MMHG } from './fall.js';
import { feltMmHg } from './felt.js';
import { parseActions } from './parseActions.js';
import { replay } from './replay.js';

const twoArms = scenarioOf('two-arms') as Scenario;
const run = (from: number, toMmHg: number): Action[] => [
  { tick: from, kind: 'steady-rise', mmHgPerSecond: 20, toMmHg },
  { tick: from + 2200, kind: 'steady-fall', mmHgPerSecond: 2.5, toMmHg: 40 },
  { tick: from + 14_000, kind: 'quick-release' },
];

/** Measured on the right arm, then once more after the cuff was put on what is asked. */
function second(between: Action[], seed: number): Exercise {
  const blank: Exercise = {
    schema: EXERCISE_SCHEMA,
    model: MODEL,
    scenario: twoArms,
    seed,
    circumstances: PROPER,
    instrument: SOUND_INSTRUMENT,
    actions: [...run(400, 200), ...between, ...run(24_000, 200)],
    seconds: 200,
    earlier: [],
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

// Bedside handbook 3.10: a minute of rest between two readings on one arm. The blood is held in the arm that was squeezed: the other one
// has rested meanwhile, and needs none.
test.each([
  ['the same arm', [], [5, 60, 1]],
  ['the other arm', ['left'], null],
  ['the first arm again, after the other', ['left', 'right'], [5, 60, 1]],
] as const)('the cuff goes up again 5 s later on %s', (_, arms, expected) => {
  const { actions, ...exercise } = second([], 3);
  const emptied: Action[] = [
    { tick: 17_600, kind: 'steady-rise', mmHgPerSecond: 40, toMmHg: 200 },
    { tick: 22_600, kind: 'quick-release' },
  ];
  const turns = arms.map((arm, at): Action => ({ tick: 23_400 + at, kind: 'arrange', arm }));
  const found = debrief({ ...exercise, actions: [...emptied, ...turns, ...run(24_000, 200)] }).conduct;
  const rest = found.find(({ code }) => code === 'arm-not-rested')?.figures ?? null;
  if (expected === null) expect(rest).toBeNull();
  else {
    const [waited, needed, inflations] = expected;
    expect(Math.abs((rest?.waitedSeconds ?? 0) - waited)).toBeLessThan(3);
    expect(rest).toMatchObject({ neededSeconds: needed, inflations });
  }
});

test('what was done on the one arm is not counted for the other', () => {
  const { actions, ...exercise } = second([], 3);
  // Twice on the left, then on the right, then at once on the right again: it had been up there once.
  const short = (tick: number): Action[] => [
    { tick, kind: 'steady-rise', mmHgPerSecond: 40, toMmHg: 200 },
    { tick: tick + 1600, kind: 'quick-release' },
  ];
  const right: Action = { tick: 12_000, kind: 'arrange', arm: 'right' };
  const visit = [...short(400), ...short(6400), right, ...short(21_000), ...run(24_000, 200)];
  const left = { ...exercise.circumstances, arm: 'left' as const };
  const found = debrief({ ...exercise, circumstances: left, actions: visit }).conduct;
  expect(found.find(({ code }) => code === 'arm-not-rested')?.figures.inflations).toBe(1);
});

// Physiology handbook 14, row 28: the arms of this person are 26 mmHg apart, so a pulse lost on the one says too little of the other.
test('where the pulse went is felt on the arm that is measured', () => {
  const { actions, ...exercise } = second([], 3);
  const feeling: Action[] = [
    { tick: 400, kind: 'finger', isOn: true },
    { tick: 404, kind: 'steady-rise', mmHgPerSecond: 10, toMmHg: 240 },
    { tick: 5600, kind: 'quick-release' },
    { tick: 5604, kind: 'finger', isOn: false },
  ];
  const visit = (between: readonly Action[]): Exercise => {
    const { evidence, ...blank } = exercise;
    const all = { ...blank, actions: [...feeling, ...between, ...run(24_000, 200)], evidence: NO_EVIDENCE };
    return withReading(all, GOOD_OBSERVER, null);
  };
  const feltOn = (one: Exercise) => {
    const played = replay(one);
    return feltMmHg(one, played, lastFall(played, MEANT_MMHG) as FallOf);
  };
  expect(Math.abs((feltOn(visit([])) ?? 0) - 160)).toBeLessThan(15);
  expect(feltOn(visit([TO_LEFT]))).toBeNull();
});

test('the log says on which arm, and nothing but an arm is taken for one', () => {
  const list = (arm: unknown) => parseActions({ seconds: 200, actions: [{ tick: 5, kind: 'arrange', arm }] });
  expect(list('left')).toMatchObject({ ok: true });
  expect(list('both')).toMatchObject({ ok: false });
});
