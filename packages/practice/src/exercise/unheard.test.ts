import { bladderFor, PROPER, type Scenario, SOUND_INSTRUMENT, scenarioOf } from '@evenfall/physiology';
import { describe, expect, test } from 'vitest';
import { oneThingOf } from '../fault/oneThing.js';
import { GOOD_OBSERVER } from '../observer/observer.js';
import { debrief, judgeEach } from './debrief.js';
import { demonstrate } from './demonstrate.js';
import type { Exercise } from './exercise.js';
import { replay } from './replay.js';
import { reportedOf } from './reportedOf.js';
import { resultRows } from './resultRows.js';
import { soundsHeard } from './unheard.js';

const quiet = scenarioOf('quiet-morning') as Scenario;
const heard = demonstrate(GOOD_OBSERVER, quiet, 1, PROPER, {
  ...SOUND_INSTRUMENT,
  bladder: bladderFor(quiet.armCm),
});
const good = debrief(heard);
const peakTick = Math.ceil((good.fall?.peakSeconds ?? 0) * 200);

/** The same numbers, typed and not marked, of other movements of the hand. */
function typed(actions: Exercise['actions']): Exercise {
  const run = heard.evidence.run;
  if (run === null) throw new Error('no run');
  const moments = run.run.moments.map((one) => ({ ...one, atSeconds: null }));
  return {
    ...heard,
    actions: [...actions].sort((a, b) => a.tick - b.tick),
    evidence: {
      ...heard.evidence,
      run: { startSeconds: good.fall?.peakSeconds ?? 0, run: { ...run.run, moments } },
    },
  };
}
const before = heard.actions.filter(({ tick }) => tick <= peakTick);
const letGo = typed([...before, { kind: 'quick-release', tick: peakTick + 40 }]);
const pieceAway = typed([
  { kind: 'chest-piece', offMm: null, held: 'light', tick: 0 },
  ...heard.actions.filter(({ kind }) => kind !== 'chest-piece'),
]);

test('the numbers of the letting down that was heard are accepted', () => {
  expect(good).toMatchObject({ fromNothing: null, accepted: { systolic: true, diastolic: true } });
  expect(good.costs.hidBy).toBeNull();
});

// A first and a last sound are two sounds (docs/conventions.md section 6): of one, or of none, no two numbers come.
describe.each([
  ['all air let out at once', letGo, 'two-to-three-a-second'],
  ['no chest piece on the arm', pieceAway, 'keep-listening'],
] as const)('the very numbers that were to be had, with %s', (_, exercise, doInstead) => {
  const found = debrief(exercise);

  test('there was nothing to hear them in, so none is accepted and nothing is held against what was to be had', () => {
    expect(found.fromNothing).toBe('unheard');
    expect(found.accepted).toMatchObject({ systolic: false, diastolic: false });
    expect(resultRows(found).map(({ error, parts }) => [error, parts])).toEqual([
      [null, null],
      [null, null],
    ]);
  });

  test('neither the table of habits nor the steps of the figure give a number', () => {
    expect(found.ledger).toEqual({ systolic: null, diastolic: null });
    expect(found.costs.costs.flatMap(({ systolic, diastolic }) => [systolic, diastolic])).toEqual(
      found.costs.costs.flatMap(() => [null, null]),
    );
    expect(found.costs.left).toBeNull();
  });

  test('the first thing to do is what hid the sounds', () => {
    expect(oneThingOf(found.costs, found.conduct)).toMatchObject({ kind: 'cost', cost: { doInstead } });
  });
});

// docs/conventions.md section 6: a pressure is read while a cuff is let down.
describe('numbers written though no cuff was ever pumped up', () => {
  const invented = { ...typed([]), aids: { hadSound: false } };
  const found = debrief(invented);

  test('are of nothing that was measured: none is accepted, and to measure is the one thing to do', () => {
    expect(found).toMatchObject({
      fall: null,
      fromNothing: 'unmeasured',
      accepted: { systolic: false, diastolic: false },
    });
    expect(oneThingOf(found.costs, found.conduct)).toMatchObject({
      kind: 'conduct',
      conduct: { code: 'nothing-measured', doInstead: 'measure-first' },
    });
  });

  test('report nothing', () => {
    const pressure = (exercise: Exercise) =>
      reportedOf(exercise, judgeEach(exercise)).find(({ code }) => code === 'both-numbers')?.is;
    expect(pressure(heard)).toBe('reported');
    expect(pressure(invented)).toBe('not-reported');
  });
});

test('with no sound on, and none shown, nothing was in the ears', () => {
  const silent = { ...heard, aids: { hadSound: false } };
  const found = debrief(silent);
  expect(found).toMatchObject({ fromNothing: 'unheard', accepted: { systolic: false, diastolic: false } });
  expect(oneThingOf(found.costs, found.conduct)).toMatchObject({ conduct: { code: 'nothing-in-ears' } });
  expect(debrief({ ...silent, evidence: { ...silent.evidence, wasShown: true } }).fromNothing).toBeNull();
});

test('one sound is as good as none, and two are two', () => {
  const played = replay(letGo);
  const fall = debrief(letGo).fall;
  if (fall === null) throw new Error('no fall');
  expect(soundsHeard(letGo, played, fall)).toBeLessThan(2);
  const even = replay(heard);
  expect(soundsHeard(heard, even, good.fall as NonNullable<typeof good.fall>)).toBeGreaterThan(10);
});
