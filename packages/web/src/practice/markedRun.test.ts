import { DEFAULT_DEFLATION_RULES } from '@evenfall/clinical';
import type { Action } from '@evenfall/physiology';
import { expect, test } from 'vitest';
import { type ReadingBack, readMarks, withMark } from '../pressure/marks.js';
import type { PressureAt } from '../pressure/pressureDraft.js';
import { AT } from '../round/testing.js';
import { begunReading, wasFingerOn, withTouch } from './markedRun.js';

const RUN = { wentUpSeconds: 20, peakSeconds: 40 };
const FINGER: readonly Action[] = [
  { tick: 15 * 200, kind: 'finger', isOn: true },
  { tick: 60 * 200, kind: 'finger', isOn: false },
];
const AROUND = { pulsePerMinute: null, lostMmHg: null };

function readBack(at: PressureAt): ReadingBack {
  if (at.at !== 'reading') throw new Error(at.at);
  return at;
}

/** The run as it is kept, with the gauge read back for its moments by name. */
function runOf(at: PressureAt, gauge: Readonly<Record<string, string>>) {
  const read = readBack(at).marks.reduce(
    (was, { what }, place) => withMark(was, place, { typed: gauge[what] ?? '' }),
    readBack(at),
  );
  const { run, wrong } = readMarks(read, AROUND, DEFAULT_DEFLATION_RULES);
  if (run === null) throw new Error(JSON.stringify([...wrong]));
  return run;
}

test('three touches while listening are first sound, muffled and last sound, each with its time since the valve was opened', () => {
  const reading = begunReading('auscultation', [46.5, 70, 95.25], RUN, [], AT(1));
  const run = runOf(reading, { 'first sound': '118', muffled: '62', 'last sound': '0' });
  expect(run).toMatchObject({ method: 'auscultation', peak: null });
  expect(run.moments).toEqual([
    { what: 'first sound', mmHg: 118, atSeconds: 6.5 },
    { what: 'muffled', mmHg: 62, atSeconds: 30 },
    { what: 'last sound', mmHg: 0, atSeconds: 55.25 },
  ]);
  expect(
    runOf(reading, { peak: '150', 'first sound': '118', muffled: '62', 'last sound': '0' }).peak,
  ).toEqual({
    mmHg: 150,
    atSeconds: 0,
  });
});

test('two touches are the two sounds, one the first; the other has a place without a time', () => {
  const two = runOf(begunReading('auscultation', [46, 70], RUN, [], AT(1)), {
    'first sound': '148',
    'last sound': '92',
  });
  expect(two.moments.map(({ what, atSeconds }) => [what, atSeconds])).toEqual([
    ['first sound', 6],
    ['last sound', 30],
  ]);
  const one = runOf(begunReading('auscultation', [46], RUN, [], AT(1)), {
    'first sound': '148',
    'last sound': '92',
  });
  expect(one.moments.map(({ atSeconds }) => atSeconds)).toEqual([6, null]);
});

test('nothing touched in this run: it was listened and remembered, and the keypad is blank', () => {
  for (const marks of [[], [12, 18]])
    expect(begunReading('auscultation', marks, RUN, [], AT(1))).toMatchObject({
      at: 'typing',
      method: 'auscultation',
      typed: '',
      fields: {},
    });
  expect(begunReading('palpation', [50], { wentUpSeconds: null, peakSeconds: null }, [], AT(1)).at).toBe(
    'typing',
  );
});

test('by feel: where the pulse was lost on the way up, and where it came back', () => {
  const run = runOf(begunReading('palpation', [33, 52], RUN, FINGER, AT(1)), {
    'pulse lost': '124',
    'pulse back': '118',
    peak: '150',
  });
  expect(run).toMatchObject({
    method: 'palpation',
    palpated: { lostMmHg: 124 },
    moments: [{ what: 'pulse back', mmHg: 118, atSeconds: 12 }],
  });
});

test('by ear the pulse that was lost under the finger is the estimate of this run; without a finger nothing was lost', () => {
  const gauge = { 'pulse lost': '124', 'first sound': '118', 'last sound': '76' };
  const run = runOf(begunReading('auscultation', [33, 52, 80], RUN, FINGER, AT(1)), gauge);
  expect(run.palpated.lostMmHg).toBe(124);
  expect(run.moments).toHaveLength(2);
  const bare = runOf(begunReading('auscultation', [33, 52, 80], RUN, [], AT(1)), gauge);
  expect(bare.palpated.lostMmHg).toBeNull();
  expect(bare.moments).toEqual(run.moments);
});

test('a touch that bounced is none', () => {
  const once = withTouch([], 46);
  expect(withTouch(once, 46.1)).toBe(once);
  expect(withTouch(once, 46.2)).toEqual([46, 46.2]);
});

test('a finger lay on the wrist between two seconds, or did not', () => {
  expect(wasFingerOn(FINGER, 20, 40)).toBe(true);
  expect(wasFingerOn(FINGER, 0, 15)).toBe(true);
  expect(wasFingerOn(FINGER, 0, 14)).toBe(false);
  expect(wasFingerOn(FINGER, 61, 90)).toBe(false);
  expect(wasFingerOn(FINGER, 59, 90)).toBe(true);
});
