import { expect, test } from 'vitest';
import { PROPER } from '../circumstances/circumstances.js';
import { makePerson } from '../person/makePerson.js';
import { BLANK } from '../scenario/blank.js';
import { breaths, chestAt } from './breaths.js';
import type { Breathing } from './pattern.js';

const of = (some: Partial<Breathing>, seed = 2, circumstances = PROPER) =>
  breaths(makePerson({ ...BLANK, breathing: { ...BLANK.breathing, ...some } }, seed), circumstances, 0, 900);
const mean = (all: readonly number[]) => all.reduce((sum, x) => sum + x, 0) / all.length;

test.each([
  ['rest', 14],
  ['fast', 28],
  ['deep-and-fast', 28],
  ['slow-shallow', 6],
  ['wheezing', 30],
  ['paced', 12],
] as const)('%s at %d a minute keeps that rate', (kind, ratePerMinute) => {
  const found = [1, 2, 3, 4].flatMap((seed) => of({ kind, ratePerMinute }, seed));
  expect(Math.abs(found.length / 60 / ratePerMinute - 1)).toBeLessThan(0.08);
});

test('breaths follow each other without a hole', () => {
  for (const kind of ['rest', 'cheyne-stokes', 'ataxic', 'aware'] as const) {
    const found = of({ kind, ratePerMinute: 20, cycleSeconds: kind === 'cheyne-stokes' ? 59 : null });
    for (const [i, one] of found.entries()) {
      const before = found[i - 1];
      if (before !== undefined)
        expect(one.startSeconds).toBeCloseTo(before.startSeconds + before.durationSeconds, 9);
      expect(one.inspirationSeconds).toBeLessThan(one.movingSeconds);
      expect(one.movingSeconds).toBeLessThanOrEqual(one.durationSeconds + 1e-12);
    }
  }
});

// Physiology handbook 5 and 15: a cycle of 59 s with 13 breaths, a minute has 13 or 14; a pause of about 23 s.
test('waxing and waning: thirteen breaths in a cycle of 59 s, the middle ones deepest', () => {
  const found = of({ kind: 'cheyne-stokes', ratePerMinute: 22, cycleSeconds: 59 });
  const last = found.flatMap((one, i) => (one.durationSeconds > 10 ? [i] : []));
  for (let k = 1; k < last.length; k++) {
    const [from, to] = [last[k - 1] ?? 0, last[k] ?? 0];
    expect(to - from).toBe(13);
    const cycle = found.slice(from + 1, to + 1).map((one) => one.depth);
    expect(Math.max(...cycle)).toBe(cycle[6]);
    const still = (found[to]?.durationSeconds ?? 0) - (found[to]?.movingSeconds ?? 0);
    expect(Math.abs(still - 23)).toBeLessThan(2);
  }
});

test('ataxic: clusters of three to seven, then 8 to 35 s without one', () => {
  const found = of({ kind: 'ataxic', ratePerMinute: 16 });
  const pauses = found.flatMap((one, i) => (one.durationSeconds - one.movingSeconds > 7 ? [i] : []));
  expect(pauses.length).toBeGreaterThan(10);
  for (let k = 1; k < pauses.length; k++) {
    const size = (pauses[k] ?? 0) - (pauses[k - 1] ?? 0);
    expect(size).toBeGreaterThanOrEqual(3);
    expect(size).toBeLessThanOrEqual(7);
  }
});

test('while wheezing, breathing out takes three times as long; talking makes breaths uneven', () => {
  const wheezing = of({ kind: 'wheezing', ratePerMinute: 30 });
  const ratio = mean(
    wheezing.map((one) => (one.movingSeconds - one.inspirationSeconds) / one.inspirationSeconds),
  );
  expect(Math.abs(ratio - 3)).toBeLessThan(0.6);
  const spread = (all: readonly { durationSeconds: number }[]) => {
    const lengths = all.map((one) => one.durationSeconds);
    return Math.sqrt(mean(lengths.map((x) => (x - mean(lengths)) ** 2))) / mean(lengths);
  };
  expect(spread(of({}, 2, { ...PROPER, isTalking: true }))).toBeGreaterThan(1.3 * spread(of({})));
});

test('the chest rises while breathing in, is highest at its end, and rests between breaths', () => {
  const person = makePerson(BLANK, 2);
  const one = breaths(person, PROPER, 10, 60)[1];
  if (one === undefined) throw new Error('no breath');
  const at = (seconds: number) => chestAt(person, PROPER, one.startSeconds + seconds);
  expect(at(0)).toBeCloseTo(0, 9);
  expect(at(one.inspirationSeconds)).toBeCloseTo(7 * one.depth, 6);
  expect(at(one.inspirationSeconds / 2)).toBeCloseTo(3.5 * one.depth, 6);
  expect(at(one.movingSeconds + (one.durationSeconds - one.movingSeconds) / 2)).toBe(0);
  const stout = makePerson({ ...BLANK, armCm: 38 }, 2);
  expect(chestAt(stout, PROPER, one.startSeconds + one.inspirationSeconds)).toBeCloseTo(3 * one.depth, 6);
});
