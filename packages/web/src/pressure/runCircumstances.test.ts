import { DEFAULT_DEFLATION_RULES, DEFAULT_INFLATION_RULES } from '@evenfall/clinical';
import { expect, test } from 'vitest';
import type { RoundDraft } from '../round/draft.js';
import { runContentOf } from '../round/entries.js';
import { standingOf } from '../round/standing.js';
import { AT, begun, ID, NO_PROTOCOL, NOTHING_BEFORE } from '../round/testing.js';
import type { DraftRun } from './pressureDraft.js';
import { secondsToWait, withFelt, withPlace, withReading } from './pressureSteps.js';
import { readRun } from './readRun.js';
import { isAskedAtOnce, previousInflation } from './runCircumstances.js';

const RIGHT = {
  site: 'upper-arm',
  side: 'right',
  posture: 'sit',
  cuff: null,
  armCm: null,
  override: null,
} as const;
const LEFT = { ...RIGHT, side: 'left' } as const;
const UNDER = { facts: NOTHING_BEFORE, inForce: NO_PROTOCOL };
const at = (seconds: number) => ({ session: 's', atMs: seconds * 1000 });

function taken(
  sequence: number,
  place: DraftRun['place'],
  { up, kept }: { readonly up: number; readonly kept: number },
  typed = '148/92',
): DraftRun {
  const typedAs = { method: 'auscultation', typed, fields: {}, reinflated: false } as const;
  const { run } = readRun(typedAs, { pulsePerMinute: null, lostMmHg: null }, DEFAULT_DEFLATION_RULES);
  if (run === null) throw new Error(typed);
  return {
    kind: 'run',
    entry: ID(sequence),
    sequence,
    measuredAt: AT(2),
    run,
    place,
    uprightMinutes: null,
    inflatedAt: at(up),
    keptAt: at(kept),
    typedAs,
    note: null,
  };
}

// Bedside handbook 3.10: under 30 s is too short for the blood that a cuff holds back in its arm; 60 s by default.
test('an arm is measured from when its own cuff was let go, not from the other one', () => {
  const first = taken(10, RIGHT, { up: 0, kept: 40 });
  const other = taken(11, LEFT, { up: 69, kept: 110 });
  const back = taken(12, { ...RIGHT, posture: 'stand' }, { up: 120, kept: 160 });
  const draft = [first, other, back].reduce(withReading, begun());
  const before = (one: DraftRun, of = draft) => previousInflation(of, one);
  expect(before(first)).toBeNull();
  expect(before(other)).toBeNull();
  expect(before(back)).toEqual({ was: 'reading', secondsSinceRelease: 80, isNextAtOnce: null });
  const forearm = taken(13, { ...LEFT, site: 'forearm' }, { up: 139, kept: 170 });
  expect(before(forearm, withReading(draft, forearm))).toEqual({
    was: 'reading',
    secondsSinceRelease: 29,
    isNextAtOnce: null,
  });
  const thigh = taken(14, { ...LEFT, site: 'thigh' }, { up: 180, kept: 200 });
  expect(before(thigh, withReading(draft, thigh))).toBeNull();
});

test('nobody waits for the other arm', () => {
  const draft = withReading(withPlace(begun(), RIGHT, false), taken(10, RIGHT, { up: 0, kept: 40 }));
  const wait = (place: DraftRun['place']) =>
    secondsToWait({ ...draft.pressure, place }, at(69), DEFAULT_INFLATION_RULES);
  expect(wait(RIGHT)).toBe(31);
  expect(wait(LEFT)).toBe(0);
});

/** A reading as it is begun on a draft: whether it is asked for at once is what stands there then. */
function begunOn(draft: RoundDraft, value: DraftRun): RoundDraft {
  const { nextPressure } = standingOf(draft, { ...UNDER, program: 'evenfall test' });
  const isAtOnce = isAskedAtOnce(draft, nextPressure, UNDER);
  const inflatedAt = value.inflatedAt === null ? null : { ...value.inflatedAt, isAtOnce };
  return withReading(draft, { ...value, inflatedAt });
}

const codesOf = (draft: RoundDraft) =>
  runContentOf(draft, draft.pressure.values.at(-1) as DraftRun, {
    ...UNDER,
    program: 'evenfall test',
  }).value.flags.map(({ code }) => code);

// Bedside handbook 3.15: very low or unwell is repeated at once, by hand, without a wait (common practice).
test('a reading that was asked for at once did not come too soon', () => {
  const after = (typed: string, more: Partial<RoundDraft> = {}) =>
    [taken(10, RIGHT, { up: 0, kept: 40 }, typed), taken(11, RIGHT, { up: 43, kept: 80 })].reduce(begunOn, {
      ...begun(),
      ...more,
    });
  expect(codesOf(after('148/92'))).toContain('too-soon');
  expect(codesOf(after('88/52'))).not.toContain('too-soon');
  expect(codesOf(after('148/92', { unwell: true }))).not.toContain('too-soon');
});

test('what is said of the person after it changes nothing of how a reading was asked for', () => {
  const [first, again] = [taken(10, RIGHT, { up: 0, kept: 40 }), taken(11, RIGHT, { up: 43, kept: 80 })];
  const soon = [first, again].reduce(begunOn, begun());
  expect(codesOf({ ...soon, unwell: true })).toContain('too-soon');
  expect(codesOf({ ...soon, features: ['chest-or-back-pain'] })).toContain('too-soon');
  const atOnce = [first, again].reduce(begunOn, { ...begun(), unwell: true });
  expect(codesOf({ ...atOnce, unwell: false })).not.toContain('too-soon');
});

test('lying after the feet is asked for at once, whatever the last reading on them was', () => {
  const stands = { ...RIGHT, posture: 'stand' } as const;
  const draft = [
    taken(10, stands, { up: 0, kept: 40 }, '84/52'),
    taken(11, stands, { up: 140, kept: 180 }, '112/70'),
  ].reduce(begunOn, begun());
  const lies = begunOn(draft, taken(12, { ...RIGHT, posture: 'lie' }, { up: 190, kept: 220 }));
  expect(previousInflation(lies, lies.pressure.values.at(-1) as DraftRun)).toMatchObject({
    isNextAtOnce: true,
  });
});

test('what was felt for between the two does not bring the wait back', () => {
  const low = begunOn(begun(), taken(10, RIGHT, { up: 0, kept: 40 }, '88/52'));
  const felt = withFelt(low, { sequence: 11, place: RIGHT, lostMmHg: 90, at: at(50) });
  const again = begunOn(felt, taken(12, RIGHT, { up: 53, kept: 80 }, '86/50'));
  expect(previousInflation(again, again.pressure.values.at(-1) as DraftRun)).toEqual({
    was: 'estimate',
    secondsSinceRelease: 3,
    isNextAtOnce: true,
  });
});
