import { expect, test } from 'vitest';
import { type DraftRun, NO_PRESSURE } from '../pressure/pressureDraft.js';
import { withUnwellUpright } from '../pressure/pressureSteps.js';
import { readRun } from '../pressure/readRun.js';
import { type RoundDraft, withMeasure, withMeasureNotDone, withNotDone, withValue } from './draft.js';
import { standingOf } from './standing.js';
import { AT, begun, complete, counted, ID, NO_PROTOCOL, NOTHING_BEFORE } from './testing.js';

const UNDER = { facts: NOTHING_BEFORE, inForce: NO_PROTOCOL, program: 'evenfall 0.0.0' };
const standing = (draft: RoundDraft, more: Partial<typeof UNDER> = {}) =>
  standingOf(draft, { ...UNDER, ...more });
const PLACE = {
  site: 'upper-arm',
  side: 'right',
  posture: 'sit',
  cuff: null,
  armCm: null,
  override: null,
} as const;

/** A reading by ear, kept so many seconds after the visit began. */
function reading(id: number, typed: string, seconds: number, inflatedAt: number | null = null): DraftRun {
  const { run } = readRun(
    { method: 'auscultation', typed, fields: {}, reinflated: false },
    { pulsePerMinute: 76, lostMmHg: null },
    NO_PROTOCOL.runRules.deflation,
  );
  if (run === null) throw new Error(typed);
  const instant = (at: number) => ({ session: 's', atMs: at * 1000 });
  return {
    kind: 'run',
    entry: ID(id),
    sequence: id,
    measuredAt: AT(2),
    run,
    place: PLACE,
    uprightMinutes: null,
    inflatedAt: inflatedAt === null ? null : instant(inflatedAt),
    keptAt: instant(seconds),
    typedAs: { method: 'auscultation', typed, fields: {}, reinflated: false },
    note: null,
  };
}
const withReadings = (...values: DraftRun[]): RoundDraft => ({
  ...complete(),
  exceptions: [],
  pressure: { ...NO_PRESSURE, place: PLACE, values, measuring: { at: 'ready' } },
});

test('a round is missing what has neither a value nor a reason', () => {
  expect(standing(begun()).missing).toEqual(['pulse', 'breaths', 'pressure']);
  const half = withValue(begun(), 'pulse', counted(20, 'pulse', 19, 15));
  expect(standing(half).missing).toEqual(['breaths', 'pressure']);
  const asleep = { reason: 'asleep', text: null } as const;
  expect(standing(withNotDone(half, 'breaths', asleep)).missing).toEqual(['pressure']);
});

// Bedside handbook 3.16: from 180 or 120 on the emergency features are asked, from 160 or 110 a pregnancy that is not known.
test('what a severe pressure asks stays open until it is answered, also with "none"', () => {
  const severe = withReadings(reading(30, '184/112', 60));
  expect(standing(withReadings(reading(30, '158/108', 60))).unasked).toEqual([]);
  expect(standing(severe).unasked).toEqual(['features', 'pregnancy']);
  expect(standing({ ...severe, features: [] }).unasked).toEqual(['pregnancy']);
  expect(standing({ ...severe, features: ['fit'], isPregnant: false }).unasked).toEqual([]);
});

test('a sign that somebody wants is missing until it is read, or not done for a reason', () => {
  const wanted: RoundDraft = { ...withReadings(reading(30, '128/76', 60)), wanted: ['pain'] };
  const pain = { of: 'pain', score: 3, word: null, tool: 'numeric', moving: null, where: null } as const;
  const measure = {
    kind: 'sign',
    entry: ID(40),
    sequence: 40,
    measuredAt: AT(3),
    sign: pain,
    note: null,
  } as const;
  expect(standing(wanted).missing).toEqual(['pain']);
  expect(standing(withMeasure(wanted, measure)).missing).toEqual([]);
  expect(standing(withMeasureNotDone(wanted, 'pain', { reason: 'asleep', text: null })).missing).toEqual([]);
});

test('what comes next follows what was taken, and the next reading waits for its minute', () => {
  expect(standing(begun()).next.step).toBe('prepare');
  expect(standing(complete()).next.step).toBe('cuff');
  // Without a protocol: ESC 2024, three readings a minute apart (bedside handbook 3.10).
  expect(standing(withReadings(reading(30, '152/94', 60), reading(31, '146/90', 130))).next).toMatchObject({
    step: 'repeat',
    earliestAtSeconds: 130,
  });
});

test('what was said about pregnancy counts in the round, and a fact of the chart before it', () => {
  const severe = withReadings(reading(30, '164/104', 60));
  expect(standing(severe).content.value?.ask.pregnancy).toBe(true);
  const no = standing({ ...severe, isPregnant: false }).content;
  expect(no.value).toMatchObject({ ask: { pregnancy: false }, actNow: [] });
  const yes = standing({ ...severe, isPregnant: true }).content;
  expect(yes.value?.actNow).toMatchObject([{ condition: 'severe-in-pregnancy' }]);
  const facts = { ...NOTHING_BEFORE, round: { ...NOTHING_BEFORE.round, isPregnant: true } };
  expect(standing({ ...severe, isPregnant: false }, { facts }).content.value?.actNow).toHaveLength(1);
});

test('the result of a round is what would be signed', () => {
  const draft = withReadings(
    reading(30, '152/94', 60),
    reading(31, '146/90', 130),
    reading(32, '144/88', 200),
  );
  const { content } = standing(draft);
  // Bedside handbook 8, C049.
  expect(content.value?.pressure).toMatchObject({ systolic: 145, diastolic: 89, used: [ID(31), ID(32)] });
  expect(content.signs).toContainEqual({ sign: 'pressure', entries: [ID(30), ID(31), ID(32)] });
  // A place that chose no protocol charts values and shows no category.
  expect(content.value?.category).toBeNull();
});

test('how a person felt on their feet is judged with the round and charted with its reading', () => {
  const lying = { ...reading(30, '120/80', 60), place: { ...PLACE, posture: 'lie' as const } };
  const up = {
    ...reading(31, '118/80', 200),
    place: { ...PLACE, posture: 'stand' as const },
    uprightMinutes: 1,
  };
  const flags = (unwell: boolean | null) =>
    standing(withUnwellUpright(withReadings(lying, up), ID(31), unwell)).content.value?.standing?.flags.map(
      ({ code }) => code,
    );
  expect(flags(true)).toContain('symptoms-on-standing');
  expect(flags(false)).not.toContain('symptoms-on-standing');
  expect(flags(null)).not.toContain('symptoms-on-standing');
});
