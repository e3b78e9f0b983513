import { expect, test } from 'vitest';
import { type DraftRun, NO_PRESSURE } from '../pressure/pressureDraft.js';
import { readRun } from '../pressure/readRun.js';
import { begunAlarm } from './begunAlarm.js';
import { type RoundDraft, withValue } from './draft.js';
import { AT, begun, counted, ID, NO_PROTOCOL, NOTHING_BEFORE } from './testing.js';

const UNDER = {
  facts: { ...NOTHING_BEFORE, ageMonths: 600, round: { ...NOTHING_BEFORE.round, ageMonths: 600 } },
  inForce: NO_PROTOCOL,
  program: 'evenfall 0.0.0',
};

/** A round under way in which these were read by ear. */
function taken(...pressures: readonly string[]): RoundDraft {
  const place = { site: 'upper-arm', side: 'right', posture: 'sit', cuff: null, armCm: null } as const;
  const values = pressures.map((typed, at): DraftRun => {
    const typedAs = { method: 'auscultation', typed, fields: {}, reinflated: false } as const;
    const around = { pulsePerMinute: null, lostMmHg: null };
    const { run } = readRun(typedAs, around, NO_PROTOCOL.runRules.deflation);
    if (run === null) throw new Error(typed);
    return {
      kind: 'run',
      entry: ID(30 + at),
      sequence: 30 + at,
      measuredAt: AT(2),
      run,
      place: { ...place, override: null },
      uprightMinutes: null,
      inflatedAt: null,
      keptAt: { session: 's', atMs: at * 60_000 },
      typedAs,
      note: null,
    };
  });
  return { ...begun(), pressure: { ...NO_PRESSURE, values } };
}

test('nothing is alarmed by a round in which nothing is severe, very low or acted on at once', () => {
  expect(begunAlarm(begun(), UNDER)).toBeNull();
  expect(begunAlarm(taken('128/76'), UNDER)).toBeNull();
  expect(begunAlarm(taken('158/96'), UNDER)).toBeNull();
});

// Bedside handbook 3.16: from 180 or 120 on the emergency features are asked; until then no condition is known to hold.
test('a severe reading alarms before anybody signed, and says that its questions are open', () => {
  expect(begunAlarm(taken('182/122'), UNDER)).toEqual({
    pressures: ['182/122'],
    condition: null,
    others: 0,
    isUnasked: true,
    recheck: 'recheck-severe',
  });
  const asked = { ...taken('182/122'), features: ['fit'], isPregnant: false } as const;
  expect(begunAlarm(asked, UNDER)).toMatchObject({ condition: 'severe-with-fit', isUnasked: false });
});

// Bedside handbook 3.15 and 5.2: 90 or under is very low, and looked at again at once.
test('a very low one alarms too, by its most urgent condition, with every reading of its round', () => {
  expect(begunAlarm(taken('84/50', '86/52'), UNDER)).toMatchObject({
    pressures: ['84/50', '86/52'],
    condition: 'very-low-pressure',
    recheck: 'recheck-at-once',
  });
});

test('a pulse that is acted on at once alarms without a pressure', () => {
  const draft = withValue(begun(), 'pulse', counted(20, 'pulse', 150, 60));
  expect(begunAlarm(draft, UNDER)).toMatchObject({ pressures: [], condition: 'very-fast-pulse' });
});
