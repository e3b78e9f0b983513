import { parseRun } from '@evenfall/clinical';
import {
  MODEL,
  PROPER,
  REPORTS,
  SCENARIOS,
  type Scenario,
  SOUND_INSTRUMENT,
  scenarioOf,
} from '@evenfall/physiology';
import { expect, test } from 'vitest';
import { EXERCISE_SCHEMA, type Exercise, NO_EVIDENCE, NOTHING_ENTERED } from './exercise.js';
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
  Object.fromEntries(reportedOf(exercise).map(({ code, is }) => [code, is]));

// The issue asks it of every person of the book: truth, lesson, what a good observer should report.
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
  expect(codes(blank('open-gate', { evidence, entered }))).toEqual({
    muffled: 'reported',
    'sounds-to-zero': 'reported',
    'pulse-strong': 'not-reported',
  });
  expect(codes(blank('stiff-pipe', { evidence, entered }))).toMatchObject({
    'palpated-systolic': 'reported',
    gap: 'not-here',
  });
});

test('an exercise kept before the book said so is held against the book all the same', () => {
  const { report: _, ...older } = scenarioOf('two-arms') as Scenario;
  expect(codes(blank('two-arms', { scenario: older }))).toEqual({
    'both-numbers': 'not-reported',
    'other-arm': 'not-reported',
  });
  expect(reportedOf(blank('two-arms', { scenario: { ...older, title: 'Ours' } }))).toEqual([]);
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

test('who takes another gauge has said that the first was off', () => {
  expect(codes(blank('bad-hose'))['gauge-off']).toBe('not-reported');
  expect(codes(blank('bad-hose', { actions: [{ tick: 10, kind: 'gauge' }] }))['gauge-off']).toBe('reported');
});
