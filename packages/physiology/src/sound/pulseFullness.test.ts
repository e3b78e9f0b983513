import { expect, test } from 'vitest';
import { reportOf } from '../scenario/report.js';
import { SCENARIOS } from '../scenario/scenarios.js';
import { pulseFullness } from './pulseFullness.js';

// Physiology handbook 14: 13 tight sac (faint), 15 slow hill (slow-rising, narrow: low volume), 21 cold hands (very low);
// 14 open gate (collapsing), 22 warm flush (bounding), 30 racing warm (high output).
test.each([
  ['pulse-weak', ['tight-sac', 'slow-hill', 'cold-hands']],
  ['pulse-strong', ['open-gate', 'warm-flush', 'racing-warm']],
] as const)('%s is asked of those of whom the book says so', (code, ids) => {
  expect(SCENARIOS.filter((one) => reportOf(one).includes(code)).map(({ id }) => id)).toEqual(ids);
});

test('whoever is to say that a pulse is weak or strong can see it under the fingers', () => {
  for (const one of SCENARIOS) {
    const report = reportOf(one);
    const fullness = pulseFullness(one.waveShape);
    if (report.includes('pulse-weak')) expect(fullness, one.id).toBeLessThan(0.7);
    else if (report.includes('pulse-strong')) expect(fullness, one.id).toBeGreaterThan(1.1);
    // Fever fills a pulse, too; of everybody else it is the usual one.
    else if (one.id !== 'fever-ward') expect(fullness, one.id).toBe(1);
  }
});
