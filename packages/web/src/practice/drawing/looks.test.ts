import { SCENARIOS, type Scenario, scenarioOf } from '@evenfall/physiology';
import { expect, test } from 'vitest';
import { looksOf } from './looks.js';

// Decisions of this project; age and sex are those of the book's table (physiology handbook 14).
test('an old woman is no young man, and a child is small', () => {
  const stiff = looksOf(scenarioOf('stiff-pipe') as Scenario, 1);
  expect(stiff).toMatchObject({ hair: 'white', cut: 'bun', hasBeard: false, size: 1 });
  expect(looksOf(scenarioOf('long-runner') as Scenario, 1)).toMatchObject({ cut: 'short', size: 1 });
  const child = looksOf(scenarioOf('playground') as Scenario, 1);
  expect(child.size).toBeGreaterThan(0.6);
  expect(child.size).toBeLessThan(0.9);
});

test('everybody has every skin, and looks the same again', () => {
  for (const scenario of SCENARIOS) {
    const all = Array.from({ length: 200 }, (_, seed) => looksOf(scenario, seed));
    expect(new Set(all.map(({ skin }) => skin)).size).toBe(4);
    expect(looksOf(scenario, 9)).toEqual(all[9]);
  }
});
