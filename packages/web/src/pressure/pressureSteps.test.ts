import {
  DEFAULT_DEFLATION_RULES,
  DEFAULT_INFLATION_RULES,
  DEFAULT_ROUND_RULES,
  NO_ROUND_FACTS,
} from '@evenfall/clinical';
import { expect, test } from 'vitest';
import { AT, begun, ID } from '../round/testing.js';
import { isToBegin } from './postureWait.js';
import { type DraftRun, feltHere, knownAt, reopenedReading, restsOn } from './pressureDraft.js';
import {
  blankReading,
  displayAmong,
  secondsToWait,
  suggestedPlace,
  withFelt,
  withGauge,
  withLying,
  withLyingStopped,
  withNextReading,
  withoutReading,
  withPlace,
  withPressureNotDone,
  withReading,
  withReadingChanged,
  withReadingReopened,
  withStandingStopped,
  withUpright,
  withUprightStopped,
} from './pressureSteps.js';
import { aroundOf, readRun } from './readRun.js';

const PLACE = {
  site: 'upper-arm',
  side: 'right',
  posture: 'sit',
  cuff: null,
  armCm: null,
  override: null,
} as const;
/** A step says nothing of a place but what is added. */
const NOWHERE = { side: null, site: null, posture: null } as const;
const instant = (seconds: number) => ({ session: 's', atMs: seconds * 1000 });
const felt = { sequence: 3, place: PLACE, lostMmHg: 132, at: instant(10) };
const typedAs = {
  method: 'auscultation',
  typed: '148/92',
  fields: { peak: '162' },
  reinflated: false,
} as const;

function reading(sequence: number, seconds: number): DraftRun {
  const { run } = readRun(typedAs, { pulsePerMinute: null, lostMmHg: null }, DEFAULT_DEFLATION_RULES);
  if (run === null) throw new Error('148/92');
  return {
    kind: 'run',
    entry: ID(sequence),
    sequence,
    measuredAt: AT(2),
    run,
    place: PLACE,
    uprightMinutes: null,
    inflatedAt: null,
    keptAt: instant(seconds),
    typedAs,
    note: null,
  };
}

test('the pulse is felt before it is listened for, once on each arm', () => {
  expect(withPlace(begun(), PLACE, true).pressure.measuring).toEqual({ at: 'feel', typed: '' });
  expect(withPlace(begun(), PLACE, false).pressure.measuring).toEqual({ at: 'ready' });
  const once = withFelt(withPlace(begun(), PLACE, true), felt);
  expect(once.pressure.measuring).toEqual({ at: 'ready' });
  expect(withPlace(once, PLACE, true).pressure.measuring).toEqual({ at: 'ready' });
  expect(withPlace(once, { ...PLACE, side: 'left' }, true).pressure.measuring).toEqual({
    at: 'feel',
    typed: '',
  });
});

// Bedside handbook 3.4: the estimate says how far to pump; a pressure that was read on the arm says it too.
test('an arm on which a pressure was read is not felt for again, in whatever posture; the other arm is', () => {
  const read = withReading(withPlace(begun(), PLACE, true), reading(20, 100));
  expect(withPlace(read, { ...PLACE, posture: 'stand' }, true).pressure.measuring).toEqual({ at: 'ready' });
  expect(withPlace(read, { ...PLACE, side: 'left' }, true).pressure.measuring).toEqual({
    at: 'feel',
    typed: '',
  });
  expect(withPlace(read, { ...PLACE, site: 'forearm' }, true).pressure.measuring).toEqual({
    at: 'feel',
    typed: '',
  });
});

