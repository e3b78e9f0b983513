import { makePerson, PROPER, type Scenario, scenarioOf } from '@evenfall/physiology';
import { expect, test } from 'vitest';
import { PERFECT_OBSERVER } from '../observer/observer.js';
import { countDebrief } from './countDebrief.js';
import { countedBy } from './countedBy.js';

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

// Physiology handbook 14, row 26: six breaths a minute.
test('slow breaths counted over a minute', () => {
  const found = about('sleepy-six', 'breaths');
  expect(Math.abs(found.result.perMinute - 6)).toBeLessThanOrEqual(2);
  expect(found.heartPerMinute).toBeNull();
});
