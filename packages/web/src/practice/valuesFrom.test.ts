import { type Scenario, scenarioOf } from '@evenfall/physiology';
import { NOTHING_CHOSEN } from '@evenfall/record';
import { beforeAll, expect, test } from 'vitest';
import { type DraftValue, interrupted, NOTHING_NOTICED, withoutValue, withValue } from '../round/draft.js';
import { type Measuring, READY } from '../round/measuring.js';
import { laterTapRules } from '../round/tapRulesLater.js';
import { atApex, fromApex } from './apexRound.js';
import { begunPractice } from './begin.js';
import { NO_AIDS } from './ears.js';
import { exerciseOf } from './exerciseOf.js';
import type { PracticeDraft } from './keptPractice.js';
import { measuredIn, withValuesFrom } from './valuesFrom.js';

const ID = (n: number) => `00000000-0000-7000-8000-${String(n).padStart(12, '0')}`;
const STAMP = { at: '2026-11-26T08:00:00+00:00', zone: 'UTC', asEntered: null };
const BEGUN: PracticeDraft = begunPractice(
  scenarioOf('quiet-morning') as Scenario,
  3,
  { exercise: ID(1), round: ID(2), sequence: 1, begunAt: STAMP },
  { aids: NO_AIDS, thresholdDb: null },
);
const START = { windowSeconds: 15, clock: 'any', first: 1 } as const;
const inSeconds = (ms: number) => ms / 1000;

beforeAll(() => laterTapRules.fetch());

const begins = (draft: PracticeDraft, measuring: Measuring) =>
  measuredIn(draft, 'pulse', measuring, inSeconds);
const taps = (draft: PracticeDraft, tapsMs: number[]) =>
  begins(draft, { at: 'tapping', session: 's', tapsMs, source: 'key', measuredAt: STAMP });
const counts = (draft: PracticeDraft, startedAtMs: number) =>
  begins(draft, { at: 'running', session: 's', start: START, startedAtMs, measuredAt: STAMP });

/** What the bedside's screens do where a value is kept. */
function keeps(
  draft: PracticeDraft,
  entry: string,
  what:
    | Pick<DraftValue & { kind: 'taps' }, 'kind' | 'taps'>
    | Pick<DraftValue & { kind: 'count' }, 'kind' | 'count'>,
): PracticeDraft {
  const frame = { entry, sequence: 1, measuredAt: STAMP, noticed: NOTHING_NOTICED };
  return withValuesFrom({ ...draft, round: withValue(draft.round, 'pulse', { ...frame, ...what }) });
}
const TAPS = { kind: 'taps', taps: { of: 'pulse', source: 'key', seconds: [0, 0.9, 1.8] } } as const;
const COUNT = { kind: 'count', count: { of: 'pulse', n: 17, ...START } } as const;
const evidenceOf = (draft: PracticeDraft) => exerciseOf(draft, NOTHING_CHOSEN).evidence;

// Source: docs/conventions.md section 9 (evidence keeps what was done).
test.each([
  ['left', (draft: PracticeDraft) => begins(draft, READY)],
  [
    'broken off',
    (draft: PracticeDraft) => ({
      ...draft,
      round: interrupted(
        draft.round,
        'pulse',
        { reason: 'other', nowMs: 61_000 },
        { entry: ID(9), sequence: 9 },
      ),
    }),
  ],
])('taps that were kept have their own start where others were begun and %s after them', (_, ends) => {
  const kept = keeps(taps(BEGUN, [10_000]), ID(7), TAPS);
  expect(evidenceOf(ends(taps(kept, [60_000]))).taps?.pulse?.startSeconds).toBe(10);
});

test('so has a count, at the wrist and at the apex', () => {
  const again = (draft: PracticeDraft) =>
    begins(counts(keeps(counts(draft, 12_000), ID(7), COUNT), 80_000), READY);
  expect(evidenceOf(again(BEGUN)).pulse?.startSeconds).toBe(12);
  const wrist = keeps(counts(BEGUN, 20_000), ID(6), COUNT);
  const both = fromApex(wrist, again(atApex(wrist)));
  expect([evidenceOf(both).pulse, evidenceOf(both).apex].map((one) => one?.startSeconds)).toEqual([20, 12]);
});

test('a count at the apex has its own start whatever is touched between its window and its number', () => {
  const wrist = keeps(counts(BEGUN, 20_000), ID(6), COUNT);
  const running = fromApex(wrist, counts(atApex(wrist), 95_000));
  const typing = fromApex(
    running,
    begins(atApex(running), { at: 'typing', start: START, measuredAt: STAMP, typed: '17' }),
  );
  const kept = fromApex(typing, keeps(atApex(typing), ID(7), COUNT));
  expect(evidenceOf(kept).apex?.startSeconds).toBe(95);
});

test('the value before one that is taken out again has its own start', () => {
  const two = keeps(taps(keeps(taps(BEGUN, [10_000]), ID(7), TAPS), [60_000]), ID(8), TAPS);
  expect(evidenceOf(two).taps?.pulse?.startSeconds).toBe(60);
  const one = { ...two, round: withoutValue(two.round, 'pulse', ID(8)) };
  expect(evidenceOf(one).taps?.pulse?.startSeconds).toBe(10);
});

test('an exercise that was under way before each value kept its start keeps that of the last one', () => {
  const { valuesFrom: _, ...older } = keeps(taps(BEGUN, [10_000]), ID(7), TAPS);
  expect(evidenceOf(older).taps?.pulse?.startSeconds).toBe(10);
  expect(evidenceOf(taps(older, [60_000])).taps?.pulse?.startSeconds).toBe(10);
});
