import {
  type Action,
  bladderFor,
  type Circumstances,
  PROPER,
  SCENARIOS,
  type Scenario,
  SOUND_INSTRUMENT,
  scenarioOf,
  TICKS_PER_SECOND,
} from '@evenfall/physiology';
import { describe, expect, test } from 'vitest';
import { debrief, judge } from '../exercise/debrief.js';
import { demonstrate } from '../exercise/demonstrate.js';
import type { Exercise } from '../exercise/exercise.js';
import { replay } from '../exercise/replay.js';
import { USUAL_RULES } from '../exercise/rules.js';
import { type Ledger, sumOfLedger } from '../ledger/ledger.js';
import { GOOD_OBSERVER, type Observer } from '../observer/observer.js';
import { oneThingOf } from './oneThing.js';

const quiet = scenarioOf('quiet-morning') as Scenario;

function shown(
  scenario: Scenario,
  seed = 1,
  some: Partial<Circumstances> = {},
  observer: Observer = GOOD_OBSERVER,
) {
  const instrument = { ...SOUND_INSTRUMENT, bladder: bladderFor(scenario.armCm), ...scenario.instrument };
  return demonstrate(observer, scenario, seed, { ...PROPER, ...some }, instrument);
}
const codes = (exercise: Exercise) => debrief(exercise).costs.costs.map(({ code }) => code);
const conduct = (exercise: Exercise) => debrief(exercise).conduct.map(({ code }) => code);

/** The same numbers without a time, the systolic written otherwise. */
function untimed(exercise: Exercise, systolic: number): Exercise {
  const { run } = exercise.evidence;
  if (run === null) throw new Error('no run');
  const moments = run.run.moments.map((one, i) => ({
    ...one,
    atSeconds: null,
    mmHg: i === 0 ? systolic : one.mmHg,
  }));
  return {
    ...exercise,
    evidence: { ...exercise.evidence, run: { ...run, run: { ...run.run, moments } } },
    entered: { ...exercise.entered, systolic },
  };
}

/** The same visit with everything done so much later. */
function later(exercise: Exercise, seconds: number, some: readonly Action[] = []): Exercise {
  const { run } = exercise.evidence;
  return {
    ...exercise,
    seconds: exercise.seconds + seconds,
    actions: [
      ...some,
      ...exercise.actions.map((one) => ({ ...one, tick: one.tick + seconds * TICKS_PER_SECOND })),
    ],
    evidence: {
      ...exercise.evidence,
      run: run === null ? null : { ...run, startSeconds: run.startSeconds + seconds },
    },
  };
}

// Bedside handbook 3.4 to 3.7: felt, thirty above, two to three a second, first of two and last. Who does so has done nothing wrong.
// Twenty visits in each scenario: `prove/textbook.mjs`.
describe('the book’s own hand is at no fault, whatever the heart does', () => {
  test.each(SCENARIOS.map((one, k) => [one.id, one, [3, 12, 20][k % 3]] as const))(
    '%s',
    (_, scenario, seed) => {
      const found = debrief(shown(scenario, seed));
      // Noise and a gauge that shows wrong come with the place and the instrument; sounds from the first beat on were there to be heard.
      const own = found.costs.costs.filter(
        ({ code }) => !['noise', 'gauge-off', 'began-in-sounds'].includes(code),
      );
      expect(own).toEqual([]);
      if (found.costs.costs.length > 0) return;
      for (const side of ['systolic', 'diastolic'] as const) {
        expect(Math.abs(found.costs.left?.[side] ?? 99)).toBeLessThanOrEqual(4);
        expect(found.accepted[side]).toBe(true);
      }
      expect(found.conduct).toEqual([]);
    },
  );
});

// Counted in the visit as `replay` plays it: with the chest piece on from the start, the last sound loud enough for a normal ear comes at
// 11 mmHg in the first inflation (the cuff is emptied quickly) and at 56 in the second, which is the reading.
test('what was to be had is of the inflation that was read, not of the first one', () => {
  const taken = shown(scenarioOf('playground') as Scenario, 20);
  const on: Action = { tick: 0, kind: 'chest-piece', offMm: 0, held: 'light' };
  const isOff = (one: Action) => one.kind === 'chest-piece' && one.offMm === null;
  const both = { ...taken, actions: [on, ...taken.actions.filter((one) => !isOff(one))] };
  const { sounds, inflations } = replay(both);
  const lastOf = (from = 0, to = Infinity) =>
    sounds.findLast(({ levelDb, atSeconds }) => levelDb >= 0 && atSeconds >= from && atSeconds < to)
      ?.cuffMmHg;
  expect(lastOf(inflations[0], inflations[1])).toBeCloseTo(11, 0);
  expect(lastOf(inflations[1])).toBeCloseTo(56, 0);
  const found = judge(both);
  expect(Math.abs((found.had.diastolic?.mmHg ?? 0) - 56)).toBeLessThanOrEqual(4);
  expect(found.entered.diastolic).toBe(56);
});