test('another posture at the arm where the cuff is goes straight on; another arm is looked at first', () => {
  const decided = { ...PLACE, override: { by: 'Dr Nobody', reason: 'the other arm is in plaster' } };
  const once = withFelt(withPlace(begun(), decided, true), { ...felt, place: decided });
  const lying = withNextReading(
    once,
    { step: 'lying', ...NOWHERE, side: 'right', posture: 'lie' },
    true,
  ).pressure;
  expect(lying.measuring).toEqual({ at: 'ready' });
  // What was felt sitting says how far to pump, and is no estimate of what is heard in another posture.
  expect(knownAt(lying, { ...decided, posture: 'lie' }).lostMmHg).toBe(felt.lostMmHg);
  expect(feltHere(lying, decided)).toBe(felt.lostMmHg);
  expect(feltHere(lying, { ...decided, posture: 'stand' })).toBeNull();
  expect(restsOn(lying, decided).isFeltHere).toBe(true);
  expect(restsOn(lying, { ...decided, posture: 'stand' })).toEqual({ isFeltHere: false, isReadHere: false });
  // Who decided on this arm decided on it lying too.
  expect(lying.place).toEqual({ ...decided, posture: 'lie' });
  const notFelt = withPlace(begun(), PLACE, false);
  const standing = { step: 'standing', ...NOWHERE, posture: 'stand' } as const;
  expect(withNextReading(notFelt, standing, true).pressure.measuring).toEqual({ at: 'feel', typed: '' });
  expect(withNextReading(notFelt, standing, false).pressure.measuring).toEqual({ at: 'ready' });
  const other = withNextReading(
    once,
    { step: 'other-arm', ...NOWHERE, side: 'left', posture: 'sit' },
    true,
  ).pressure;
  expect(other.measuring).toEqual({ at: 'place' });
  expect(other.place).toEqual({ ...PLACE, side: 'left' });
  const repeat = withNextReading(once, { step: 'repeat', ...NOWHERE }, true).pressure;
  expect([repeat.place, repeat.measuring]).toEqual([decided, { at: 'ready' }]);
  expect(withNextReading(begun(), standing, true).pressure.measuring).toEqual({ at: 'place' });
});

test('what is taken again is taken where it is asked for, wherever the cuff is', () => {
  const on = (place: DraftRun['place']) => withPlace(begun(), place, false);
  const repeat = { step: 'repeat', side: 'right', site: 'upper-arm', posture: 'lie' } as const;
  const sits = withNextReading(on(PLACE), repeat, true).pressure;
  expect([sits.place, sits.measuring]).toEqual([{ ...PLACE, posture: 'lie' }, { at: 'ready' }]);
  const decided = { ...PLACE, override: { by: 'Dr Nobody', reason: 'the other arm is in plaster' } };
  for (const elsewhere of [
    { ...decided, side: 'left' },
    { ...decided, site: 'forearm' },
  ] as const) {
    const { place, measuring } = withNextReading(on(elsewhere), repeat, false).pressure;
    expect([place, measuring]).toEqual([{ ...PLACE, posture: 'lie' }, { at: 'place' }]);
  }
});

test('who is laid down from their feet is read lying next, and stands no longer', () => {
  const up = withPlace(begun(), { ...PLACE, posture: 'stand' }, false);
  const stands = withUpright(up, { since: instant(5), at: AT(10) });
  const lying = { step: 'lying', ...NOWHERE, posture: 'lie' } as const;
  const { pressure } = withNextReading(stands, lying, false);
  expect(pressure.place).toEqual({ ...PLACE, posture: 'lie' });
  expect([pressure.upright ?? null, pressure.measuring]).toEqual([null, { at: 'ready' }]);
});

test('who lies down again for the review is read lying next, wherever the next reading is begun', () => {
  const up = withPlace(begun(), { ...PLACE, posture: 'stand' }, false);
  const stood = withReading(withUpright(up, { since: instant(5), at: AT(10) }), {
    ...reading(20, 100),
    place: { ...PLACE, posture: 'stand' },
  });
  const stopped = withStandingStopped(stood, 'lie');
  expect(stopped.pressure.measuring).toEqual({ at: 'shown', entry: ID(20) });
  expect(stopped.pressure.values[0]?.place.posture).toBe('stand');
  expect(stopped.pressure.upright ?? null).toBeNull();
  const repeat = withNextReading(stopped, { step: 'repeat', ...NOWHERE }, true).pressure;
  expect(repeat.place).toEqual({ ...PLACE, posture: 'lie' });
});

test('a slip goes back to the keypad as it was typed, or is taken out', () => {
  const taken = withReading(withPlace(begun(), PLACE, false), reading(20, 100));
  expect(taken.pressure.measuring).toEqual({ at: 'shown', entry: ID(20) });
  const reopened = { entry: ID(20), from: 'review' } as const;
  const opened = withReadingReopened(taken, reopened).pressure;
  expect(opened.values).toEqual(taken.pressure.values);
  expect(reopenedReading(opened)).toEqual(taken.pressure.values[0]);
  expect(reopenedReading(taken.pressure)).toBeNull();
  expect(opened.measuring).toEqual({
    at: 'typing',
    ...typedAs,
    measuredAt: AT(2),
    inflatedAt: null,
    reopened,
  });
  expect(withoutReading(taken, ID(20)).pressure.values).toEqual([]);
});

