import { heartSounds, makePerson, PROPER, type Scenario, scenarioOf } from '@evenfall/physiology';
import { expect, test } from 'vitest';
import { PERFECT_OBSERVER } from '../observer/observer.js';
import { countDebrief } from './countDebrief.js';
import { countedBy } from './countedBy.js';
import { countOf } from './countOf.js';

const about = (id: string, of: 'pulse' | 'breaths') => {
  const person = makePerson(scenarioOf(id) as Scenario, 1);
  const made = countedBy(PERFECT_OBSERVER.counting, of, person, PROPER, 40);
  if (made === null) throw new Error('nothing to count');
  return countDebrief(made, { circumstances: PROPER, actions: [] }, { person, firstInflationSeconds: null });
};

test('a full minute of a quiet pulse is right to a beat or two', () => {
  const found = about('quiet-morning', 'pulse');
  expect(Math.abs(found.error)).toBeLessThanOrEqual(2);
  expect(found.result.perMinute).toBe(found.truePerMinute + found.error);
  expect(found).toMatchObject({ n: found.there, isRight: true });
});

// Physiology handbook 2.2: sinus 76 in bigeminy gives a pulse of 38 at the wrist and 76 at the apex.
test('two by two: the wrist is half the heart', () => {
  const found = about('two-by-two', 'pulse');
  expect(found.heartPerMinute).toBeGreaterThan(70);
  expect(found.result.perMinute).toBeGreaterThan(34);
  expect(found.result.perMinute).toBeLessThan(42);
});

// Physiology handbook 14, row 8, and 2.3: 136 a minute, a deficit of about 24 (10 to 30); bedside handbook 1.10: apical minus radial rate.
test('a storm of leaves: counted at the apex it is the heart, at the wrist less', () => {
  const lost = [1, 2, 3, 4, 5, 6, 7, 8].map((seed) => {
    const person = makePerson(scenarioOf('storm-of-leaves') as Scenario, seed);
    const firsts = heartSounds(person, PROPER, 30, 120)
      .filter(({ heart }) => heart === 'first')
      .map(({ atSeconds }) => atSeconds);
    const of = (windowSeconds: number, site: 'wrist' | 'apex') => {
      const counted = countOf('pulse', firsts, 40, windowSeconds, { clock: 'any', first: 1 });
      if (counted === null) throw new Error('nothing to count');
      const replayed = { person, firstInflationSeconds: null };
      return countDebrief(counted, { circumstances: PROPER, actions: [] }, replayed, undefined, site);
    };
    const apex = of(60, 'apex');
    expect(apex).toMatchObject({ isRight: true, n: apex.there, truePerMinute: apex.heartPerMinute });
    expect(Math.abs(apex.error)).toBeLessThanOrEqual(2);
    expect(of(60, 'wrist').heartPerMinute).toBe(apex.truePerMinute);
    // Bedside handbook 1.1: at the apex always a full minute.
    expect(apex.result.nextWindowSeconds).toBeNull();
    expect(of(30, 'apex').result.nextWindowSeconds).toBe(60);
    return apex.truePerMinute - of(60, 'wrist').truePerMinute;
  });
  const mean = lost.reduce((sum, one) => sum + one, 0) / lost.length;
  expect(mean).toBeGreaterThan(10);
  expect(mean).toBeLessThan(30);
});

// Physiology handbook 14, row 26: six breaths a minute.
test('slow breaths counted over a minute', () => {
  const found = about('sleepy-six', 'breaths');
  expect(Math.abs(found.result.perMinute - 6)).toBeLessThanOrEqual(2);
  expect(found.heartPerMinute).toBeNull();
});
