import {
  type Circumstances,
  PROPER,
  type Scenario,
  SOUND_INSTRUMENT,
  scenarioOf,
  truth,
} from '@evenfall/physiology';
import { NO_EVIDENCE, NOTHING_ENTERED, replay, traceAt } from '@evenfall/practice';
import { expect, test } from 'vitest';
import { nowOf, Visit, type VisitData } from './visit.js';

// The outside check: `replay` of packages/practice, which plays an exercise from its log alone.
const DATA: VisitData = {
  scenario: scenarioOf('quiet-morning') as Scenario,
  seed: 11,
  circumstances: PROPER,
  instrument: SOUND_INSTRUMENT,
  actions: [],
  tick: 0,
};

/** Pumps up with ten squeezes and lets down, drawn at frames of so many ms. */
function measured(frameMs: number, visit = new Visit(DATA)): Visit {
  const hands: [number, Parameters<Visit['act']>[0]][] = [
    [0.5, { kind: 'chest-piece', offMm: 2, held: 'light' }],
    ...Array.from({ length: 12 }, (_, at): [number, Parameters<Visit['act']>[0]] => [
      1.003 + at * 0.55,
      { kind: 'squeeze', share: 1 },
    ]),
    [9.017, { kind: 'valve', degrees: 40 }],
  ];
  for (let at = 0; at <= 40; at += frameMs / 1000) {
    for (const [when, movement] of hands)
      if (when > at - frameMs / 1000 && when <= at) visit.act(movement, when);
    visit.moveTo(at);
  }
  visit.moveTo(40);
  return visit;
}

const exerciseOf = (visit: Visit) => ({
  schema: 2 as const,
  ...visit.data(),
  seconds: visit.seconds,
  evidence: NO_EVIDENCE,
  entered: NOTHING_ENTERED,
});

test.each([16.67, 33, 250])('drawn every %s ms, the log alone gives the same needle', (frameMs) => {
  const visit = measured(frameMs);
  const played = replay(exerciseOf(visit));
  expect(Math.max(...played.cuffMmHg)).toBeGreaterThan(100);
  expect(traceAt(played.needleMmHg, played.tracePerSecond, visit.seconds)).toBe(visit.snapshot().needleMmHg);
});

test('no movement is dropped and each keeps its tick, also at four frames a second', () => {
  const [fast, slow] = [measured(16.67).data().actions, measured(250).data().actions];
  expect(slow).toHaveLength(14);
  // A hand is stamped by its own time where the visit has not passed it, which a slow drawing cannot have done either.
  expect(slow.map(({ kind }) => kind)).toEqual(fast.map(({ kind }) => kind));
  expect(slow.every(({ tick }, at) => at === 0 || tick >= (slow[at - 1]?.tick ?? 0))).toBe(true);
});

test('after a reload it goes on where it was, to the last bit', () => {
  const visit = measured(20);
  const again = new Visit(JSON.parse(JSON.stringify(visit.data())) as VisitData);
  expect(again.snapshot()).toEqual(visit.snapshot());
  expect(again.moveTo(43)).toEqual(visit.moveTo(43));
  expect(again.snapshot()).toEqual(visit.snapshot());
});

test('sounds are known ahead and are those that come', () => {
  const visit = measured(20);
  const ahead = visit.ahead(1);
  const { sounds } = visit.moveTo(visit.seconds + 1);
  expect(ahead).toEqual(sounds);
});