test('the numbers of a reading are put right in its place: neither the order of the readings nor the wait changes', () => {
  const taken = withReading(withReading(begun(), reading(20, 100)), reading(22, 170));
  const typed = { ...typedAs, typed: '138/92' };
  const { run } = readRun(typed, { pulsePerMinute: 72, lostMmHg: 110 }, DEFAULT_DEFLATION_RULES);
  if (run === null) throw new Error('138/92');
  const change = { run, typedAs: typed, uprightMinutes: null, note: 'said twice' };
  const changed = withReadingChanged(taken, ID(20), change).pressure;
  expect(changed.values).toEqual([{ ...taken.pressure.values[0], ...change }, taken.pressure.values[1]]);
  expect(changed.measuring).toEqual({ at: 'shown', entry: ID(20) });
});

test('moments that were marked in time keep their times: the gauge alone is read again', () => {
  const marks = [
    { what: 'first sound', atSeconds: 0, typed: '148' },
    { what: 'last sound', atSeconds: 19.25, typed: '92' },
  ] as const;
  const marked = {
    method: 'auscultation',
    marks,
    areTimesVoid: false,
    fields: {},
    reinflated: false,
  } as const;
  const taken = withReading(begun(), { ...reading(20, 100), typedAs: marked });
  const { measuring } = withReadingReopened(taken, { entry: ID(20), from: 'review' }).pressure;
  expect(measuring).toMatchObject({ at: 'reading', marks, chosen: 0 });
});

test('a pulse typed with the numbers of a reading goes when it is rubbed out there; any other stays', () => {
  const again = (typed: string, before: string, felt: number | null) => {
    const as = (text: string) => ({ ...typedAs, method: 'device' as const, typed: text });
    const known = { pulsePerMinute: 64, lostMmHg: null };
    const { run } = readRun(as(before), known, DEFAULT_DEFLATION_RULES);
    if (run === null) throw new Error(before);
    const around = aroundOf({ ...reading(20, 100), run, typedAs: as(before) }, felt);
    if (around === null) throw new Error('no reading');
    return readRun(as(typed), around, DEFAULT_DEFLATION_RULES).run?.pulsePerMinute;
  };
  expect(again('148/92', '148/92 76', null)).toBeNull();
  expect(again('148/92', '148/92 76', 66)).toBe(66);
  expect(again('148/90 78', '148/92 76', 66)).toBe(78);
  expect(again('148/90', '148/92', 66)).toBe(64);
});

test('a reading starts on a blank keypad: no preset', () => {
  const blank = blankReading('auscultation', { measuredAt: AT(1), inflatedAt: null });
  expect(blank).toMatchObject({ at: 'typing', typed: '', fields: {} });
});

test('not done gives up the readings, and a reading takes the reason back', () => {
  const barred = { reason: 'arm-barred', text: null } as const;
  const none = withPressureNotDone(withReading(begun(), reading(20, 100)), barred);
  expect(none.pressure).toMatchObject({ values: [], notDone: barred });
  expect(withReading(none, reading(21, 100)).pressure.notDone).toBeNull();
});

// Bedside handbook 3.4 and 3.10: 15 to 30 s after an estimate, 60 s after a reading.
test('the wait is shorter after an estimate than after a reading, and unknown across two visits', () => {
  const wait = (draft: ReturnType<typeof begun>, seconds: number, session = 's') =>
    secondsToWait(draft.pressure, { session, atMs: seconds * 1000 }, DEFAULT_INFLATION_RULES);
  expect(wait(begun(), 0)).toBe(0);
  const once = withFelt(begun(), felt);
  expect([wait(once, 10), wait(once, 24.5), wait(once, 25)]).toEqual([15, 1, 0]);
  const read = withReading(once, reading(20, 100));
  expect([wait(read, 100), wait(read, 159.2), wait(read, 160)]).toEqual([60, 1, 0]);
  expect(wait(read, 5, 'another visit')).toBeNull();
});

