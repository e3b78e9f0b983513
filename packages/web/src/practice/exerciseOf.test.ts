import { parseRun } from '@evenfall/clinical';
import { type Scenario, scenarioOf } from '@evenfall/physiology';
import { parseExercise } from '@evenfall/practice';
import { KINDS, NOTHING_CHOSEN } from '@evenfall/record';
import { expect, test } from 'vitest';
import { laterTapRules } from '../round/tapRulesLater.js';
import { begunPractice } from './begin.js';
import { NO_AIDS } from './ears.js';
import { EXERCISE_ENTRY_SCHEMA, exerciseOf, withReadingKept } from './exerciseOf.js';
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
  const pressure = { ...draft.round.pressure, values: [{ entry: ID(7), run: run.value }] };
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
    const {
      aids: _,
      judgedBy: __,
      ...exercise
    } = exerciseOf({ ...BEGUN, visit: { ...BEGUN.visit, tick } }, NOTHING_CHOSEN);
    expect(parseExercise(exercise)).toMatchObject({ ok: true });
    expect(exercise.seconds).toBe(Math.min(1200, Math.max(1, tick / 200)));
  },
);

// docs/conventions.md section 9: evidence keeps what was done.
test('every reading is kept, each with the inflation that it was written of', () => {
  const one = withReadingKept({ ...written(BEGUN), writtenFrom: 42 });
  const [first] = one.round.pressure.values;
  if (first === undefined) throw new Error('no reading');
  const more = ([systolic, diastolic]: readonly [number, number], n: number) => ({
    ...first,
    entry: ID(n),
    run: {
      ...first.run,
      moments: first.run.moments.map((moment, k) => ({ ...moment, mmHg: k === 0 ? systolic : diastolic })),
    },
  });
  const values = [first, more([122, 78], 8)];
  const two = withReadingKept({
    ...one,
    writtenFrom: 131,
    round: { ...one.round, pressure: { ...one.round.pressure, values } },
  });
  const kept = exerciseOf(
    { ...two, peakSeconds: 300, visit: { ...BEGUN.visit, tick: 70_000 } },
    NOTHING_CHOSEN,
  );
  expect(kept.earlier).toMatchObject([
    { startSeconds: 42, entered: { systolic: 118, muffled: null, diastolic: 76 } },
  ]);
  expect(kept.evidence.run?.startSeconds).toBe(131);
  expect(kept.entered).toMatchObject({ systolic: 122, diastolic: 78 });
});

test('the protocol in force is kept by its name, and the entry has the newest schema', () => {
  const presetVersion = 'ab'.repeat(32);
  expect(exerciseOf(BEGUN, { ...NOTHING_CHOSEN, presetVersion }).judgedBy).toEqual({ presetVersion });
  expect(exerciseOf(BEGUN, NOTHING_CHOSEN).judgedBy).toEqual({ presetVersion: null });
  expect(KINDS.exercise.newest).toBe(EXERCISE_ENTRY_SCHEMA);
});

test('what was noticed with a count goes along with it, and nothing where nothing was said', () => {
  const count = { of: 'pulse', n: 20, windowSeconds: 15, clock: 'any', first: 1 };
  const counted = (noticed: object) =>
    ({
      ...BEGUN,
      countedFrom: { pulse: 12, breaths: null },
      round: {
        ...BEGUN.round,
        pulse: { ...BEGUN.round.pulse, values: [{ entry: ID(7), kind: 'count', count, noticed }] },
      },
    }) as unknown as PracticeDraft;
  const pulseOf = (noticed: object) => exerciseOf(counted(noticed), NOTHING_CHOSEN).evidence.pulse;
  const said = { rhythmFelt: 'irregular', strength: null, site: null };
  expect(pulseOf(said)).toEqual({ startSeconds: 12, count, noticed: said });
  expect(pulseOf({ ...said, rhythmFelt: null })).toEqual({ startSeconds: 12, count });
});

test('taps are kept with the second of the first of them, in place of a count', async () => {
  await laterTapRules.fetch();
  const taps = { of: 'pulse', source: 'key', seconds: [0, 0.8, 1.7] };
  const draft = {
    ...BEGUN,
    tappedFrom: { pulse: 31.5 },
    round: {
      ...BEGUN.round,
      pulse: {
        ...BEGUN.round.pulse,
        values: [
          {
            entry: ID(7),
            kind: 'taps',
            taps,
            noticed: { rhythmFelt: 'irregular', strength: null, site: null },
          },
        ],
      },
    },
  } as unknown as PracticeDraft;
  const {
    aids: _,
    judgedBy: __,
    ...exercise
  } = exerciseOf({ ...draft, visit: { ...BEGUN.visit, tick: 24_000 } }, NOTHING_CHOSEN);
  const kept = {
    startSeconds: 31.5,
    seconds: [0, 0.8, 1.7],
    noticed: { rhythmFelt: 'irregular', strength: null, site: null },
  };
  expect(exercise.evidence).toMatchObject({ pulse: null, taps: { pulse: kept } });
  // The outside check: the program's own reader of what comes in.
  const read = parseExercise(exercise);
  expect(read.ok && read.value.evidence.taps).toEqual({ pulse: kept });
  const wrong = {
    ...exercise,
    evidence: { ...exercise.evidence, taps: { pulse: { ...kept, seconds: [0, 0] } } },
  };
  const refused = parseExercise(wrong);
  expect(refused.ok ? [] : refused.refusals.map(({ field }) => field)).toEqual([
    '/evidence/taps/pulse/seconds/1',
  ]);
});
