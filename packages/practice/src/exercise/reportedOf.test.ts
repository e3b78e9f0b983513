import { parseRun } from '@evenfall/clinical';
import {
  type Action,
  instrumentFor,
  MODEL,
  PROPER,
  REPORTS,
  SCENARIOS,
  type Scenario,
  SOUND_INSTRUMENT,
  scenarioOf,
  temperatureOf,
  thermometerPlace,
} from '@evenfall/physiology';
import { describe, expect, test } from 'vitest';
import { judgeEach } from './debrief.js';
import {
  type Entered,
  type Evidence,
  EXERCISE_SCHEMA,
  type Exercise,
  NO_EVIDENCE,
  NOTHING_ENTERED,
} from './exercise.js';
import { reportedOf } from './reportedOf.js';
import { temperatureRow } from './temperatureRow.js';

const blank = (id: string, more: Partial<Exercise> = {}): Exercise => ({
  schema: EXERCISE_SCHEMA,
  model: MODEL,
  scenario: scenarioOf(id) as Scenario,
  seed: 1,
  circumstances: PROPER,
  instrument: SOUND_INSTRUMENT,
  actions: [],
  seconds: 300,
  earlier: [],
  evidence: NO_EVIDENCE,
  entered: NOTHING_ENTERED,
  ...more,
});
const codes = (exercise: Exercise) =>
  Object.fromEntries(reportedOf(exercise, judgeEach(exercise)).map(({ code, is }) => [code, is]));

type Taken = {
  /** When the cuff goes up. */
  readonly at: number;
  readonly method?: 'auscultation' | 'palpation';
  readonly felt?: boolean;
  readonly wrote?: readonly [systolic: number, diastolic: number | null];
};
const CUFF_UP_SECONDS = 10;

/** A cuff that is pumped up once and let down slowly. */
const LET_DOWN: readonly Action[] = [
  { tick: 4000, kind: 'steady-rise', mmHgPerSecond: 60, toMmHg: 190 },
  { tick: 4800, kind: 'steady-fall', mmHgPerSecond: 3, toMmHg: 30 },
  { tick: 16_000, kind: 'quick-release' },
];

/** Readings of a visit, each pumped up and let down within ten seconds, with what was arranged between them. */
function visited(id: string, taken: readonly Taken[], between: readonly Action[] = []): Exercise {
  const cuff = taken.flatMap(({ at }): Action[] => [
    { tick: at * 200, kind: 'steady-rise', mmHgPerSecond: 60, toMmHg: 150 },
    { tick: (at + 4) * 200, kind: 'steady-fall', mmHgPerSecond: 20, toMmHg: 50 },
    { tick: (at + CUFF_UP_SECONDS) * 200, kind: 'quick-release' },
  ]);
  const readings = taken.map(({ at, method = 'auscultation', felt = false, wrote = [120, 80] }) => {
    const isByFeel = method === 'palpation';
    const read = parseRun({
      method,
      ...(felt ? { palpated: { lostMmHg: 130 } } : {}),
      moments: isByFeel
        ? [{ what: 'pulse back', mmHg: 118, atSeconds: 5.5 }]
        : [
            { what: 'first sound', mmHg: 120, atSeconds: 5.5 },
            { what: 'last sound', mmHg: 80, atSeconds: 7.5 },
          ],
    });
    if (!read.ok) throw new Error('no run');
    const [systolic, diastolic] = wrote;
    const entered = { systolic, muffled: null, diastolic: isByFeel && wrote[0] === 120 ? null : diastolic };
    return { startSeconds: at, run: read.value, entered };
  });
  const last = readings.at(-1);
  if (last === undefined) throw new Error('no reading');
  return blank(id, {
    actions: [...cuff, ...between].sort((one, other) => one.tick - other.tick),
    seconds: last.startSeconds + 30,
    earlier: readings.slice(0, -1),
    evidence: { ...NO_EVIDENCE, run: { startSeconds: last.startSeconds, run: last.run } },
    entered: { ...NOTHING_ENTERED, ...last.entered },
  });
}
const at = (...seconds: readonly number[]): Taken[] => seconds.map((one) => ({ at: one }));
const arranged = (seconds: number, what: object): Action => ({
  tick: seconds * 200,
  kind: 'arrange',
  ...what,
});

