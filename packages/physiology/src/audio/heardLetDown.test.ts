import { expect, it } from 'vitest';
import type { Scenario } from '../scenario/scenario.js';
import { SCENARIOS, scenarioOf } from '../scenario/scenarios.js';
import { heardLetDown } from './heardLetDown.js';

// Physiology handbook 8.5: pumped up to 30 over the systolic, nobody starts within a gap.
it('of every invented person begins over the systolic, with silence, and ends after the last sound', () => {
  for (const scenario of SCENARIOS) {
    const { simulation, peakMmHg, letDownFromSeconds, seconds, contacts } = heardLetDown(scenario, 3, 5);
    const { systolic } = simulation.truth.longRun;
    expect(peakMmHg, scenario.id).toBeGreaterThanOrEqual(Math.min(300, systolic + 20));
    expect(peakMmHg % 10, scenario.id).toBe(0);
    const heard = simulation.sounds.filter(({ atSeconds }) => atSeconds >= letDownFromSeconds);
    const first = heard[0];
    expect(first?.cuffMmHg, scenario.id).toBeLessThan(peakMmHg - 8);
    expect(contacts.map(({ kind }) => kind)).toEqual(['put-on', 'tube-knock', 'taken-off']);
    const last = heard.at(-1)?.atSeconds ?? Number.POSITIVE_INFINITY;
    // Sounds that go on to zero go on to the end.
    if (scenario.soundsToMmHg === null) expect(last, scenario.id).toBeLessThan(seconds - 3.5);
  }
});

it('falls at the rate that was asked for', () => {
  const quiet = scenarioOf('quiet-morning') as Scenario;
  for (const rate of [0.5, 2.5, 20]) {
    const { simulation, letDownFromSeconds } = heardLetDown(quiet, 1, rate);
    const at = (t: number) => simulation.cuff[Math.round(t * simulation.tracePerSecond)] as number;
    const from = letDownFromSeconds + 0.1;
    expect((at(from) - at(from + 2)) / 2).toBeCloseTo(rate, 2);
  }
});
