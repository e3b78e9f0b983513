import type { Refusal } from '@evenfall/clinical';
import { chartRun, chartSign, KINDS, type RunPlace, readEntry, type StoredEntry } from '@evenfall/record';
import { USUAL_MANNER, wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { stampOfLocal } from '../ports/stampAt.js';
import { readRun } from '../pressure/readRun.js';
import { entriesOf } from '../round/entries.js';
import { AT, complete, ID, NO_PROTOCOL, SIGNED } from '../round/testing.js';
import {
  type AmendFields,
  amendedContent,
  canCorrectCount,
  changeTyped,
  numbersOf,
  PER_MINUTE,
  readAmendment,
  reasonsFor,
} from './amendForm.js';
import { cuffsFor } from './amendPlace.js';

const frames = entriesOf(complete(), SIGNED);
/** 19 beats in 15 s, as kept. */
const pulse = { ...frames[0], recordedAt: '2026-03-05T09:06:00Z' } as unknown as StoredEntry;

const BLANK: AmendFields = {
  what: '',
  n: '',
  unit: '',
  side: '',
  cuff: '',
  unwellUpright: '',
  uprightMinutes: '',
  site: '',
  perMinute: '',
  time: '',
  reason: '',
  text: '',
};
const CLOCK = {
  now: AT(9),
  stampOf: (typed: string) => stampOfLocal(typed, 'Europe/Lisbon', () => 0),
  birthDate: '1950-12-31',
  ageMonths: 902,
  manner: USUAL_MANNER,
};
const amend = (fields: Partial<AmendFields>) =>
  readAmendment(pulse, { ...BLANK, ...fields }, NO_PROTOCOL, CLOCK);
const under = { inForce: NO_PROTOCOL, program: 'evenfall test' };

test('a mistyped count is put right and its value made anew from it', () => {
  const { amendment } = amend({ what: 'count', n: '18', reason: 'typing-slip' });
  if (amendment === null) throw new Error('refused');
  const { kind, content } = amendedContent(pulse, amendment, under);
  expect(kind).toBe('count');
  // 60 n / W: 18 in 15 s is 72 a minute (docs/conventions.md section 5).
  expect(content).toMatchObject({
    evidence: { count: { n: 18, windowSeconds: 15 } },
    value: { perMinute: 72 },
    override: null,
  });
});

test('a rate set by hand stands beside the evidence, which stays', () => {
  const { amendment } = amend({
    what: 'by-hand',
    perMinute: '80',
    text: 'counted by a second observer',
    reason: 'equipment-fault',
  });
  if (amendment === null) throw new Error('refused');
  expect(amendedContent(pulse, amendment, under).content).toMatchObject({
    evidence: { count: { n: 19 } },
    value: { perMinute: 76 },
    override: { perMinute: 80, reason: 'counted by a second observer' },
  });
});

// Common practice, no source: a number of somebody else is struck out, and no other number stands in its place.
test('of another person, or there twice, it is taken out and never gets another number', () => {
  for (const reason of ['wrong-person', 'duplicate']) {
    const { amendment, wrong } = amend({ what: 'count', n: '18', reason });
    expect([amendment, wrong]).toEqual([null, { what: 'whatInError' }]);
    expect(amend({ what: 'in-error', reason }).amendment).toMatchObject({ change: { what: 'in-error' } });
    expect(amend({ what: 'as-was', reason }).wrong).toEqual({});
  }
  expect(amend({ what: 'count', n: '18', reason: 'typing-slip' }).wrong).toEqual({});
});

test('every amendment is an entry that the record accepts', () => {
  for (const fields of [
    { what: 'count', n: '18', reason: 'typing-slip' },
    { what: 'by-hand', perMinute: '80', reason: 'other', text: 'recounted' },
    { what: 'in-error', reason: 'wrong-person' },
  ]) {
    const { amendment } = amend(fields);
    if (amendment === null) throw new Error('refused');
    const { recordedAt: _kept, ...frame } = pulse as StoredEntry & Record<string, unknown>;
    const amended = amendedContent(pulse, amendment, under);
    const schema = KINDS[amended.kind].newest;
    const entry = { ...frame, id: ID(60), amends: amendment.amends, ...amended, schema };
    expect(readEntry(entry)).toMatchObject({ ok: true });
  }
});

test('what was marked as an error by mistake can stand again as it was, also with its rate by hand', () => {
  const override = { perMinute: 80, reason: 'counted by a second observer' };
  const byHand = { ...pulse, content: { ...pulse.content, override } } as StoredEntry;
  for (const fields of [{ what: 'as-was' }, { what: 'time', time: '2026-03-04T08:15' }]) {
    const { amendment } = amend({ ...fields, reason: 'wrong-time' });
    if (amendment === null) throw new Error('refused');
    expect(amendedContent(byHand, amendment, under)).toMatchObject({ kind: 'count', content: { override } });
  }
});

test.each([
  [{}, { what: 'whatMissing', reason: 'reasonMissing' }],
  [{ what: 'count', reason: 'typing-slip' }, { n: 'numberMissing' }],
  [{ what: 'in-error', reason: 'other', text: '  ' }, { text: 'textMissing' }],
  [
    { what: 'by-hand', reason: 'equipment-fault' },
    { perMinute: [expect.objectContaining({ code: 'missing' })], text: 'byHandWhyMissing' },
  ],
  [{ what: 'by-hand', reason: 'other', perMinute: '72' }, { text: 'byHandWhyMissing' }],
])('refuses %j', (fields, wrong) => {
  expect(amend(fields)).toEqual({ amendment: null, wrong });
});

test.each([
  ['0', 'out-of-range'],
  ['0.1', null],
  ['400', null],
  ['400.1', 'out-of-range'],
  ['72,5', 'not-a-number'],
])('a rate of %s by hand: %s', (perMinute, code) => {
  // docs/conventions.md sections 5 and 9: over 400 a minute is refused; that none was counted is a count of 0.
  const { amendment, wrong } = amend({ what: 'by-hand', reason: 'equipment-fault', perMinute, text: 'x' });
  expect(amendment === null).toBe(code !== null);
  if (code === null) return;
  const [refused] = wrong.perMinute as Refusal[];
  expect(refused?.code).toBe(code);
  expect(wordsFor('en').problem(refused as Refusal).expected).toMatch(/over 0 and at most 400 a minute/);
});

test.each([
  ['1950-12-30T23:59', 'timeBeforeBirth'],
  ['1950-12-31T00:00', undefined],
])('measured at %s by somebody born on 31 December 1950: %s', (time, wrong) => {
  expect(amend({ what: 'time', time, reason: 'wrong-time' }).wrong.time).toBe(wrong);
});

test('a count that clinical refuses is refused here in its words', () => {
  const { amendment, wrong } = amend({ what: 'count', n: '101', reason: 'typing-slip' });
  // Over 400 a minute (docs/conventions.md section 5): 101 in 15 s is 404.
  expect(amendment).toBeNull();
  expect(wrong.n).toMatchObject([{ field: '/n', code: 'impossible' }]);
});

test('what was broken off can neither be put right nor given a rate by hand', () => {
  expect(canCorrectCount(pulse)).toBe(true);
  const count = {
    ...(pulse.content as { evidence: { count: object } }).evidence.count,
    interrupted: { atSeconds: 2, reason: 'other' },
  };
  const { n: _none, ...broken } = count as Record<string, unknown>;
  const voided = {
    ...pulse,
    content: { ...pulse.content, evidence: { count: broken } },
  } as unknown as StoredEntry;
  expect(canCorrectCount(voided)).toBe(false);
  const byHand = { ...BLANK, what: 'by-hand', perMinute: '70', text: 'x', reason: 'equipment-fault' };
  expect(readAmendment(voided, byHand, NO_PROTOCOL, CLOCK).wrong).toEqual({ what: 'whatMissing' });
});

test('another time of measuring moves the value and leaves its evidence; a time to come is refused', () => {
  const { amendment } = amend({ what: 'time', time: '2026-03-04T08:15', reason: 'wrong-time' });
  expect(amendment?.change).toMatchObject({
    what: 'time',
    measuredAt: { at: '2026-03-04T08:15:00.000+00:00', asEntered: '2026-03-04T08:15' },
  });
  if (amendment === null) throw new Error('refused');
  expect(amendedContent(pulse, amendment, under).content).toMatchObject({
    value: { perMinute: 76 },
    override: null,
  });
  for (const time of ['2126-03-04T08:15', '', 'yesterday']) {
    expect(amend({ what: 'time', time, reason: 'wrong-time' }).wrong).toEqual({ time: 'timeMissing' });
  }
});

const WAY = { method: 'auscultation', typed: '128/76', fields: {}, reinflated: false } as const;
const PLACE = {
  site: 'upper-arm',
  side: 'right',
  posture: 'sit',
  cuff: null,
  armCm: null,
  override: null,
} as const;

/** A pressure and a temperature, as kept. */
function taken(
  elsewhere: Partial<RunPlace> = {},
  peak: { mmHg: number; atSeconds: number | null } | null = null,
): { run: StoredEntry; warm: StoredEntry } {
  const around = { pulsePerMinute: 76, lostMmHg: 132 };
  const { run } = readRun(WAY, around, NO_PROTOCOL.runRules.deflation);
  if (run === null) throw new Error('128/76');
  const circumstances = { rhythmFelt: null, previous: null, uprightMinutes: null };
  const added = { override: null, note: null };
  const content = chartRun(
    { run: { ...run, peak }, place: { ...PLACE, ...elsewhere }, circumstances, ...added },
    NO_PROTOCOL,
    'evenfall test',
  );
  const sign = { of: 'temperature', celsius: 38.1, site: 'oral' } as const;
  const known = { ageMonths: null, feltPulsePerMinute: null, minutesSinceDrinkOrSmoke: null };
  const warm = chartSign({ sign, circumstances: known, note: null }, NO_PROTOCOL, 'evenfall test');
  return {
    run: { ...pulse, id: ID(50), kind: 'run', content } as unknown as StoredEntry,
    warm: { ...pulse, id: ID(51), kind: 'sign', content: warm } as unknown as StoredEntry,
  };
}
const amending = (entry: StoredEntry, fields: Partial<AmendFields>) =>
  readAmendment(entry, { ...BLANK, reason: 'typing-slip', ...fields }, NO_PROTOCOL, CLOCK);

test('the numbers of a pressure are put right as the trade writes them, and judged anew', () => {
  const { run } = taken();
  const { amendment } = amending(run, { what: 'numbers', n: '182/76' });
  if (amendment === null) throw new Error('refused');
  const { kind, content } = amendedContent(run, amendment, under);
  expect(kind).toBe('run');
  expect(content).toMatchObject({
    evidence: { run: { palpated: { lostMmHg: 132 } }, place: PLACE },
    value: { systolic: 182, diastolic: 76 },
    override: null,
  });
  // Bedside handbook 8, C046: 80/120 is refused.
  expect(amending(run, { what: 'numbers', n: '80/120' }).wrong.n).toMatchObject([
    { code: 'not-below-systolic' },
  ]);
  expect(amending(run, { what: 'numbers' }).wrong.n).toBe('numbersAndPulseMissing');
});

test('a unit that was typed with the numbers is refused with what can be typed there', () => {
  const { run } = taken();
  const { wrong } = amending(run, { what: 'numbers', n: '148/92 kPa' });
  expect(wrong.n).toMatchObject([{ field: '/text', expected: 'numbers-in-mmhg', got: 'kPa', choices: [] }]);
});

test('the numbers open as they stand, their pulse beside them; rubbed out it is gone, typed anew it is another', () => {
  const { run } = taken();
  expect(numbersOf(run)).toBe('128/76 76');
  const pulseOf = (n: string) => {
    const { amendment } = amending(run, { what: 'numbers', n });
    if (amendment?.change.what !== 'numbers') throw new Error(n);
    return amendment.change.run.pulsePerMinute;
  };
  expect(pulseOf('138/76 76')).toBe(76);
  expect(pulseOf('138/76')).toBeNull();
  expect(pulseOf('128/76')).toBeNull();
  expect(pulseOf('128/76 67')).toBe(67);
  // As they stand they are not put right.
  expect(amending(run, { what: 'numbers', n: ' 128/76 76 ' }).wrong.n).toBe('numbersAndPulseMissing');
  expect(numbersOf(pulse)).toBe('');
});

test('a pressure set by hand stands beside the run, which stays', () => {
  const { run } = taken();
  const byHand = { what: 'by-hand', perMinute: '138/86', text: 'sleeve under the cuff' };
  const { amendment } = amending(run, byHand);
  if (amendment === null) throw new Error('refused');
  expect(amendedContent(run, amendment, under).content).toMatchObject({
    value: { systolic: 128 },
    override: { systolic: 138, diastolic: 86, reason: 'sleeve under the cuff' },
  });
});

test('a mistyped reading of a sign is put right within what it can be', () => {
  const { warm } = taken();
  const { amendment } = amending(warm, { what: 'reading', n: '36.1' });
  if (amendment === null) throw new Error('refused');
  expect(amendedContent(warm, amendment, under)).toMatchObject({
    kind: 'sign',
    content: { evidence: { sign: { celsius: 36.1, site: 'oral' } } },
  });
  expect(amending(warm, { what: 'reading', n: '361' }).wrong.n).toMatchObject([{ code: 'out-of-range' }]);
});

// 101.3 degF are 38.5 degC, exact (UCUM 2.1); bedside handbook 4.1: 25 to 45 degC are taken, 77 to 113 degF.
test('a reading is retyped in the unit of its user, and a refusal speaks of that unit', () => {
  const { warm } = taken();
  const manner = { ...USUAL_MANNER, temperature: '[degF]' } as const;
  const retyped = (n: string) =>
    readAmendment(warm, { ...BLANK, reason: 'typing-slip', what: 'reading', n }, NO_PROTOCOL, {
      ...CLOCK,
      manner,
    });
  expect(retyped('101.3').amendment?.change).toEqual({
    what: 'reading',
    sign: { of: 'temperature', celsius: 38.5, site: 'oral' },
    typed: { value: 101.3, unit: '[degF]' },
  });
  expect(retyped('113').wrong.n).toBeUndefined();
  expect(retyped('113.1').wrong.n).toMatchObject([{ code: 'out-of-range', figures: { maximum: 113 } }]);
});

// Docs/conventions.md section 9: wrong limb or cuff is a reason of its own; bedside handbook 3.3: a cuff too small adds.
test('the other arm or another cuff is put right; what was done with it stays, and is judged by the cuff it was', () => {
  const { run } = taken();
  const { amendment } = amending(run, {
    what: 'place',
    side: 'left',
    cuff: 'adult',
    reason: 'wrong-limb-or-cuff',
  });
  if (amendment === null) throw new Error('refused');
  expect(amendedContent(run, amendment, under)).toMatchObject({
    kind: 'run',
    content: {
      evidence: { place: { ...PLACE, side: 'left', cuff: { id: 'adult' } }, run: { pulsePerMinute: 76 } },
      value: { systolic: 128, diastolic: 76 },
    },
  });
  expect(amending(run, { what: 'place', side: 'right' }).wrong).toEqual({ side: 'placeMissing' });
});

// Bedside handbook 3.2: the scheme with cuffs for children has child and adult names of its own.
test('the cuffs offered are those for such a person: a child has the cuffs for children', () => {
  const { run } = taken();
  const [childMonths, adultMonths] = [72, 902];
  expect(cuffsFor(run, NO_PROTOCOL, childMonths)).toContain('child');
  expect(cuffsFor(run, NO_PROTOCOL, adultMonths)).not.toContain('child');
  expect(cuffsFor(run, NO_PROTOCOL, null)).toEqual(cuffsFor(run, NO_PROTOCOL, adultMonths));
  const around = { ...CLOCK, ageMonths: childMonths };
  const fields = { ...BLANK, what: 'place', cuff: 'child', reason: 'wrong-limb-or-cuff' };
  const { amendment } = readAmendment(run, fields, NO_PROTOCOL, around);
  expect(amendment?.change).toMatchObject({ place: { cuff: { scheme: 'fourth-report-2004', id: 'child' } } });
  // A cuff that was named keeps its scheme.
  const named = taken({ cuff: { scheme: 'aha-2005', id: 'adult' } }).run;
  expect(cuffsFor(named, NO_PROTOCOL, childMonths)).toEqual(cuffsFor(named, NO_PROTOCOL, adultMonths));
});

test('the place where a temperature was taken is put right, and its number stays', () => {
  const { warm, run } = taken();
  const { amendment } = amending(warm, { what: 'site', site: 'tympanic', reason: 'other', text: 'by mouth' });
  if (amendment === null) throw new Error('refused');
  const { kind, content } = amendedContent(warm, amendment, under);
  expect(kind).toBe('sign');
  const { evidence } = warm.content as { evidence: { sign: object; typed: unknown } };
  expect(content).toMatchObject({
    evidence: { sign: { ...evidence.sign, site: 'tympanic' }, typed: evidence.typed },
  });
  const as = (site: string) =>
    amending(warm, { what: 'site', site, reason: 'other', text: 'by mouth' }).wrong;
  expect(as('')).toEqual({ site: 'siteMissing' });
  expect(as('oral')).toEqual({ site: 'siteMissing' });
  expect(amending(run, { what: 'site', site: 'oral' }).wrong).toEqual({ what: 'whatMissing' });
});

test('only a pressure has a wrong limb or cuff', () => {
  const { warm, run } = taken();
  expect(reasonsFor(run)).toContain('wrong-limb-or-cuff');
  expect(reasonsFor(warm)).not.toContain('wrong-limb-or-cuff');
  expect(reasonsFor(pulse)).not.toContain('wrong-limb-or-cuff');
  expect(amending(warm, { what: 'reading', n: '37', reason: 'wrong-limb-or-cuff' }).wrong).toEqual({
    reason: 'reasonMissing',
  });
});

test('who took an arm better left alone said so of that arm alone', () => {
  const override = { by: 'Dr Larch (invented)', reason: 'the other arm is in plaster' };
  const { run } = taken({ override });
  const place = (fields: Partial<AmendFields>) => {
    const { amendment } = amending(run, { what: 'place', ...fields });
    return amendment?.change.what === 'place' ? amendment.change.place : null;
  };
  expect(place({ side: 'left' })?.override).toBeNull();
  expect(place({ side: 'right', cuff: 'adult' })?.override).toEqual(override);
});

test('numbers put right cannot lie above the peak that was pumped up to', () => {
  const { run } = taken({}, { mmHg: 160, atSeconds: null });
  expect(amending(run, { what: 'numbers', n: '160/76' }).amendment).not.toBeNull();
  expect(amending(run, { what: 'numbers', n: '162/76' }).wrong.n).toMatchObject([{ code: 'out-of-order' }]);
});

test('a level of consciousness is chosen again, and is never made of anything else', () => {
  const { warm } = taken();
  const sign = { of: 'consciousness', level: 'alert', glasgow: null } as const;
  const content = { ...warm.content, evidence: { sign } };
  const alert = { ...warm, content } as unknown as StoredEntry;
  const { amendment } = amending(alert, { what: 'reading', n: 'voice' });
  expect(amendment?.change).toMatchObject({ what: 'reading', sign: { level: 'voice', glasgow: null } });
  expect(amending(alert, { what: 'reading', n: 'drowsy' }).wrong.n).toMatchObject([{ code: 'unknown-id' }]);
});

test('what a corrected count comes to is known before it is signed, whatever else is still missing', () => {
  const change = changeTyped(pulse, { ...BLANK, what: 'count', n: '18' }, NO_PROTOCOL, CLOCK);
  if (change === null) throw new Error('nothing typed');
  // 60 n / W: 18 in 15 s is 72 a minute (docs/conventions.md section 5).
  expect(amendedContent(pulse, { change }, under).content).toMatchObject({ value: { perMinute: 72 } });
  for (const fields of [{ what: 'count', n: '' }, { what: 'count', n: 'x' }, { what: 'time', time: '' }, {}])
    expect(changeTyped(pulse, { ...BLANK, ...fields }, NO_PROTOCOL, CLOCK)).toBeNull();
});

// 60 n / W (docs/conventions.md section 5): 83 counted in 15 s is 332 a minute, and 15 s give no rate of 83, but 60 s do.
test('a rate that is typed stays that rate, and is refused where its window cannot give it', () => {
  const typed = { what: 'count', n: '83', reason: 'typing-slip' };
  const rate = { ...typed, unit: PER_MINUTE };
  expect(amend(typed).amendment?.change).toMatchObject({ count: { n: 83, windowSeconds: 15 } });
  expect(amend(rate).wrong.n).toMatchObject([{ field: '/pulse', code: 'impossible' }]);
  const { amendment } = amend({ ...rate, windowSeconds: '60' });
  if (amendment === null) throw new Error('refused');
  expect(amendedContent(pulse, amendment, under).content).toMatchObject({
    evidence: { count: { n: 83, windowSeconds: 60 }, rateTyped: 'window-said' },
    value: { perMinute: 83 },
  });
  // What its window would hold is no count: it is kept as the rate that it was, a number counted as that.
  const counted = amend(typed).amendment?.change;
  expect(counted).toMatchObject({ rateTyped: null });
  expect(amend({ ...rate, n: '8x' }).wrong.n).toMatchObject([{ code: 'not-whole' }]);
});

test('a rate that is typed for what was counted goes on with the window of it, which is known, also of breaths', () => {
  const rateTyped = (more: object, n: string, windowSeconds = '') => {
    if (pulse.kind !== 'count') throw new Error('no count');
    const { evidence } = pulse.content;
    const { schema = pulse.schema, of = 'pulse', ...typed } = more as { schema?: number; of?: string };
    const before = { ...evidence, count: { ...evidence.count, of }, ...typed };
    const entry = { ...pulse, schema, content: { ...pulse.content, evidence: before } } as StoredEntry;
    const fields = { ...BLANK, what: 'count', n, unit: PER_MINUTE, windowSeconds, reason: 'typing-slip' };
    return readAmendment(entry, fields, NO_PROTOCOL, CLOCK).amendment?.change;
  };
  // 21 in 15 s is 84 a minute (docs/conventions.md section 5).
  const said = { count: { n: 21, windowSeconds: 15 }, rateTyped: 'window-said' };
  expect(rateTyped({}, '84')).toMatchObject(said);
  expect(rateTyped({ of: 'breaths' }, '84')).toMatchObject(said);
  // Of a count of schema 1 nobody knows whether a rate was typed.
  expect(rateTyped({ schema: 1 }, '84')).toMatchObject({ rateTyped: 'window-presumed' });
  expect(rateTyped({ schema: 1 }, '84', '15')).toMatchObject(said);
  expect(rateTyped({ rateTyped: 'window-presumed' }, '84')).toMatchObject({ rateTyped: 'window-presumed' });
  expect(rateTyped({ rateTyped: 'window-said' }, '84')).toMatchObject(said);
});