// Of every person of the book: truth, lesson, what a good observer reports.
test('each person of the book says what a good observer reports; nothing is said twice', () => {
  for (const { id, report } of SCENARIOS) {
    expect(report?.length, id).toBeGreaterThan(0);
    expect(new Set(report).size, id).toBe(report?.length);
  }
  expect(new Set(SCENARIOS.flatMap(({ report }) => report ?? []))).toEqual(new Set(REPORTS));
});

test('nothing written: nothing reported, and what has no place here is told apart', () => {
  expect(codes(blank('tide'))).toEqual({
    'breaths-pattern': 'not-here',
    'breaths-irregular': 'not-reported',
    'breaths-rate': 'not-reported',
    'breaths-full-minute': 'not-reported',
  });
});

test('a full minute of uneven breaths, and that they were uneven', () => {
  const count = { of: 'breaths', n: 12, windowSeconds: 60, clock: 'any', first: 1 } as const;
  const noticed = { rhythmFelt: 'irregular', strength: null, site: null } as const;
  const found = codes(
    blank('tide', {
      evidence: { ...NO_EVIDENCE, breaths: { startSeconds: 3, count, noticed } },
      entered: { ...NOTHING_ENTERED, breathsPerMinute: 12 },
    }),
  );
  expect(found).toMatchObject({
    'breaths-irregular': 'reported',
    'breaths-rate': 'reported',
    'breaths-full-minute': 'reported',
  });
});

test('three numbers of sounds that go on to nothing', () => {
  const read = parseRun({
    method: 'auscultation',
    palpated: { lostMmHg: 170 },
    moments: [
      { what: 'first sound', mmHg: 164 },
      { what: 'muffled', mmHg: 60 },
      { what: 'last sound', mmHg: 0 },
    ],
  });
  if (!read.ok) throw new Error('no run');
  const evidence = { ...NO_EVIDENCE, run: { startSeconds: 20, run: read.value } };
  const entered = { ...NOTHING_ENTERED, systolic: 164, muffled: 60, diastolic: 0 };
  expect(codes(blank('open-gate', { actions: LET_DOWN, evidence, entered }))).toEqual({
    muffled: 'reported',
    'sounds-to-zero': 'reported',
    'pulse-strong': 'not-reported',
  });
  expect(codes(blank('stiff-pipe', { actions: LET_DOWN, evidence, entered }))).toMatchObject({
    'palpated-systolic': 'reported',
    gap: 'reported',
  });
});

test('an exercise kept before the book said so is held against the book all the same', () => {
  const { report: _, ...older } = scenarioOf('two-arms') as Scenario;
  expect(codes(blank('two-arms', { scenario: older }))).toEqual({
    'both-numbers': 'not-reported',
    'other-arm': 'not-reported',
  });
  expect(reportedOf(blank('two-arms', { scenario: { ...older, title: 'Ours' } }), [])).toEqual([]);
});

// Physiology handbook 14, row 31: fever ward, 39.4 degrees.
test('a temperature is read off the thermometer: to the tenth, or wrong', () => {
  const wrote = (temperatureC: number | null, id = 'fever-ward') =>
    blank(id, { entered: { ...NOTHING_ENTERED, temperatureC } });
  expect(temperatureRow(wrote(39.4))).toEqual({ written: 39.4, shown: 39.4, isAccepted: true });
  expect(temperatureRow(wrote(39.5))?.isAccepted).toBe(false);
  expect(temperatureRow(wrote(null))).toBeNull();
  expect(temperatureRow(wrote(36.8, 'quiet-morning'))?.isAccepted).toBe(true);
  expect(codes(wrote(39.4)).temperature).toBe('reported');
  expect(codes(wrote(null)).temperature).toBe('not-reported');
});

// Physiology handbook 14, row 35, says feverish (38 degrees or more by bedside handbook 4.1) and no number. Where it is measured: common practice, no source.
test('whoever is said to have fever has one, and no small child has a thermometer under the tongue', () => {
  for (const scenario of SCENARIOS.filter(({ redFlag }) => redFlag === 'fever-with-fast-pulse')) {
    expect(temperatureOf(scenario)).toBeGreaterThanOrEqual(38);
    expect(scenario.report).toContain('temperature');
  }
  expect(thermometerPlace(scenarioOf('feverish-toddler') as Scenario)).toBe('ear');
  expect(thermometerPlace(scenarioOf('playground') as Scenario)).toBe('tongue');
});

