import { expect, test } from 'vitest';
import { PROPER } from '../circumstances/circumstances.js';
import { SOUND_INSTRUMENT } from '../cuff/instrument.js';
import { beats } from '../heart/beats.js';
import { makePerson } from '../person/makePerson.js';
import type { Action } from '../rig/action.js';
import { startRig } from '../rig/rig.js';
import { TICKS_PER_SECOND } from '../rig/tick.js';
import { BLANK } from '../scenario/blank.js';
import type { Scenario } from '../scenario/scenario.js';
import { SCENARIOS, scenarioOf } from '../scenario/scenarios.js';
import { truth } from '../truth/truthAt.js';
import { heartSounds } from './heartSounds.js';

const SECONDS = 60;
const on: Action = { tick: 0, kind: 'apex', isOn: true };
const heardBy = (scenario: Scenario, actions: readonly Action[], step = 400, seed = 9) => {
  const rig = startRig(makePerson(scenario, seed), PROPER, SOUND_INSTRUMENT);
  const heart = [];
  const sounds = [];
  for (let tick = 0; tick < SECONDS * TICKS_PER_SECOND; tick += step) {
    const due = actions.filter((one) => one.tick >= tick && one.tick < tick + step);
    const events = rig.advance(tick + step, due);
    heart.push(...events.heart);
    sounds.push(...events.sounds);
  }
  return { heart, sounds };
};
const mean = (all: readonly number[]) => all.reduce((sum, one) => sum + one, 0) / all.length;

// Nothing outside the project knows this model: by the beat and by the tick must be one.
test.each(SCENARIOS.map((one) => [one.id, one] as const))(
  '%s: by the tick and by the beat the same sounds of the heart, however often one asks',
  (_, scenario) => {
    const all = heartSounds(makePerson(scenario, 9), PROPER, 0, SECONDS);
    const { heart } = heardBy(scenario, [on]);
    expect(heart.toSorted((a, b) => a.atSeconds - b.atSeconds)).toEqual(all);
    expect(heardBy(scenario, [on], 1).heart).toEqual(heart);
  },
);

test('every beat has a first and a second sound in turn, whether the wrist feels it or not', () => {
  const lost = [1, 2, 3, 4, 5, 6, 7, 8, 9].map((seed) => {
    const person = makePerson(scenarioOf('storm-of-leaves') as Scenario, seed);
    const all = heartSounds(person, PROPER, 10, 70);
    for (const [i, one] of all.entries()) {
      if (i === 0) continue;
      const before = all[i - 1] as (typeof all)[number];
      expect(one.heart).not.toBe(before.heart);
      expect(one.atSeconds).toBeGreaterThan(before.atSeconds);
      expect(one.beat).toBe(one.heart === 'first' ? before.beat + 1 : before.beat);
    }
    const heard = all.filter(({ heart }) => heart === 'first');
    const felt = new Set(
      beats(person, PROPER, 5, 75).flatMap(({ isFelt, index }) => (isFelt ? [index] : [])),
    );
    const notFelt = heard.filter(({ beat }) => !felt.has(beat)).length;
    const { pulsePerMinute, wristPerMinute } = truth(person, PROPER, 40);
    expect(Math.abs(heard.length - pulsePerMinute)).toBeLessThan(2.5);
    expect(Math.abs(heard.length - notFelt - wristPerMinute)).toBeLessThan(2.5);
    return notFelt;
  });
  // Physiology handbook 2.3 and 14: at 136 a minute a deficit of about 24 (10 to 30).
  expect(mean(lost)).toBeGreaterThan(10);
  expect(mean(lost)).toBeLessThan(30);
});

// Physiology handbook 2.2: sinus 76 in bigeminy gives a pulse of 38 at the wrist, 76 at the apex.
test('two by two: the apex has twice what the wrist has', () => {
  const person = makePerson(scenarioOf('two-by-two') as Scenario, 1);
  const firsts = heartSounds(person, PROPER, 10, 70).filter(({ heart }) => heart === 'first');
  expect(Math.abs(firsts.length - 76)).toBeLessThanOrEqual(3);
  expect(Math.abs(truth(person, PROPER, 40).wristPerMinute - 38)).toBeLessThanOrEqual(2);
});

