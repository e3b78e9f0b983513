import { parseRun } from '@evenfall/clinical';
import { type Scenario, scenarioOf } from '@evenfall/physiology';
import { parseExercise } from '@evenfall/practice';
import { NOTHING_CHOSEN } from '@evenfall/record';
import { expect, test } from 'vitest';
import { begunPractice } from './begin.js';
import { NO_AIDS } from './ears.js';
import { exerciseOf } from './exerciseOf.js';
import type { PracticeDraft } from './keptPractice.js';

const ID = (n: number) => `00000000-0000-7000-8000-${String(n).padStart(12, '0')}`;
const STAMP = { at: '2026-11-26T08:00:00+00:00', zone: 'UTC', asEntered: null };
const BEGUN: PracticeDraft = begunPractice(
  scenarioOf('quiet-morning') as Scenario,
  3,
  { exercise: ID(1), round: ID(2), sequence: 1, begunAt: STAMP },
  { aids: NO_AIDS, thresholdDb: null },
);

function written(draft: PracticeDraft): PracticeDraft {
  const run = parseRun({
    method: 'auscultation',
    gaugeStepMmHg: 2,
    moments: [
      { what: 'first sound', mmHg: 118 },
      { what: 'last sound', mmHg: 76 },
    ],
  });
  if (!run.ok) throw new Error('no run');
  const pressure = { ...draft.round.pressure, values: [{ run: run.value }] };
  return { ...draft, round: { ...draft.round, pressure } } as unknown as PracticeDraft;
}

test('a reading stays with the inflation it was written of, however often the cuff goes up afterwards', () => {
  const draft = { ...written(BEGUN), runFrom: 42, peakSeconds: 97, visit: { ...BEGUN.visit, tick: 24_000 } };
  expect(exerciseOf(draft, NOTHING_CHOSEN).evidence.run?.startSeconds).toBe(42);
});

// The outside check: the program's own reader of what comes in, which takes no visit under a second or over 1200.
test.each([0, 19, 199, 200, 24_000, 239_999, 240_000, 240_001, 252_000])(
  'a visit of %i ticks is one that can be kept',
  (tick) => {
    const { aids: _, ...exercise } = exerciseOf(
      { ...BEGUN, visit: { ...BEGUN.visit, tick } },
      NOTHING_CHOSEN,
    );
    expect(parseExercise(exercise)).toMatchObject({ ok: true });
    expect(exercise.seconds).toBe(Math.min(1200, Math.max(1, tick / 200)));
  },
);
