import { SCENARIOS, type Scenario, scenarioOf } from '@evenfall/physiology';
import { expect, test } from 'vitest';
import { looksOf, numberOf } from './looks.js';

// Decisions of this project; age and sex are those of the book's table (physiology handbook 14).
test('an old woman is no young man, and a child is small', () => {
  const stiff = looksOf(scenarioOf('stiff-pipe') as Scenario);
  expect(stiff).toMatchObject({ hair: 'white', cut: 'bun', hasBeard: false, size: 1 });
  expect(looksOf(scenarioOf('long-runner') as Scenario)).toMatchObject({ cut: 'short', size: 1 });
  const child = looksOf(scenarioOf('playground') as Scenario);
  expect(child.size).toBeGreaterThan(0.6);
  expect(child.size).toBeLessThan(0.9);
});

test('among the people of the book there is every skin, and each looks the same again', () => {
  const all = SCENARIOS.map((scenario) => looksOf(scenario));
  expect(new Set(all.map(({ skin }) => skin)).size).toBe(4);
  expect(new Set(all.map(({ shirt }) => shirt)).size).toBe(3);
  expect(SCENARIOS.map((scenario) => looksOf(scenario))).toEqual(all);
});

test('a number stands for an id', () => {
  // Published test vectors of FNV-1a, 32 bits: "", "a" and "foobar" (from memory).
  expect(['', 'a', 'foobar'].map(numberOf)).toEqual([0x811c9dc5, 0xe40c292c, 0xbf9cf968]);
});
