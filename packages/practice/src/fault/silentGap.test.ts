import { bladderFor, PROPER, type Scenario, SOUND_INSTRUMENT, scenarioOf } from '@evenfall/physiology';
import { describe, expect, test } from 'vitest';
import { debrief, judgeEach } from '../exercise/debrief.js';
import { demonstrate } from '../exercise/demonstrate.js';
import type { Exercise } from '../exercise/exercise.js';
import { reportedOf } from '../exercise/reportedOf.js';
import { GOOD_OBSERVER, type Observer } from '../observer/observer.js';
import { lessonOf } from './lesson.js';
import { oneThingOf } from './oneThing.js';

const stiff = scenarioOf('stiff-pipe') as Scenario;
const SEED = 2510799274;

function shown(observer: Observer = GOOD_OBSERVER): Exercise {
  const instrument = { ...SOUND_INSTRUMENT, bladder: bladderFor(stiff.armCm) };
  return demonstrate(observer, stiff, SEED, PROPER, instrument);
}

/** The same letting down with another first sound: so much of a second after one, or typed without a time. */
function began(exercise: Exercise, mmHg: number, atSeconds: number | null, saysActNow = false): Exercise {
  const { run } = exercise.evidence;
  if (run === null) throw new Error('no run');
  const moments = run.run.moments.map((one, k) =>
    k === 0 ? { ...one, mmHg, atSeconds: atSeconds === null ? null : atSeconds - run.startSeconds } : one,
  );
  return {
    ...exercise,
    evidence: { ...exercise.evidence, saysActNow, run: { ...run, run: { ...run.run, moments } } },
    entered: { ...exercise.entered, systolic: mmHg },
  };
}

const even = (mmHg: number) => 2 * Math.round(mmHg / 2);
const one = (exercise: Exercise) => {
  const found = debrief(exercise);
  return oneThingOf(
    found.costs,
    found.conduct,
    lessonOf(exercise.scenario, reportedOf(exercise, judgeEach(exercise))),
  );
};

const good = debrief(shown());
const { gap, fall } = good;
if (gap === null || fall === null) throw new Error('no gap');
const after = good.sounds.find(
  ({ isAudible, cuffMmHg, atSeconds }) =>
    isAudible && atSeconds > fall.peakSeconds && cuffMmHg < (gap.topMmHg + gap.bottomMmHg) / 2,
);
if (after === undefined) throw new Error('no sound after the silence');

// Bedside handbook 3.4 and 3.7, physiology handbook 8.5: the sounds begin higher, fall silent and come back.
describe('the first sound after the silence taken for the first of all', () => {
  test.each([
    ['marked on it', even(after.cuffMmHg), after.atSeconds + 0.25],
    ['marked a moment before it, on no sound', even(after.cuffMmHg) + 2, after.atSeconds - 0.6],
    ['typed without a time', even(after.cuffMmHg), null],
  ] as const)('%s is falling into the gap, and that is the one thing', (_, mmHg, atSeconds) => {
    const exercise = began(shown(), mmHg, atSeconds);
    const found = debrief(exercise);
    const [dearest] = found.costs.costs;
    expect(dearest).toMatchObject({ code: 'silent-gap', doInstead: 'listen-from-above' });
    expect(dearest?.systolic).toBeLessThan(-25);
    expect(found.costs.costs.map(({ code }) => code)).not.toContain('on-no-sound');
    expect(found.isAfterGap).toBe(true);
    expect(one(exercise)).toMatchObject({ kind: 'cost', cost: { code: 'silent-gap' } });
  });

  test('whoever did not feel first is told that too, and whoever did is not', () => {
    const hand = { ...GOOD_OBSERVER.hand, palpatesFirst: false, peakMmHg: 220 };
    const unfelt = shown({ ...GOOD_OBSERVER, hand });
    const found = debrief(began(unfelt, even(after.cuffMmHg), null));
    expect(found.costs.costs[0]).toMatchObject({ doInstead: 'feel-and-listen-from-above' });
  });

  test('the book’s own reading is in no gap, nor is a number far below it', () => {
    expect(good.isAfterGap).toBe(false);
    expect(good.costs.costs).toEqual([]);
    const low = debrief(began(shown(), even(after.cuffMmHg) - 20, null));
    expect(low.costs.costs[0]?.code).toBe('off-the-sound');
  });

  test('whether the gap was seen is told from the number', () => {
    const is = (exercise: Exercise) =>
      reportedOf(exercise, judgeEach(exercise)).find(({ code }) => code === 'gap')?.is;
    expect(is(shown())).toBe('reported');
    expect(is(began(shown(), even(after.cuffMmHg), null))).toBe('not-reported');
  });
});

// Bedside handbook 3.16: from 180 on it is severe. Nobody can know of it who has 144 in hand.
test('a severe pressure that was not found is not held against whoever said that it can wait', () => {
  const missed = began(shown(), even(after.cuffMmHg), null);
  expect(debrief(missed).redFlag).toEqual({ code: 'severe-pressure', isSeen: false, isKnowable: false });
  expect(debrief(missed).conduct.map(({ code }) => code)).not.toContain('not-told');
  const found = began(shown(), 186, null);
  expect(debrief(found).redFlag).toMatchObject({ isKnowable: true });
  expect(one(found)).toMatchObject({ kind: 'conduct', conduct: { code: 'not-told' } });
});
