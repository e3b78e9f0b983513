import { DEFAULT_DEFLATION_RULES } from '@evenfall/clinical';
import type { RunPlace } from '@evenfall/record';
import { expect, test } from 'vitest';
import { AT, begun, ID, NO_PROTOCOL, NOTHING_BEFORE } from '../round/testing.js';
import { askedAgain } from './askedAgain.js';
import type { DraftRun } from './pressureDraft.js';
import { withReading } from './pressureSteps.js';
import { readRun } from './readRun.js';

const SITTING: RunPlace = {
  ...{ site: 'upper-arm', side: 'right', posture: 'sit', cuff: null, armCm: null, override: null },
};
const STANDING: RunPlace = { ...SITTING, posture: 'stand' };
const UNDER = {
  facts: { ...NOTHING_BEFORE, ageMonths: 600 },
  inForce: NO_PROTOCOL,
  program: 'evenfall test',
};

function reading(id: number, typed: string, minute: number, place = SITTING): DraftRun {
  const typedAs = { method: 'auscultation' as const, typed, fields: {}, reinflated: false };
  const around = { pulsePerMinute: null, lostMmHg: null };
  const { run } = readRun(typedAs, around, DEFAULT_DEFLATION_RULES);
  if (run === null) throw new Error(typed);
  return {
    ...{ kind: 'run', entry: ID(id), sequence: id, measuredAt: AT(minute), run, place, typedAs },
    ...{ uprightMinutes: null, inflatedAt: null, note: null },
    keptAt: { session: 's', atMs: minute * 60_000 },
  };
}

/** What is asked of numbers that are typed after others; `entry` is the reading that they put right. */
function asked(now: DraftRun, before: readonly DraftRun[] = [], entry: string | null = null) {
  const draft = before.reduce(withReading, begun());
  return askedAgain({ ...now, entry }, draft, [], UNDER).map(({ code }) => code);
}

// Limits: bedside handbook 3.9 and 3.17, and a decision; held beside `readAgain`.
test('on the guided keypad the same slips are asked about as of a typed set', () => {
  expect(asked(reading(30, '128/76', 1))).toEqual([]);
  expect(asked(reading(30, '84/50', 1))).toEqual(['read-very-low']);
  expect(asked(reading(30, '102/99', 1))).toEqual(['read-implausible']);
  expect(asked(reading(31, '118/76', 8), [reading(30, '165/98', 5)])).toEqual(['read-far-from-before']);
  expect(asked(reading(31, '128/76', 8), [reading(30, '138/84', 5)])).toEqual([]);
});

test('a very low one is asked about once, and its repeat is not', () => {
  expect(asked(reading(31, '82/50', 6), [reading(30, '84/50', 5)])).toEqual([]);
});

test('a severe one is asked about by what it asks of the person, and by nothing else', () => {
  expect(asked(reading(31, '204/118', 8), [reading(30, '140/84', 5)])).toEqual([]);
});

test('once that was answered of another one, a severe one may be a slip as well', () => {
  const codes = (typed: string, before: readonly DraftRun[]) => {
    const draft = { ...before.reduce(withReading, begun()), features: [] };
    return askedAgain({ ...reading(32, typed, 8), entry: null }, draft, [], UNDER).map(({ code }) => code);
  };
  const [severe, usual] = [reading(30, '192/124', 2), reading(31, '128/76', 5)];
  expect(codes('218/76', [severe, usual])).toEqual(['read-implausible', 'read-far-from-before']);
  expect(codes('130/78', [severe, usual])).toEqual([]);
  expect(codes('190/122', [severe])).toEqual([]);
  // What was answered was asked by this one.
  expect(codes('198/124', [usual])).toEqual([]);
});

test('what was answered of a severe one asks nothing of a later one: that is read again for itself', () => {
  const before = [reading(30, '192/124', 5)];
  expect(asked(reading(31, '84/50', 8), before)).toEqual([
    'read-very-low',
    'read-far-from-before',
    'read-diastolic-far-from-before',
  ]);
  // One that was taken after it, as where numbers were typed long ago and signed now, is none before it.
  expect(asked(reading(31, '120/80', 1), before)).toEqual([]);
});

test('a fall on the feet is what is looked for there: only another reading on the feet is held against it', () => {
  const lying = reading(30, '150/90', 5);
  expect(asked(reading(31, '104/70', 8, STANDING), [lying])).toEqual([]);
  expect(asked(reading(32, '150/80', 9, STANDING), [lying, reading(31, '104/70', 8, STANDING)])).toEqual([
    'read-far-from-before',
  ]);
  // Low on the feet is asked about all the same.
  expect(asked(reading(31, '84/50', 8, STANDING), [lying])).toEqual(['read-very-low']);
});

test('a number put right is held against what was read before it, never against itself or what came after', () => {
  const [first, second] = [reading(30, '165/98', 5), reading(31, '160/96', 8)];
  expect(asked(reading(30, '118/76', 5), [first, second], ID(30))).toEqual([]);
  expect(asked(reading(31, '118/76', 8), [first, second], ID(31))).toEqual(['read-far-from-before']);
});