// Bedside handbook 3.10: a minute between two readings on one arm.
describe('a second reading is one after a minute', () => {
  const LEFT = arranged(20, { arm: 'left' });
  const RIGHT = arranged(45, { arm: 'right' });
  test.each<[string, Taken[], Action[], string]>([
    ['ten seconds later', at(5, 25), [], 'not-reported'],
    ['fifty seconds later', at(5, 65), [], 'not-reported'],
    ['a minute later', at(5, 80), [], 'reported'],
    ['too soon, and once more after a minute', at(5, 25, 100), [], 'reported'],
    ['on the other arm', at(5, 90), [LEFT], 'not-reported'],
    ['on the first arm again, a minute after that one', at(5, 30, 80), [LEFT, RIGHT], 'reported'],
    ['on the feet', at(5, 90), [arranged(20, { posture: 'standing' })], 'not-reported'],
  ])('%s', (_, taken, between, is) => {
    expect(codes(visited('quiet-morning', taken, between))['second-reading']).toBe(is);
  });
});

// Bedside handbook 3.14: pressure and pulse at 1 and 3 min of standing, beside those before.
describe('readings on the feet are those at one and at three minutes', () => {
  const UP = arranged(30, { posture: 'standing' });
  test.each<[string, number[], string]>([
    ['ten and twenty seconds after getting up', [5, 40, 55], 'not-reported'],
    ['at one minute alone', [5, 90], 'not-reported'],
    ['at one and at two minutes', [5, 90, 150], 'not-reported'],
    ['at one and at three minutes', [5, 90, 210], 'reported'],
    ['at one and at four minutes', [5, 90, 270], 'not-reported'],
    ['at one and at three minutes, with none before', [90, 210], 'not-reported'],
  ])('%s', (_, seconds, is) => {
    expect(codes(visited('up-too-fast', at(...seconds), [UP]))['standing-readings']).toBe(is);
  });
});

describe('both arms', () => {
  const LEFT = arranged(20, { arm: 'left' });
  const UP = arranged(25, { posture: 'standing' });
  test.each<[string, Taken[], Action[], string]>([
    ['twice on one arm', at(5, 90), [], 'not-reported'],
    ['one on each', at(5, 40), [LEFT], 'reported'],
    [
      'one of the two without a diastolic',
      [{ at: 5 }, { at: 40, wrote: [138, null] }],
      [LEFT],
      'not-reported',
    ],
    ['one sitting and one standing', at(5, 40), [LEFT, UP], 'not-reported'],
  ])('%s', (_, taken, between, is) => {
    expect(codes(visited('two-arms', taken, between))['other-arm']).toBe(is);
  });
});

test('both numbers are ticked where both were written, of marks of the gauge or not', () => {
  const both = (...wrote: [number, number | null]) =>
    codes(visited('quiet-morning', [{ at: 5, wrote }]))['both-numbers'];
  expect([both(120, 80), both(120, null), both(121, 80), both(120, 79)]).toEqual([
    'reported',
    'not-reported',
    'reported',
    'reported',
  ]);
});

// Physiology handbook 14: the noisy bay. A place that stays loud did not become quiet.
test('that quiet was asked for is ticked where the place became quiet, and not where it stays loud', () => {
  const asked = { ...PROPER, isQuieter: true };
  const place = scenarioOf('noisy-bay') as Scenario;
  const inPlace = (noiseDbA: number, circumstances: Exercise['circumstances']) =>
    codes(blank('noisy-bay', { scenario: { ...place, noiseDbA }, circumstances }))['noise-of-place'];
  expect(inPlace(place.noiseDbA, asked)).toBe('reported');
  expect(inPlace(place.noiseDbA, PROPER)).toBe('not-reported');
  expect(inPlace(90, asked)).toBe('not-reported');
});