// Chest 1981;80:613 (abstract): from the electrical beat to the second sound 541 - 2.2 a beat a minute (men), 540 - 2.0 (women), ms.
test.each([
  ['m', 60, 541 - 2.2 * 60],
  ['f', 60, 540 - 2 * 60],
  ['m', 90, 541 - 2.2 * 90],
  ['f', 90, 540 - 2 * 90],
] as const)('%s at %i a minute: electromechanical systole of %f ms', (sex, ratePerMinute, ms) => {
  const rhythm = { ...BLANK.rhythm, ratePerMinute, variation: 'none' as const };
  const person = makePerson({ ...BLANK, sex, rhythm }, 2);
  const electrical = new Map(beats(person, PROPER, 0, 62).map(({ index, rSeconds }) => [index, rSeconds]));
  const spans = heartSounds(person, PROPER, 2, 60).flatMap(({ heart, beat, atSeconds }) => {
    const r = electrical.get(beat);
    return heart === 'second' && r !== undefined ? [1000 * (atSeconds - r)] : [];
  });
  expect(mean(spans)).toBeCloseTo(ms, 0);
});

test('the pulse is at the arm after the first sound of its beat and before the second', () => {
  const person = makePerson(scenarioOf('quiet-morning') as Scenario, 3);
  const feet = new Map(beats(person, PROPER, 0, 70).map(({ index, footSeconds }) => [index, footSeconds]));
  for (const { heart, beat, atSeconds } of heartSounds(person, PROPER, 2, 60)) {
    const foot = feet.get(beat) ?? Number.NaN;
    if (heart === 'first') expect(atSeconds).toBeLessThan(foot);
    else expect(atSeconds).toBeGreaterThan(foot);
  }
});

test('one chest piece: at the apex nothing of the arm is heard, on the arm nothing of the heart, in the hand neither', () => {
  const pump: Action[] = [
    { tick: 0, kind: 'steady-rise', mmHgPerSecond: 40, toMmHg: 180 },
    { tick: 1200, kind: 'steady-fall', mmHgPerSecond: 3, toMmHg: 0 },
  ];
  const person = scenarioOf('quiet-morning') as Scenario;
  const there = heardBy(person, [on, ...pump]);
  expect(there.sounds).toEqual([]);
  expect(there.heart.length).toBeGreaterThan(100);
  const arm = heardBy(person, pump);
  expect(arm.heart).toEqual([]);
  expect(arm.sounds.length).toBeGreaterThan(10);
  const off: Action = { tick: 2000, kind: 'apex', isOn: false };
  const taken = heardBy(person, [on, ...pump, off]);
  expect(taken.sounds).toEqual([]);
  expect(taken.heart.length).toBeGreaterThan(10);
  expect(taken.heart.every(({ atSeconds }) => atSeconds <= 10)).toBe(true);
  const laid: Action = { tick: 2000, kind: 'chest-piece', offMm: 0, held: 'light' };
  const moved = heardBy(person, [on, ...pump, laid]);
  expect(moved.sounds.length).toBeGreaterThan(5);
  expect(moved.heart).toEqual(taken.heart);
});

test('a weak beat has a softer second sound', () => {
  const person = makePerson(scenarioOf('two-by-two') as Scenario, 1);
  const premature = new Set(
    beats(person, PROPER, 0, 90)
      .filter((one) => one.isPremature)
      .map(({ index }) => index),
  );
  const seconds = heartSounds(person, PROPER, 5, 80).filter(({ heart }) => heart === 'second');
  const level = (isWeak: boolean) =>
    mean(seconds.filter(({ beat }) => premature.has(beat) === isWeak).map(({ levelDb }) => levelDb));
  expect(level(false) - level(true)).toBeGreaterThan(4);
});