describe('a number that was not marked in time', () => {
  const exercise = shown(quiet);
  const had = judge(exercise).had.systolic?.mmHg ?? 0;

  test('far from every sound is a fault with one thing to do, and is not owed to chance', () => {
    const found = debrief(untimed(exercise, 140));
    expect(found.costs.costs).toMatchObject([{ code: 'off-the-sound', doInstead: 'mark-in-time' }]);
    expect(found.costs.costs[0]?.systolic).toBeCloseTo(140 - had, -0.5);
    expect(Math.abs(found.costs.left?.systolic ?? 99)).toBeLessThanOrEqual(2);
    expect(found.accepted.systolic).toBe(false);
  });

  // A mark of the gauge up, or a slow reaction of 0.5 s at 2.4 mmHg/s and half a mark down, may be an ordinary reading.
  test.each([
    [2, false],
    [4, true],
    [-2, false],
    [-4, true],
  ])('%i mmHg from what was to be had: a fault is %s', (off, isFault) => {
    expect(codes(untimed(exercise, had + off)).includes('off-the-sound')).toBe(isFault);
  });

  test('as it should be is no fault, but that it was not marked is said', () => {
    expect(codes(untimed(exercise, had))).toEqual([]);
    expect(conduct(untimed(exercise, had))).toEqual(['not-marked']);
  });
});

// Physiology handbook 13: the softest tap of the check is 5 dB; who hears it may hear softer ones.
test.each([
  [4, []],
  [5, []],
  [5.1, ['not-heard']],
])('the softest tap heard was %f dB', (thresholdDb, expected) => {
  const exercise = shown(quiet);
  expect(codes({ ...exercise, evidence: { ...exercise.evidence, thresholdDb } })).toEqual(expected);
});

describe('five minutes of rest count from sitting down, in the room too (bedside handbook 3.1)', () => {
  const exercise = shown(quiet);
  const inflated = (judge(exercise).fall?.inflatedSeconds ?? 0) / 60;

  test.each([
    [5 - inflated, false],
    [5 - inflated - 0.01, true],
    [5 - inflated + 0.01, false],
  ])('with %f minutes before the visit: a fault is %s', (restMinutes, isFault) => {
    const found = codes({ ...exercise, circumstances: { ...exercise.circumstances, restMinutes } });
    expect(found.includes('too-little-rest')).toBe(isFault);
  });

  test('who waits six minutes in the room has rested them', () => {
    const stairs = scenarioOf('calm-after-stairs') as Scenario;
    const waited = later(shown(stairs, 3, { restMinutes: 1, observerMinutes: 0 }), 360);
    expect(codes(waited)).not.toContain('too-little-rest');
  });
});

describe('a number that was marked in time', () => {
  const exercise = shown(quiet);
  const marked = (seconds: number, mmHg: number): Exercise => {
    const { run } = exercise.evidence;
    if (run === null) throw new Error('no run');
    const moments = run.run.moments.map((one, i) =>
      i === 0 ? { ...one, atSeconds: (one.atSeconds ?? 0) + seconds, mmHg } : one,
    );
    return {
      ...exercise,
      evidence: { ...exercise.evidence, run: { ...run, run: { ...run.run, moments } } },
      entered: { ...exercise.entered, systolic: mmHg },
    };
  };
  const first = exercise.entered.systolic ?? 0;

  // Physiology handbook 6.4: a needle swings before there is a sound.
  test('marked four seconds before any sound: it was no sound, and it is not owed to chance', () => {
    const found = debrief(marked(-4, first + 10));
    expect(found.costs.costs).toMatchObject([{ code: 'on-no-sound', doInstead: 'wait-for-the-sound' }]);
    expect(Math.abs(found.costs.left?.systolic ?? 99)).toBeLessThanOrEqual(2);
    // The steps call it as the costs do: no other sound was taken, and nothing was read late.
    const { misheard, imagined, lag } = found.ledger.systolic ?? {};
    expect({ misheard, lag }).toEqual({ misheard: 0, lag: 0 });
    expect(imagined).toBeGreaterThan(4);
    expect(sumOfLedger(found.ledger.systolic as Ledger)).toBeCloseTo(found.ledger.systolic?.error ?? 0, 9);
  });

  // A hand that rounds goes to ten or five, or a mark or two beside; ten beside is another number.
  test.each([
    [0, null],
    [4, 'digit-habit'],
    [10, 'misread-needle'],
    [-10, 'misread-needle'],
  ])('%i mmHg beside the needle at the sound: %s', (off, code) => {
    expect(codes(marked(0, first + off))).toEqual(code === null ? [] : [code]);
  });

  // Bedside handbook 3.9: some protocols read the next mark above. Then that is no habit of the pen. The needle stood at 120.2.
  test('the mark above is a fault only where the nearest one is read', () => {
    const other = shown(quiet, 5);
    const needle = judge(other).marks[0]?.needleMmHg ?? 0;
    expect(needle).toBeGreaterThan(120);
    expect(needle).toBeLessThan(121);
    const usual = USUAL_RULES.runRules;
    const above = {
      ...USUAL_RULES,
      runRules: { ...usual, deflation: { ...usual.deflation, gaugeReading: 'mark-above' } as const },
    };
    const read = (rules: typeof USUAL_RULES) =>
      debrief({ ...other, entered: { ...other.entered, systolic: 122 } }, rules).costs.costs.map(
        ({ code }) => code,
      );
    expect(read(USUAL_RULES)).toEqual(['digit-habit']);
    expect(read(above)).not.toContain('misread-needle');
    expect(judge(other, above).had.systolic?.mmHg).toBe(122);
  });
});

