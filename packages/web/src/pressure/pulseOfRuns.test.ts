import { DEFAULT_DEFLATION_RULES } from '@evenfall/clinical';
import { expect, test } from 'vitest';
import { type RoundDraft, withNumberChanged, withoutValue, withValue } from '../round/draft.js';
import { putBack, valueRemoved } from '../round/slip.js';
import { AT, begun, counted, ID, NO_PROTOCOL } from '../round/testing.js';
import type { DraftRun } from './pressureDraft.js';
import { withReading } from './pressureSteps.js';
import { pulseFor, toCome, withPulseOfRuns } from './pulseOfRuns.js';
import { readRun } from './readRun.js';

const PLACE = {
  site: 'upper-arm',
  side: 'right',
  posture: 'sit',
  cuff: null,
  armCm: null,
  override: null,
} as const;
const count = (n: number) => ({ of: 'pulse', n, windowSeconds: 15, clock: 'any', first: 1 }) as const;

function reading(
  pulsePerMinute: number | null,
  pulseOf: string | null | undefined,
  method: 'auscultation' | 'device' = 'auscultation',
): DraftRun {
  const typedAs = { method, typed: '148/92', fields: {}, reinflated: false };
  const { run } = readRun(typedAs, { pulsePerMinute, lostMmHg: null }, DEFAULT_DEFLATION_RULES);
  if (run === null) throw new Error('148/92');
  return {
    kind: 'run',
    entry: ID(30),
    sequence: 30,
    measuredAt: AT(2),
    run,
    place: PLACE,
    uprightMinutes: null,
    inflatedAt: null,
    keptAt: { session: 's', atMs: 0 },
    ...(pulseOf === undefined ? {} : { pulseOf }),
    typedAs,
    note: null,
  };
}
const with19 = (...values: DraftRun[]): RoundDraft =>
  values.reduce(withReading, withValue(begun(), 'pulse', counted(20, 'pulse', 19, 15)));
const pulses = (draft: RoundDraft) =>
  withPulseOfRuns(draft, NO_PROTOCOL).pressure.values.map(({ run }) => run.pulsePerMinute);

// Bedside handbook 1.3 (derived): 19 in 15 s is 76 a minute, 18 is 72, 17 is 68.
test('a pulse put right stands in every reading that went by it, a display among them, and in no other', () => {
  const draft = with19(
    reading(76, ID(20)),
    reading(76, ID(20), 'device'),
    reading(76, null, 'device'),
    reading(76, null),
    reading(80, undefined),
  );
  expect(pulses(draft)).toEqual([76, 76, 76, 76, 80]);
  expect(pulses(withNumberChanged(draft, 'pulse', ID(20), count(18)))).toEqual([72, 72, 76, 76, 80]);
});

test('a pulse taken out leaves the one that the round has in its place, or none, and comes back with it', () => {
  const draft = with19(reading(76, ID(20)));
  const out = valueRemoved(draft, 'pulse', ID(20));
  expect(pulses(out)).toEqual([null]);
  expect(pulses(withValue(out, 'pulse', counted(22, 'pulse', 17, 15)))).toEqual([68]);
  expect(pulses(putBack(withPulseOfRuns(out, NO_PROTOCOL)))).toEqual([76]);
});

test('a pulse counted anew is of what comes after it, and not of the readings before', () => {
  const anew = withValue(with19(reading(76, ID(20))), 'pulse', counted(22, 'pulse', 17, 15));
  const standing = withReading(anew, { ...reading(68, ID(22)), entry: ID(31) });
  expect(pulses(standing)).toEqual([76, 68]);
  expect(pulses(withoutValue(standing, 'pulse', ID(22)))).toEqual([76, 76]);
});

test('a pulse taken out leaves no reading with one that was counted after it, nor with one of another posture', () => {
  const at = (sequence: number, posture: 'lie' | 'stand', pulse: number, pulseOf: number): DraftRun => ({
    ...reading(pulse, ID(pulseOf)),
    entry: ID(sequence),
    sequence,
    place: { ...PLACE, posture },
  });
  const lying = with19(at(21, 'lie', 76, 20));
  const onFeet = withReading(
    withValue(lying, 'pulse', counted(22, 'pulse', 25, 15)),
    at(23, 'stand', 100, 22),
  );
  expect(pulses(onFeet)).toEqual([76, 100]);
  expect(pulses(withoutValue(onFeet, 'pulse', ID(20)))).toEqual([null, 100]);
  expect(pulses(withoutValue(onFeet, 'pulse', ID(22)))).toEqual([76, null]);
  // Counted twice while lying: the other count is still one of the same posture.
  const twice = withReading(
    withValue(with19(), 'pulse', counted(21, 'pulse', 17, 15)),
    at(22, 'lie', 68, 21),
  );
  expect(pulses(withoutValue(twice, 'pulse', ID(21)))).toEqual([76]);
});

// Bedside handbook 3.14: pressure and pulse are measured in each posture.
test('a reading to come goes by the last pulse of its posture: none, where none was counted since the one before it', () => {
  const lies = { ...PLACE, posture: 'lie' } as const;
  const stands = { ...PLACE, posture: 'stand' } as const;
  const to = (draft: RoundDraft, place: DraftRun['place']) => pulseFor(draft, toCome(place), NO_PROTOCOL);
  expect([to(begun(), lies), to(with19(), lies), to(with19(), stands)]).toEqual([null, 76, 76]);
  const lain = with19({ ...reading(76, ID(20)), entry: ID(21), sequence: 21, place: lies });
  expect([to(lain, lies), to(lain, { ...lies, side: 'left' }), to(lain, stands)]).toEqual([76, 76, null]);
  const anew = withValue(lain, 'pulse', counted(22, 'pulse', 25, 15));
  expect([to(anew, stands), to(anew, lies)]).toEqual([100, 100]);
  const stood = withReading(anew, { ...reading(100, ID(22)), entry: ID(23), sequence: 23, place: stands });
  expect([to(stood, stands), to(stood, PLACE)]).toEqual([100, null]);
});

test('a round of which nothing changes is the very same', () => {
  const draft = with19(reading(76, ID(20)));
  expect(withPulseOfRuns(draft, NO_PROTOCOL)).toBe(draft);
});
