import { SCENARIOS, type Scenario, scenarioOf } from '@evenfall/physiology';
import { replay, traceAt } from '@evenfall/practice';
import { expect, test } from 'vitest';
import { shownBy, truthOf, visitOf } from './useShown.js';
import { Visit } from './visit.js';

// The outside check: `replay` of packages/practice.
test('sought to any second, a demonstration shows the very needle of its replay', () => {
  const exercise = shownBy(scenarioOf('quiet-morning') as Scenario, 4);
  const played = replay(exercise);
  for (const seconds of [0, 7, 20, exercise.seconds - 4]) {
    const visit = new Visit(visitOf(exercise, seconds));
    expect(visit.snapshot().needleMmHg).toBe(
      traceAt(played.needleMmHg, played.tracePerSecond, visit.seconds),
    );
  }
});

test.each(SCENARIOS.map((one) => [one.id, one] as const))(
  '%s can be shown, with what is true beside it',
  (_, scenario) => {
    const exercise = shownBy(scenario, 1);
    expect(exercise.entered.systolic).not.toBeNull();
    expect(truthOf(exercise).longRun.systolic).toBeGreaterThan(truthOf(exercise).longRun.diastolic);
  },
);