// Bedside handbook 3.6: evenly down, never stopping. Held for a time at 100 mmHg by an ideal hand.
test.each([
  [3, false],
  [7, true],
])('the cuff held for %i s in the middle of the sounds: said is %s', (seconds, isSaid) => {
  const exercise = shown(quiet);
  const fall = exercise.actions.find(({ kind }) => kind === 'steady-fall');
  if (fall?.kind !== 'steady-fall') throw new Error('no fall');
  const at = fall.tick + Math.round((50 / fall.mmHgPerSecond) * TICKS_PER_SECOND);
  const held: Action[] = [
    { ...fall, tick: at, mmHgPerSecond: 0.01 },
    { ...fall, tick: at + seconds * TICKS_PER_SECOND },
  ];
  const actions = [...exercise.actions, ...held].sort((a, b) => a.tick - b.tick);
  expect(conduct({ ...exercise, actions }).includes('held-on-the-way')).toBe(isSaid);
});

describe('how high', () => {
  const exercise = shown(quiet);
  const run = exercise.evidence.run?.run;
  const peak = run?.peak?.mmHg ?? 0;
  const felt = (lostMmHg: number | null): Exercise => {
    const { evidence } = exercise;
    if (evidence.run === null || run === undefined) throw new Error('no run');
    const palpated = { lostMmHg, backMmHg: null };
    return { ...exercise, evidence: { ...evidence, run: { ...evidence.run, run: { ...run, palpated } } } };
  };

  // Bedside handbook 3.5: 20 to 30 above where the pulse goes. Judged by what was felt, not by what was true.
  test.each([
    [19, true],
    [20, false],
    [21, false],
  ])('%i above what was felt: too little is %s', (margin, isSmall) => {
    expect(codes(felt(peak - margin)).includes('margin-small')).toBe(isSmall);
  });

  test('a higher peak leaves the rest of the fall as it was: it cannot cost a diastolic', () => {
    const found = debrief(felt(peak - 10)).costs.costs.find(({ code }) => code === 'margin-small');
    expect(found?.diastolic).toBeCloseTo(0, 9);
  });

  test('a pulse that a finger had to feel counts where nothing was written of it', () => {
    expect(conduct(felt(null))).not.toContain('felt-not-first');
    const blind = { ...felt(null), actions: exercise.actions.filter(({ kind }) => kind !== 'finger') };
    expect(conduct(blind)).toContain('felt-not-first');
  });
});