test('between two inflations they can be asked again, and the log says when; not while the cuff is up', () => {
  const visit = measured(20);
  expect(() => visit.arrange({ hasLegsCrossed: true }, null, 40)).toThrow();
  visit.act({ kind: 'quick-release' }, 40);
  visit.moveTo(60);
  expect(visit.isFlat).toBe(true);
  visit.arrange({ hasLegsCrossed: true, armBelowHeartCm: 8 }, 'large-adult', 61);
  visit.moveTo(62);
  const data = visit.data();
  expect(data.circumstances).toEqual(PROPER);
  expect(data.actions.slice(-2)).toEqual([
    { tick: 12_200, kind: 'arrange', hasLegsCrossed: true, armBelowHeartCm: 8 },
    { tick: 12_200, kind: 'cuff', bladder: 'large-adult' },
  ]);
  expect(nowOf(data)).toMatchObject({
    circumstances: { hasLegsCrossed: true, armBelowHeartCm: 8 },
    bladder: 'large-adult',
  });
  visit.act({ kind: 'squeeze', share: 1 }, 63);
  visit.moveTo(66);
  // Played again by `replay`, the outside check, the needle is the same.
  const played = replay(exerciseOf(visit));
  expect(traceAt(played.needleMmHg, played.tracePerSecond, visit.seconds)).toBe(visit.snapshot().needleMmHg);
});

test('before the cuff first goes up the visit is as if it had always been so, afterwards that is past', () => {
  const visit = new Visit(DATA);
  visit.moveTo(3);
  visit.arrange({ hasLegsCrossed: true }, 'large-adult', 3);
  expect(visit.data()).toMatchObject({
    circumstances: { hasLegsCrossed: true },
    instrument: { bladder: 'large-adult' },
    tick: 600,
  });
  visit.act({ kind: 'squeeze', share: 1 }, 3);
  visit.moveTo(3.5);
  expect(visit.isInflated).toBe(true);
  expect(() => visit.prepare({ hasLegsCrossed: false })).toThrow();
});

// The scenario of the book (physiology handbook 14, 27) falls in the minutes after getting up. The outside check for the visit is
// `truth` of packages/physiology for somebody who stands up at that second of the visit.
test('somebody who stands up before the first inflation stands from that moment, and not since the visit began', () => {
  const scenario = scenarioOf('up-too-fast') as Scenario;
  const visit = new Visit({ ...DATA, scenario, seed: 3 });
  visit.moveTo(300);
  visit.arrange({ posture: 'standing', arm: 'left' }, 'large-adult', 300);
  visit.moveTo(301);
  const data = visit.data();
  expect(data).toMatchObject({ circumstances: { posture: 'sitting', arm: 'left' } });
  expect(data.actions).toEqual([{ tick: 60_000, kind: 'arrange', posture: 'standing' }]);
  const { circumstances, bladder } = nowOf(data);
  expect(circumstances).toMatchObject({ posture: 'standing', arm: 'left', standingMinutes: -5 });
  expect(bladder).toBe('large-adult');
  const stands = { ...PROPER, arm: 'left', posture: 'standing' } as const;
  const at = (some: Circumstances, seconds: number) => truth(visit.person, some, seconds).longRun.systolic;
  for (const after of [1, 15, 30])
    expect(at(circumstances, 300 + after)).toBeCloseTo(
      at({ ...stands, standingMinutes: -5 }, 300 + after),
      9,
    );
  // Five minutes on the feet are another pressure: it matters which of both it is.
  expect(Math.abs(at(circumstances, 301) - at({ ...stands, standingMinutes: 0 }, 301))).toBeGreaterThan(10);
  visit.arrange({ posture: 'sitting' }, null, 310);
  visit.moveTo(311);
  expect(nowOf(visit.data()).circumstances.posture).toBe('sitting');
});

// docs/practice.md: who gets up and sits down in another room rests from there on. Bedside handbook 3.1: five minutes of sitting quietly.
test.each([
  ['before the cuff first goes up', new Visit(DATA)],
  ['between two inflations', measured(250)],
])('who sits down anew %s has rested for no longer than since then', (_, visit) => {
  const from = visit.seconds + 70;
  visit.act({ kind: 'quick-release' }, visit.seconds);
  visit.moveTo(from);
  visit.arrange({ isQuieter: true, isSeatedAnew: true }, null, from);
  visit.moveTo(from + 120);
  const { circumstances } = nowOf(visit.data());
  expect(circumstances.isQuieter).toBe(true);
  expect(60 * circumstances.restMinutes + visit.seconds).toBeCloseTo(120, 1);
  // Played again from its log, nothing of it is otherwise.
  const again = new Visit(visit.data());
  expect(again.snapshot()).toEqual(visit.snapshot());
});
