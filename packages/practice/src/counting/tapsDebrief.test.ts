import { beats, breaths, makePerson, PROPER, type Scenario, scenarioOf } from '@evenfall/physiology';
import { expect, test } from 'vitest';
import { tapsDebrief } from './tapsDebrief.js';

const person = makePerson(scenarioOf('quiet-morning') as Scenario, 1);
const about = (of: 'pulse' | 'breaths', taps: readonly number[]) =>
  tapsDebrief(
    of,
    { startSeconds: taps[0] ?? 0, seconds: taps.map((at) => at - (taps[0] ?? 0)) },
    { circumstances: PROPER, actions: [] },
    { person, firstInflationSeconds: null },
  );
const beatsAt = beats(person, PROPER, 40, 70)
  .filter(({ isFelt }) => isFelt)
  .map(({ footSeconds }) => footSeconds);
const breathsAt = breaths(person, PROPER, 40, 100).map((one) => one.startSeconds);

// Bedside handbook 1.12: a hand that keeps time taps a little before or after each beat.
test.each([-0.1, 0, 0.15, 0.4])('a hand %f s beside each beat has tapped each of them once', (lag) => {
  const found = about(
    'pulse',
    beatsAt.map((at) => at + lag),
  );
  expect(found.wanted).toHaveLength(beatsAt.length);
  expect(found.missed).toEqual([]);
  expect(found.taps.filter(({ isExtra }) => isExtra)).toEqual([]);
  // Each of this heart's beats reaches the wrist.
  expect(found.wristPerMinute).toBe(found.heartPerMinute);
  expect(found.truePerMinute).toBe(found.wristPerMinute);
  const [first = 0, last = 0] = [beatsAt[0], beatsAt.at(-1)];
  expect(found.herePerMinute).toBeCloseTo((60 * (beatsAt.length - 1)) / (last - first), 9);
});

test('a beat that was missed, and one that was tapped twice, are found at their places', () => {
  const missed = beatsAt[5] ?? 0;
  const twice = (beatsAt[9] ?? 0) + 0.3;
  const found = about(
    'pulse',
    [...beatsAt.filter((at) => at !== missed), twice].toSorted((a, b) => a - b),
  );
  expect(found.missed).toEqual([missed]);
  expect(found.taps.filter(({ isExtra }) => isExtra)).toEqual([{ atSeconds: twice, isExtra: true }]);
});

test('breaths are tapped anywhere in the breath', () => {
  const found = about(
    'breaths',
    breathsAt.slice(0, -1).map((at, k) => at + 0.5 * ((breathsAt[k + 1] ?? at) - at)),
  );
  expect(found.missed).toEqual([]);
  expect(found.wanted).toHaveLength(breathsAt.length - 1);
  expect(found.truePerMinute).toBeGreaterThan(8);
});

test('a tap before anything came is of nothing, and those after it count all the same', () => {
  const early = beats(person, PROPER, 0, 12)
    .filter(({ isFelt }) => isFelt)
    .map(({ footSeconds }) => footSeconds);
  const found = about('pulse', [(early[0] ?? 1) - 0.4, ...early]);
  expect(found.wanted).toEqual(early);
  expect(found.missed).toEqual([]);
  expect(found.taps.map(({ isExtra }) => isExtra)).toEqual([true, ...early.map(() => false)]);
});
