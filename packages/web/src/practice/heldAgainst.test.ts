import { type Scenario, scenarioOf } from '@evenfall/physiology';
import { debrief, type Exercise, resultRows, showing } from '@evenfall/practice';
import { expect, test } from 'vitest';
import { heldAgainst, saidOff } from './heldAgainst.js';

const heard = ({ entered }: Exercise) => ({
  first: entered.systolic ?? Number.NaN,
  last: entered.muffled ?? entered.diastolic,
});

// Each is far from the truth on average: other beats were met, sounds went on to nothing, or the pulse was felt. 5 mmHg is what
// the debrief accepts of one learner (docs/conventions.md section 1).
test.each([
  ['quiet-morning', 1, false],
  ['leaves-in-wind', 2, false],
  ['leaves-in-wind', 3, false],
  ['missed-step', 3, false],
  ['open-gate', 1, true],
  ['open-gate', 2, true],
  ['racing-warm', 3, true],
  ['cold-hands', 1, false],
  ['cold-hands', 2, false],
])(
  '%s %d: a class that says what was played is as right as a learner who writes it',
  (id, seed, isMuffled) => {
    const { exercise } = showing(scenarioOf(id) as Scenario, seed);
    const judged = debrief(exercise);
    const held = heldAgainst(judged);
    const off = saidOff(heard(exercise), held);
    const rows = resultRows(judged);
    expect(held.isMuffled).toBe(isMuffled);
    expect([off.systolic, off.diastolic]).toEqual(rows.map(({ error }) => error));
    expect([held.truth.systolic, held.truth.diastolic]).toEqual(rows.map(({ truth }) => truth));
    for (const mmHg of [off.systolic, off.diastolic]) expect(Math.abs(mmHg ?? 0)).toBeLessThanOrEqual(5);
  },
);

test('by feel there is no diastolic to be off from, and of one number no second', () => {
  const byFeel = heldAgainst(debrief(showing(scenarioOf('cold-hands') as Scenario, 1).exercise));
  expect(byFeel.had.diastolic).toBeNull();
  expect(saidOff({ first: 80, last: 40 }, byFeel).diastolic).toBeNull();
  const had = { systolic: 174, diastolic: 64 };
  expect(saidOff({ first: 170, last: null }, { had })).toEqual({ systolic: -4, diastolic: null });
  expect(saidOff({ first: 178, last: 60 }, { had })).toEqual({ systolic: 4, diastolic: -4 });
  expect(saidOff({ first: 178, last: 60 }, { had: { ...had, systolic: null } }).systolic).toBeNull();
});
