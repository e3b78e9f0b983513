import { DEFAULT_DEFLATION_RULES, DEFAULT_INFLATION_RULES } from '@evenfall/clinical';
import { expect, test } from 'vitest';
import type { RoundDraft } from '../round/draft.js';
import { runContentOf } from '../round/entries.js';
import { AT, begun, ID, NO_PROTOCOL, NOTHING_BEFORE } from '../round/testing.js';
import type { DraftRun } from './pressureDraft.js';
import { secondsToWait, withFelt, withPlace, withReading } from './pressureSteps.js';
import { readRun } from './readRun.js';
import { previousInflation } from './runCircumstances.js';

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
  const before = (one: DraftRun, of = draft) => previousInflation(of, one, UNDER);
  expect(before(first)).toBeNull();
  expect(before(other)).toBeNull();
  expect(before(back)).toEqual({ was: 'reading', secondsSinceRelease: 80, isNextAtOnce: false });
  const forearm = taken(13, { ...LEFT, site: 'forearm' }, { up: 139, kept: 170 });
  expect(before(forearm, withReading(draft, forearm))).toEqual({
    was: 'reading',
    secondsSinceRelease: 29,
    isNextAtOnce: false,
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

// Bedside handbook 3.15: very low or unwell is repeated at once, by hand, without a wait (common practice).
test('a reading that was asked for at once did not come too soon', () => {
  const codesAfter = (typed: string, more: Partial<RoundDraft> = {}) => {
    const [first, again] = [
      taken(10, RIGHT, { up: 0, kept: 40 }, typed),
      taken(11, RIGHT, { up: 43, kept: 80 }),
    ];
    const draft = [first, again].reduce(withReading, { ...begun(), ...more });
    const { value } = runContentOf(draft, again, { ...UNDER, program: 'evenfall test' });
    return value.flags.map(({ code }) => code);
  };
  expect(codesAfter('148/92')).toContain('too-soon');
  expect(codesAfter('88/52')).not.toContain('too-soon');
  expect(codesAfter('148/92', { unwell: true })).not.toContain('too-soon');
});

test('what was felt for between the two does not bring the wait back', () => {
  const low = taken(10, RIGHT, { up: 0, kept: 40 }, '88/52');
  const felt = withFelt(withReading(begun(), low), { sequence: 11, place: RIGHT, lostMmHg: 90, at: at(50) });
  const again = taken(12, RIGHT, { up: 53, kept: 80 }, '86/50');
  expect(previousInflation(withReading(felt, again), again, UNDER)).toEqual({
    was: 'estimate',
    secondsSinceRelease: 3,
    isNextAtOnce: true,
  });
});
