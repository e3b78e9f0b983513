import { SCENARIOS, type Scenario, scenarioOf } from '@evenfall/physiology';
import { replay, showing, traceAt } from '@evenfall/practice';
import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { gripOf } from './drawing/ShownGrip.js';
import { RoomEngine } from './engine.js';
import { stepText } from './shownText.js';
import { beforeFirst, endOf, handsAt, isBeforeNext, nextStepAt, stepsBy, visitOf } from './useShown.js';
import { Visit } from './visit.js';

const person = (id: string) => scenarioOf(id) as Scenario;

// The outside check: `replay` of packages/practice.
test('sought to any second, a demonstration shows the very needle of its replay', () => {
  const { exercise } = showing(person('quiet-morning'), 4);
  const played = replay(exercise);
  for (const seconds of [0, 7, 20, exercise.seconds - 4]) {
    const visit = new Visit(visitOf(exercise, seconds));
    expect(visit.snapshot().needleMmHg).toBe(
      traceAt(played.needleMmHg, played.tracePerSecond, visit.seconds),
    );
  }
});

test.each(SCENARIOS.map((one) => [one.id, one] as const))(
  '%s: each step is said, its numbers to one learner alone',
  (_, scenario) => {
    const shown = showing(scenario, 1);
    const words = wordsFor('en-GB');
    for (const step of shown.steps) {
      const toClass = stepText(step, shown.manner, words, false);
      expect(toClass).toMatch(/\.$/);
      // Half a minute and 30 over belong to how it is done, not to what was found.
      expect(toClass.replace('30', '')).not.toMatch(/\d/);
      if (step.mmHg !== null) expect(stepText(step, shown.manner, words, true)).toContain(String(step.mmHg));
    }
  },
);

test('while fingertips feel nothing listens, and the other way round; the first sound is heard again from just before it', () => {
  const shown = showing(person('quiet-morning'), 4);
  const at = (code: string) => shown.steps.find((one) => one.code === code)?.atSeconds ?? Number.NaN;
  expect(handsAt(shown.exercise, at('feeling') + 1)).toEqual({
    isFeeling: true,
    isListening: false,
    isAtApex: false,
  });
  expect(handsAt(shown.exercise, at('falling') + 1)).toEqual({
    isFeeling: false,
    isListening: true,
    isAtApex: false,
  });
  expect(stepsBy(shown, at('falling') + 0.1).at(-1)?.code).toBe('falling');
  expect(beforeFirst(shown)).toBe(at('first') - 3);
  const felt = showing(person('cold-hands'), 4);
  const back = felt.steps.find((one) => one.code === 'back')?.atSeconds ?? Number.NaN;
  expect(handsAt(felt.exercise, back)).toEqual({ isFeeling: true, isListening: false, isAtApex: false });
  expect(beforeFirst(felt)).toBe(back - 3);
});

test.each([
  ['feeling', 'pumping'],
  ['waiting', 'open'],
  ['pumping', 'pumping'],
  ['falling', 'falling'],
  ['last', 'falling'],
  ['over', 'open'],
  ['looking', 'still'],
] as const)('at %s the hand is drawn %s', (code, grip) => {
  expect(gripOf(code)).toBe(grip);
});

test.each(['quiet-morning', 'cold-hands', 'tight-chest'])(
  '%s goes on to its very end and no tick beyond, and its last step is said',
  (id) => {
    const shown = showing(person(id), 2);
    let now = 0;
    let draw: (() => void) | null = null;
    const pictures = {
      nowMs: () => now,
      next: (call: () => void) => {
        draw = call;
        return () => {};
      },
    };
    const { exercise } = shown;
    const engine = new RoomEngine(
      new Visit(visitOf(exercise, exercise.seconds - 1)),
      pictures,
      endOf(exercise),
    );
    engine.start();
    for (; now < 3000; now += 60) (draw as (() => void) | null)?.();
    expect(engine.visit.seconds).toBe(exercise.seconds);
    expect(stepsBy(shown, engine.visit.seconds).at(-1)?.code).toBe('over');
  },
);

// The outside check: `replay` of packages/practice.
test.each(['quiet-morning', 'tide', 'stiff-pipe', 'cold-hands'])(
  '%s: hurried from step to step, each is come to in its order, and the needle is that of the whole',
  (id) => {
    const shown = showing(person(id), 4);
    const { exercise } = shown;
    const played = replay(exercise);
    const said: string[] = [];
    let presses = 0;
    for (let at: number | null = 0; at !== null; at = nextStepAt(shown, at)) {
      const visit: Visit = new Visit(visitOf(exercise, at));
      expect(visit.seconds).toBeCloseTo(at, 9);
      expect(visit.snapshot().needleMmHg).toBeCloseTo(
        traceAt(played.needleMmHg, played.tracePerSecond, visit.seconds),
        0,
      );
      const last = stepsBy(shown, visit.seconds).at(-1);
      if (last !== undefined) said.push(`${last.code} ${last.atSeconds}`);
      presses += 1;
      expect(presses).toBeLessThan(2 * shown.steps.length + 2);
    }
    expect([...new Set(said)]).toEqual(shown.steps.map(({ code, atSeconds }) => `${code} ${atSeconds}`));
  },
);

test.each(['quiet-morning', 'tight-chest', 'up-too-fast', 'cold-hands', 'stiff-pipe'])(
  '%s: every press for the next step says something else, or that it comes at once',
  (id) => {
    const shown = showing(person(id), 4);
    const words = wordsFor('en-GB');
    const said: string[] = [];
    let from = 0;
    for (let at = nextStepAt(shown, from); at !== null; from = at, at = nextStepAt(shown, from)) {
      const step = stepsBy(shown, at).at(-1);
      if (step === undefined) continue;
      said.push(isBeforeNext(shown, from, at) ? 'comes' : stepText(step, shown.manner, words, true));
    }
    expect(said).toContain('comes');
    for (const [k, one] of said.entries()) expect(one).not.toBe(said[k - 1]);
  },
);

test('a moment is come to a little before, so that it is heard', () => {
  const shown = showing(person('quiet-morning'), 4);
  const at = (code: string) => shown.steps.find((one) => one.code === code)?.atSeconds ?? Number.NaN;
  const before = nextStepAt(shown, at('falling') + 0.1) ?? 0;
  expect(before).toBeCloseTo(at('first') - 3, 1);
  expect(nextStepAt(shown, before)).toBeCloseTo(at('first'), 1);
  expect(nextStepAt(shown, shown.exercise.seconds)).toBeNull();
});
