import { DEFAULT_DEFLATION_RULES } from '@evenfall/clinical';
import { expect, test } from 'vitest';
import type { DraftRun, PressureAt } from '../pressure/pressureDraft.js';
import { blankReading, withPressureAt, withReading, withReadingReopened } from '../pressure/pressureSteps.js';
import { readRun } from '../pressure/readRun.js';
import { type RoundDraft, withMeasuring, withNumberChanged, withNumberReopened } from './draft.js';
import { AT, begun, complete, ID } from './testing.js';
import { unkeptNumbers } from './unkept.js';

const START = { windowSeconds: 15, clock: 'any', first: 1 } as const;
const typing = (typed: string) => ({ at: 'typing', start: START, measuredAt: AT(2), typed }) as const;
const TYPED = {
  method: 'auscultation',
  typed: '148/92',
  fields: { peak: '176' },
  reinflated: false,
} as const;

function withPressure(): RoundDraft {
  const { run } = readRun(TYPED, { pulsePerMinute: 76, lostMmHg: null }, DEFAULT_DEFLATION_RULES);
  if (run === null) throw new Error('148/92');
  const reading: DraftRun = {
    kind: 'run',
    entry: ID(30),
    sequence: 30,
    measuredAt: AT(2),
    run,
    place: { site: 'upper-arm', side: 'right', posture: 'sit', cuff: null, armCm: null, override: null },
    uprightMinutes: null,
    inflatedAt: null,
    keptAt: { session: 's', atMs: 0 },
    typedAs: TYPED,
    note: null,
  };
  return withReading(begun(), reading);
}

test('a count that was typed and not kept is known; a blank keypad is nothing typed', () => {
  expect(unkeptNumbers(complete())).toEqual([]);
  expect(unkeptNumbers(withMeasuring(complete(), 'pulse', typing('')))).toEqual([]);
  expect(unkeptNumbers(withMeasuring(complete(), 'breaths', typing('17')))).toEqual(['breaths']);
});

test('a count opened again is unkept once another number stands there, and kept with it', () => {
  const open = withNumberReopened(complete(), 'pulse', { entry: ID(20), from: 'review' });
  expect(unkeptNumbers(open)).toEqual([]);
  const { measuring } = open.pulse;
  if (measuring.at !== 'typing') throw new Error(measuring.at);
  const changed = withMeasuring(open, 'pulse', { ...measuring, typed: '21' });
  expect(unkeptNumbers(changed)).toEqual(['pulse']);
  const kept = withNumberChanged(changed, 'pulse', ID(20), { of: 'pulse', ...START, n: 21 });
  expect(unkeptNumbers(kept)).toEqual([]);
});

test('a pressure typed anew, or opened again and changed in any field, is unkept', () => {
  const draft = withPressure();
  const blank = blankReading('auscultation', { measuredAt: AT(3), inflatedAt: null }) as Extract<
    PressureAt,
    { at: 'typing' }
  >;
  const at = (measuring: PressureAt) => unkeptNumbers(withPressureAt(draft, measuring));
  expect(at(blank)).toEqual([]);
  expect(at({ ...blank, fields: { uprightMinutes: '1.2' } })).toEqual([]);
  expect(at({ ...blank, typed: '1' })).toEqual(['pressure']);
  expect(at({ ...blank, fields: { note: 'talking' } })).toEqual(['pressure']);

  const open = withReadingReopened(draft, { entry: ID(30), from: 'review' });
  expect(unkeptNumbers(open)).toEqual([]);
  const { measuring } = open.pressure;
  if (measuring.at !== 'typing') throw new Error(measuring.at);
  expect(at({ ...measuring, typed: '146/92' })).toEqual(['pressure']);
  expect(at({ ...measuring, fields: {} })).toEqual(['pressure']);
  expect(at({ ...measuring, fields: { peak: '176', note: ' ' } })).toEqual([]);
  expect(at({ ...measuring, reinflated: true })).toEqual(['pressure']);
});

test('a run marked in time is unkept until its gauge is read back and kept', () => {
  const marks = [{ what: 'first sound', atSeconds: 0, typed: '' }] as const;
  const reading = {
    at: 'reading',
    method: 'auscultation',
    marks,
    areTimesVoid: false,
    fields: {},
    reinflated: false,
    measuredAt: AT(3),
    inflatedAt: null,
    chosen: 0,
  } as const;
  expect(unkeptNumbers(withPressureAt(begun(), reading))).toEqual(['pressure']);
});