// Bedside handbook 3.15: an arm with a fistula is never used.
test('the arm suggested is the better one by the facts, until one was chosen', () => {
  const facts = { ...NO_ROUND_FACTS, arms: [{ kind: 'fistula', side: 'right' }] } as const;
  expect(suggestedPlace(begun().pressure, NO_ROUND_FACTS, DEFAULT_ROUND_RULES)).toMatchObject({
    side: 'right',
  });
  expect(suggestedPlace(begun().pressure, facts, DEFAULT_ROUND_RULES)).toMatchObject({ side: 'left' });
  const placed = withPlace(begun(), { ...PLACE, posture: 'lie' }, false);
  expect(suggestedPlace(placed.pressure, facts, DEFAULT_ROUND_RULES)).toMatchObject({ posture: 'lie' });
});

test('a clock since lying down goes on while they lie, on the back or on the side, and is put back like the other', () => {
  const lay = { since: instant(5), at: AT(10) };
  const down = withLying(withPlace(begun(), { ...PLACE, posture: 'lie' }, false), lay);
  const at = (draft: typeof down, posture: 'sit' | 'lie-left' | 'stand') =>
    withPlace(draft, { ...PLACE, posture }, false).pressure;
  expect(at(down, 'lie-left').lying).toEqual(lay);
  expect([at(down, 'sit').lying, at(down, 'stand').lying]).toEqual([null, null]);
  const stopped = withLyingStopped(down);
  expect(stopped.pressure).toMatchObject({ lying: null, stoppedLying: lay });
  expect(withLying(stopped, lay).pressure).toMatchObject({ lying: lay, stoppedLying: null });
  expect(at(stopped, 'stand').stoppedLying).toBeNull();
  expect(withPressureNotDone(down, { reason: 'declined', text: null }).pressure.lying).toBeNull();
});

// Bedside handbook 3.14: lie 5 min, measure, then stand.
test('lying is begun before the cuff goes up where it is the rest before standing, and only then', () => {
  const lies = { ...PLACE, posture: 'lie' } as const;
  const asked = { ...begun(), wanted: ['lying-and-standing'] as const };
  expect(isToBegin(asked, lies)).toBe(true);
  expect(isToBegin(begun(), lies)).toBe(false);
  expect(isToBegin(withLying(asked, { since: instant(5), at: AT(10) }), lies)).toBe(false);
  const taken = withReading(asked, { ...reading(20, 100), place: { ...lies, posture: 'lie-left' } });
  expect(isToBegin(taken, lies)).toBe(false);
  expect(isToBegin(begun(), { ...PLACE, posture: 'stand' })).toBe(true);
  expect(isToBegin(asked, PLACE)).toBe(false);
});

test('a clock since standing up that was stopped can be put back, until they sit or lie, or stand up anew', () => {
  const stood = { since: instant(5), at: AT(10) };
  const up = withPlace(begun(), { ...PLACE, posture: 'stand' }, false);
  const stopped = withUprightStopped(withUpright(up, stood));
  expect(stopped.pressure).toMatchObject({ upright: null, stoppedUpright: stood });
  const back = withUpright(stopped, stopped.pressure.stoppedUpright ?? null);
  expect(back.pressure).toMatchObject({ upright: stood, stoppedUpright: null });
  const anew = { since: instant(70), at: AT(11) };
  expect(withUpright(stopped, anew).pressure).toMatchObject({ upright: anew, stoppedUpright: null });
  const at = (posture: 'stand' | 'lie') => withPlace(stopped, { ...PLACE, posture }, false).pressure;
  expect(at('stand').stoppedUpright).toEqual(stood);
  expect(at('lie').stoppedUpright).toBeNull();
});

test('a reading off a display has no gauge that is listened by, and the device that was chosen for it', () => {
  const listening = withGauge(begun(), ID(70));
  const off = (gauge: string | null) => {
    const heard = reading(20, 100);
    const shown: DraftRun = { ...heard, gauge, run: { ...heard.run, method: 'device' } };
    return withReading(listening, shown).pressure.values[0]?.gauge;
  };
  expect(withReading(listening, reading(20, 100)).pressure.values[0]?.gauge).toBe(ID(70));
  expect(off(null)).toBeNull();
  expect(off(ID(71))).toBe(ID(71));
  const gauges = [
    { id: ID(70), named: { type: 'aneroid' as const } },
    { id: ID(71), named: { type: 'automatic' as const } },
  ];
  expect([ID(70), ID(71), null].map((chosen) => displayAmong(gauges, chosen))).toEqual([null, ID(71), null]);
});
