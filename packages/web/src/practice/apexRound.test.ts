import { type Scenario, scenarioOf } from '@evenfall/physiology';
import { NOTHING_CHOSEN } from '@evenfall/record';
import { expect, test } from 'vitest';
import { NOTHING_NOTICED, withMeasuring } from '../round/draft.js';
import { atApex, fromApex } from './apexRound.js';
import { begunPractice } from './begin.js';
import { NO_AIDS } from './ears.js';
import { exerciseOf } from './exerciseOf.js';
import type { PracticeDraft } from './keptPractice.js';

const ID = (n: number) => `00000000-0000-7000-8000-${String(n).padStart(12, '0')}`;
const STAMP = { at: '2026-11-26T08:00:00+00:00', zone: 'UTC', asEntered: null };
const BEGUN: PracticeDraft = begunPractice(
  scenarioOf('storm-of-leaves') as Scenario,
  3,
  { exercise: ID(1), round: ID(2), sequence: 1, begunAt: STAMP },
  { aids: NO_AIDS, thresholdDb: null },
);
const START = { windowSeconds: 60, clock: 'any', first: 1 } as const;

/** A count as the bedside's screens make one: begun at a second of the visit, then typed. */
function counted(draft: PracticeDraft, n: number, fromSeconds: number): PracticeDraft {
  const running = { at: 'running', session: 's', startedAtMs: 0, start: START, measuredAt: STAMP } as const;
  const round = withMeasuring(draft.round, 'pulse', running);
  const value = {
    entry: ID(n),
    sequence: n,
    measuredAt: STAMP,
    noticed: NOTHING_NOTICED,
    kind: 'count' as const,
    count: { of: 'pulse' as const, n, ...START },
  };
  return {
    ...draft,
    countedFrom: { ...draft.countedFrom, pulse: fromSeconds },
    round: { ...round, pulse: { ...round.pulse, values: [value] } },
  };
}

test('a count at the apex is the screens’ own pulse count, and stands beside that of the wrist', () => {
  const wrist = counted(BEGUN, 108, 20);
  const both = fromApex(wrist, counted(atApex(wrist), 134, 95));
  expect(both.round).toBe(wrist.round);
  expect(atApex(both).round.pulse.values).toHaveLength(1);
  const { evidence, entered } = exerciseOf(both, NOTHING_CHOSEN);
  expect(evidence.pulse).toMatchObject({ startSeconds: 20, count: { n: 108 } });
  expect(evidence.apex).toMatchObject({ startSeconds: 95, count: { n: 134 } });
  expect(entered).toMatchObject({ pulsePerMinute: 108, apexPerMinute: 134 });
});

test('nobody listened at the apex: nothing is kept of it', () => {
  const { evidence, entered } = exerciseOf(counted(BEGUN, 108, 20), NOTHING_CHOSEN);
  expect('apex' in evidence).toBe(false);
  expect('apexPerMinute' in entered).toBe(false);
});

test('where taps began is told apart at the apex and at the wrist', () => {
  const wrist: PracticeDraft = { ...BEGUN, tappedFrom: { pulse: 20 } };
  expect(atApex(wrist).tappedFrom).toEqual({});
  const both = fromApex(wrist, { ...atApex(wrist), tappedFrom: { pulse: 95 } });
  expect(both.tappedFrom).toEqual({ pulse: 20, apex: 95 });
  expect(atApex(both).tappedFrom).toEqual({ pulse: 95 });
  expect(fromApex(wrist, atApex(wrist)).tappedFrom).toEqual({ pulse: 20 });
});