describe('what was done besides', () => {
  const exercise = shown(quiet);
  const before: readonly Action[] = [
    { tick: 400, kind: 'steady-rise', mmHgPerSecond: 40, toMmHg: 290 },
    { tick: 2400, kind: 'quick-release' },
  ];

  test('pumped to 290 a moment before: too high, and the arm had no rest', () => {
    // The feeling that came between is left out, so that the rest is that between two readings: a minute (bedside handbook 3.10).
    const found = debrief(later(exercise, 15, before)).conduct;
    expect(found.find(({ code }) => code === 'pumped-too-high')?.figures).toMatchObject({ times: 1 });
    const blind = { ...later(exercise, 15, before) };
    const bare = { ...blind, actions: blind.actions.filter(({ kind }) => kind !== 'finger') };
    const rest = debrief(bare).conduct.find(({ code }) => code === 'arm-not-rested');
    expect(rest?.figures.neededSeconds).toBe(60);
    expect(rest?.figures.inflations).toBe(2);
  });

  // By hand: 76 beats a minute or so are 38 in half a minute; one more or less is the clock’s.
  test('a pulse counted wrong, and a breath counted in half a minute', () => {
    const counted = (n: number) => ({
      startSeconds: 3,
      count: { of: 'pulse', n, windowSeconds: 30, clock: 'any', first: 1 } as const,
    });
    const there =
      judge({ ...exercise, evidence: { ...exercise.evidence, pulse: counted(30) } }).counts.pulse?.there ?? 0;
    for (const [n, isWrong] of [
      [there + 1, false],
      [there - 1, false],
      [there + 2, true],
      [there - 2, true],
    ] as const) {
      const found = conduct({ ...exercise, evidence: { ...exercise.evidence, pulse: counted(n) } });
      expect(found.includes('pulse-miscounted')).toBe(isWrong);
    }
    const breaths = { ...counted(7), count: { ...counted(7).count, of: 'breaths' as const } };
    // Bedside handbook 2.1: a full minute.
    expect(conduct({ ...exercise, evidence: { ...exercise.evidence, breaths } })).toContain(
      'breaths-window-short',
    );
  });

  test('a sign that cannot wait and was said to: nothing is graver', () => {
    const severe = shown(scenarioOf('unheralded') as Scenario);
    const said = (saysActNow: boolean | null) =>
      conduct({ ...severe, evidence: { ...severe.evidence, saysActNow } })[0];
    expect(said(false)).toBe('not-told');
    expect(said(true)).toBeUndefined();
    expect(said(null)).toBeUndefined();
  });

  // docs/conventions.md section 6: three numbers are written where sounds go on.
  test('a muffling that was not written where sounds went on to nothing', () => {
    const gate = shown(scenarioOf('open-gate') as Scenario, 4);
    const two = { ...gate, entered: { ...gate.entered, muffled: null } };
    expect(judge(gate)).toMatchObject({ isByMuffled: true, accepted: { diastolic: true } });
    expect(judge(two).accepted.diastolic).toBe(false);
    expect(conduct(two)).toContain('muffled-not-written');
  });

  // The sums of a page are of the number that it accepts: what was written of the muffling minus what was to be had of it.
  test.each([
    ['open-gate', 2],
    ['racing-warm', 3],
    ['tight-chest', 2],
  ])('%s %d: a muffling written as the second of two numbers costs nothing', (id, seed) => {
    const three = shown(scenarioOf(id) as Scenario, seed);
    const { run } = three.evidence;
    if (run === null) throw new Error('no run');
    const moments = run.run.moments
      .filter(({ what }) => what !== 'last sound')
      .map((one) => (one.what === 'muffled' ? { ...one, what: 'last sound' as const } : one));
    const two = {
      ...three,
      evidence: { ...three.evidence, run: { ...run, run: { ...run.run, moments } } },
      entered: { ...three.entered, diastolic: three.entered.muffled, muffled: null },
    };
    for (const exercise of [three, two]) {
      const found = debrief(exercise);
      expect(found).toMatchObject({ isByMuffled: true, accepted: { diastolic: true } });
      const ofEar = found.costs.costs.filter(({ code }) => code === 'misheard');
      expect(ofEar).toEqual([]);
      const sum = found.costs.costs.reduce(
        (so, one) => so + (one.diastolic ?? 0),
        found.costs.left?.diastolic ?? 99,
      );
      expect(sum).toBeCloseTo((three.entered.muffled ?? 99) - (found.had.muffled?.mmHg ?? 0), 9);
    }
    const { costs, conduct: left } = debrief(two);
    expect(oneThingOf(costs, left)).toMatchObject({ conduct: { code: 'muffled-not-written' } });
  });

  test('the last sound alone, where the muffling was to be written: three numbers mend it', () => {
    const gate = shown(scenarioOf('open-gate') as Scenario, 2);
    const two = { ...gate, entered: { ...gate.entered, muffled: null } };
    const { costs, conduct: left, had } = debrief(two);
    const heard = costs.costs.find(({ code }) => code === 'misheard');
    expect(heard?.diastolic).toBeLessThan(-30);
    expect(heard?.doInstead).toBe('three-numbers');
    const sum = costs.costs.reduce((so, one) => so + (one.diastolic ?? 0), costs.left?.diastolic ?? 99);
    expect(sum).toBeCloseTo((gate.entered.diastolic ?? 99) - (had.muffled?.mmHg ?? 0), 9);
    expect(oneThingOf(costs, left)).toMatchObject({ conduct: { code: 'muffled-not-written' } });
  });
});