// docs/practice.md: 81 dB(A) less the 20 of a shut door is over 60, where sounds are lost; what is taught there is the systolic by feel.
test('where a shut door does not make it quiet, the noise is told by a systolic taken by feel', () => {
  const place = scenarioOf('noisy-bay') as Scenario;
  const of = (noiseDbA: number, taken: Taken) => {
    const visit = visited('noisy-bay', [taken]);
    return codes({ ...visit, scenario: { ...place, noiseDbA } })['noise-of-place'];
  };
  expect(of(81, { at: 5, method: 'palpation' })).toBe('reported');
  expect(of(81, { at: 5 })).toBe('not-reported');
  expect(of(80, { at: 5, method: 'palpation' })).toBe('not-reported');
});

describe('by feel', () => {
  const EAR: Taken = { at: 60 };
  const FEEL: Taken = { at: 5, method: 'palpation' };
  test.each<[string, Taken[], string]>([
    ['by ear alone', [EAR], 'not-reported'],
    ['felt for, then listened to', [{ ...EAR, felt: true }], 'reported'],
    ['one by feel, then one by ear', [FEEL, EAR], 'reported'],
    ['by feel and nothing after it', [FEEL], 'not-reported'],
    ['by ear, then one by feel', [{ at: 5 }, { ...FEEL, at: 60 }], 'not-reported'],
  ])('before listening: %s', (_, taken, is) => {
    expect(codes(visited('stiff-pipe', taken))['palpated-systolic']).toBe(is);
  });

  test('written as such: with no diastolic', () => {
    expect(codes(visited('cold-hands', [FEEL]))['by-feel']).toBe('reported');
    expect(codes(visited('cold-hands', [{ ...FEEL, wrote: [118, 70] }]))['by-feel']).toBe('not-reported');
  });
});

test('muffled is reported beside the first and the last', () => {
  const wrote = (entered: Partial<Entered>) =>
    codes(blank('playground', { actions: LET_DOWN, entered: { ...NOTHING_ENTERED, ...entered } })).muffled;
  expect(wrote({ systolic: 104, muffled: 62, diastolic: 48 })).toBe('reported');
  expect(wrote({ systolic: 104, muffled: 62 })).toBe('not-reported');
});

test('the rate at the apex is reported where it stands beside that at the wrist, and both were counted', () => {
  const count = { of: 'pulse', n: 120, windowSeconds: 60, clock: 'any', first: 1 } as const;
  const counted = { startSeconds: 3, count };
  const tapped = { startSeconds: 3, seconds: [0, 0.5, 1] };
  const found = (evidence: Partial<Evidence>, entered: Partial<Entered>) =>
    codes(
      blank('storm-of-leaves', {
        evidence: { ...NO_EVIDENCE, ...evidence },
        entered: { ...NOTHING_ENTERED, ...entered },
      }),
    )['apex-rate'];
  const both = { apexPerMinute: 140, pulsePerMinute: 112 };
  expect(found({ apex: counted }, { apexPerMinute: 140 })).toBe('not-reported');
  expect(found({ apex: counted }, both)).toBe('not-reported');
  expect(found({ apex: counted, pulse: counted }, { apexPerMinute: 140 })).toBe('not-reported');
  expect(found({ apex: counted, pulse: counted }, both)).toBe('reported');
  expect(found({ apex: counted, taps: { pulse: tapped } }, both)).toBe('reported');
});

test('who takes another gauge in place of one that is off, or leaks, has said so; in place of a sound one, not', () => {
  const swap: Action = { tick: 10, kind: 'gauge' };
  const off = instrumentFor(scenarioOf('bad-hose') as Scenario);
  const said = (instrument: typeof off, actions: readonly Action[]) =>
    codes(blank('bad-hose', { instrument, actions }))['gauge-off'];
  expect(said(off, [])).toBe('not-reported');
  expect(said(off, [swap])).toBe('reported');
  expect(said(SOUND_INSTRUMENT, [swap])).toBe('not-reported');
  // Bedside handbook 3.9 (from memory): cuff, tubes and gauge may lose 4 mmHg a minute.
  expect(said({ ...SOUND_INSTRUMENT, leakMmHgPerMinute: 12 }, [swap])).toBe('reported');
  expect(said({ ...SOUND_INSTRUMENT, leakMmHgPerMinute: 2 }, [swap])).toBe('not-reported');
  expect(said({ ...SOUND_INSTRUMENT, zeroOffsetMmHg: 6 }, [swap])).toBe('reported');
});
