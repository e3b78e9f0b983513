import { expect, test } from 'vitest';
import { type Circumstances, PROPER } from '../circumstances/circumstances.js';
import { SOUND_INSTRUMENT } from '../cuff/instrument.js';
import { beats } from '../heart/beats.js';
import { makePerson } from '../person/makePerson.js';
import { BLANK } from '../scenario/blank.js';
import { SCENARIOS, scenarioOf } from '../scenario/scenarios.js';
import type { EffectCode } from './truth.js';
import { truth } from './truthAt.js';

const person = makePerson(BLANK, 3);
const mean = (all: readonly number[]) => all.reduce((sum, x) => sum + x, 0) / all.length;

test('the long-run truth is the mean of the beats of the minute about the instant', () => {
  const found = beats(person, PROPER, 60, 120);
  const { longRun, arterial, pulsePerMinute, wristPerMinute, rest } = truth(person, PROPER, 90);
  expect(longRun.systolic).toBeCloseTo(mean(found.map((b) => b.systolic)), 9);
  expect(longRun.diastolic).toBeCloseTo(mean(found.map((b) => b.diastolic)), 9);
  expect(arterial.systolic - longRun.systolic).toBeCloseTo(person.openingMmHg, 9);
  expect(longRun.diastolic - arterial.diastolic).toBeCloseTo(person.closingMmHg, 9);
  expect(Math.abs(pulsePerMinute - found.length)).toBeLessThan(1.5);
  expect(wristPerMinute).toBe(pulsePerMinute);
  expect(rest).toEqual({ systolic: 120, diastolic: 76 });
});

// The published sizes of physiology handbook 12; each fault alone gives its own line and moves the mean by as much.
test.each([
  [{ isTalking: true }, 'talking', 8, 6],
  [{ hasLegsCrossed: true }, 'legs-crossed', 5, 3],
  [{ hasBackUnsupported: true }, 'back-unsupported', 0, 6.5],
  [{ hasFullBladder: true }, 'full-bladder', 10, 6],
  [{ isArmUnsupported: true }, 'arm-muscles', 1.5, 2.5],
] as [Partial<Circumstances>, EffectCode, number, number][])('%o', (fault, code, systolic, diastolic) => {
  const with_ = truth(person, { ...PROPER, ...fault }, 90);
  expect(with_.effects).toEqual([{ code, actsOn: 'person', systolic, diastolic }]);
  const without = truth(person, PROPER, 90);
  expect(without.effects).toEqual([]);
  // Talking changes the breath and the rate too, so the same beats are not met.
  expect(Math.abs(with_.longRun.systolic - without.longRun.systolic - systolic)).toBeLessThan(1.5);
  expect(Math.abs(with_.longRun.diastolic - without.longRun.diastolic - diastolic)).toBeLessThan(1.5);
});

test('what only the cuff or the ear gets wrong leaves the truth alone and has its line', () => {
  const circumstances = { ...PROPER, armBelowHeartCm: 10, chestPiece: 'pressed-hard' as const };
  const { effects, longRun } = truth(person, circumstances, 90, {
    ...SOUND_INSTRUMENT,
    bladder: 'small-adult',
  });
  expect(longRun).toEqual(truth(person, PROPER, 90).longRun);
  expect(effects.map(({ code, actsOn }) => [code, actsOn])).toEqual([
    ['arm-height', 'cuff'],
    ['cuff-size', 'cuff'],
    ['pressed-hard', 'sound'],
  ]);
  expect(effects[0]?.systolic).toBeCloseTo(7.76, 9);
});

test('courses over the visit: sitting down, first inflation, white coat, standing up', () => {
  const alerting = { ...BLANK.alerting, sittingMmHg: 10, firstReadingMmHg: 5, whiteCoatMmHg: 20 };
  const alert = makePerson({ ...BLANK, alerting }, 3);
  const { effects } = truth(
    alert,
    { ...PROPER, restMinutes: 0, measuredBy: 'doctor', observerMinutes: 0, firstInflationSeconds: 150 },
    150,
  );
  expect(effects.map(({ code }) => code)).toEqual(['white-coat', 'sitting-down', 'first-reading']);
  expect(effects[0]?.systolic).toBeCloseTo(20, 9);
  expect(effects[1]?.systolic).toBeCloseTo(10 * 2 ** (-2.5 / 5.8), 9);
  const fast = makePerson({ ...(scenarioOf('up-too-fast') ?? BLANK), alerting: BLANK.alerting }, 3);
  const upright = truth(fast, { ...PROPER, posture: 'standing', standingMinutes: 3 }, 60);
  expect(upright.effects).toEqual([{ code: 'standing-up', actsOn: 'person', systolic: -24, diastolic: -6 }]);
  expect(Math.abs(upright.pulsePerMinute - 78)).toBeLessThan(3);
});

// Physiology handbook 14: what the cards say is what a perfect listener would find in the long run.
test('over many seeds each scenario has the levels of its card', () => {
  for (const scenario of SCENARIOS) {
    const found = [1, 2, 3, 4, 5, 6, 7, 8].map((seed) => {
      const { longRun, effects } = truth(makePerson(scenario, seed), PROPER, 60);
      const sum = (key: 'systolic' | 'diastolic') => effects.reduce((all, one) => all + one[key], 0);
      return [longRun.systolic - sum('systolic'), longRun.diastolic - sum('diastolic')] as const;
    });
    expect(Math.abs(mean(found.map(([s]) => s)) - scenario.systolic), scenario.id).toBeLessThan(3.5);
    expect(Math.abs(mean(found.map(([, d]) => d)) - scenario.diastolic), scenario.id).toBeLessThan(3.5);
  }
});
