import { describe, expect, test } from 'vitest';
import { DEFAULT_CUFF_RULES } from '../cuff/rules.js';
import { DEFAULT_ACT_NOW_RULES } from './actNowRules.js';
import { DEFAULT_ARMS_RULES } from './armsRules.js';
import type { RoundEvent } from './event.js';
import { UNKNOWN_READINGS_CIRCUMSTANCES } from './furtherReading.js';
import { missingSigns, nextPressureStep, nextStep, type StepRules } from './nextStep.js';
import { DEFAULT_PLAN_RULES } from './planRules.js';
import { readingsRulesOf } from './readingsRules.js';
import { DEFAULT_RECHECK_RULES } from './recheckRules.js';
import { NO_ROUND_FACTS, type RoundFacts } from './roundFacts.js';
import type { RoundReading } from './roundReading.js';
import { roundState } from './roundState.js';
import { PLACE, pulse, reading } from './testing.js';

const RULES: StepRules = {
  plan: DEFAULT_PLAN_RULES,
  readings: readingsRulesOf('acc-aha-2025'),
  arms: DEFAULT_ARMS_RULES,
  cuff: DEFAULT_CUFF_RULES,
  actNow: DEFAULT_ACT_NOW_RULES,
  recheck: DEFAULT_RECHECK_RULES,
};
const KNOWN: RoundFacts = { ...NO_ROUND_FACTS, ageMonths: 600, isFirstPressure: false };

const prepared: RoundEvent = { what: 'prepared', exceptions: [] };
const took = (value: Extract<RoundEvent, { what: 'taken' }>['value']): RoundEvent => ({
  what: 'taken',
  value,
});
const rates = [took(pulse({})), took(pulse({ id: 'b', of: 'breaths', perMinute: 14 }))];
const placed: RoundEvent = { what: 'placed', place: PLACE };
const felt: RoundEvent = { what: 'estimated', estimate: { ...PLACE, lostMmHg: 132, atSeconds: 100 } };
const read = (more: Partial<RoundReading>) => took(reading(more));

function next(events: readonly RoundEvent[], facts = KNOWN, rules = RULES) {
  return nextStep(roundState(events), facts, UNKNOWN_READINGS_CIRCUMSTANCES, rules);
}

// Bedside handbook 3.8: the order of a two-step auscultated reading (composite, common practice).
test('a round goes from making ready to the pulse, the breaths, the cuff, feeling, listening, and again', () => {
  const events: RoundEvent[] = [];
  const steps = [
    prepared,
    ...rates,
    placed,
    felt,
    read({ id: 'r1', systolic: 128, diastolic: 76 }),
    read({ id: 'r2', systolic: 126, diastolic: 78 }),
  ].map((event) => {
    const { step } = next(events);
    events.push(event);
    return step;
  });
  expect([...steps, next(events).step]).toEqual([
    'prepare',
    'pulse',
    'breaths',
    'cuff',
    'palpate',
    'listen',
    'repeat',
    'review',
  ]);
});

describe('another reading', () => {
  const first = [prepared, ...rates, placed, felt, read({ id: 'r1', atSeconds: 200 })];

  test('comes a minute after the end of the last one, on the same arm (handbook 3.10: 60 s)', () => {
    expect(next(first)).toMatchObject({
      step: 'repeat',
      why: [{ code: 'more-readings' }],
      earliestAtSeconds: 260,
      side: 'right',
      posture: 'sit',
    });
  });

  test('is asked of the arm it was begun on: one of the other arm does not count for it', () => {
    const other = read({ id: 'r2', side: 'left' });
    expect(next([...first, other])).toMatchObject({ step: 'repeat', side: 'right' });
  });

  test('is not asked for where it was taken out and not done', () => {
    expect(next([...first, { what: 'not-done', sign: 'pressure', reason: 'declined' }]).step).toBe('review');
  });
});

// Bedside handbook 3.15: very low is repeated at once, by hand (common practice).
test('a very low pressure is taken again before any other sign, also on the review', () => {
  const events = [prepared, placed, felt, read({ id: 'r1', systolic: 84, diastolic: 50 })];
  expect(next(events)).toMatchObject({ step: 'repeat', waitSeconds: 0 });
  expect(next([...events, read({ id: 'r2', systolic: 86, diastolic: 50 })]).step).toBe('pulse');
});

test('whoever has the cuff on goes on with it, though the pulse is still open', () => {
  const state = roundState([prepared, placed, felt, read({ id: 'r1' })]);
  const of = (events: typeof state) =>
    nextPressureStep(events, KNOWN, UNKNOWN_READINGS_CIRCUMSTANCES, RULES)?.step ?? null;
  expect(nextStep(state, KNOWN, UNKNOWN_READINGS_CIRCUMSTANCES, RULES).step).toBe('pulse');
  expect(of(state)).toBe('repeat');
  expect(of(roundState([prepared, { what: 'not-done', sign: 'pressure', reason: 'declined' }]))).toBeNull();
});

describe('a count that asks for a longer one', () => {
  const short = took(pulse({ perMinute: 108, nextWindowSeconds: 60 }));

  // Bedside handbook 8, C008: 15 s at 108 asks for a longer count.
  test('comes back to the pulse and says for how long', () => {
    expect(next([prepared, short])).toMatchObject({
      step: 'pulse',
      why: [{ code: 'longer-count', figures: { nextWindowSeconds: 60 } }],
    });
    expect(next([prepared, short, took(pulse({ id: 'p2', perMinute: 106 }))]).step).toBe('breaths');
  });

  test('that was broken off is taken again', () => {
    expect(next([prepared, took(pulse({ perMinute: null }))]).step).toBe('pulse');
  });
});

describe('the other arm', () => {
  const onOne = [prepared, ...rates, placed, felt, read({ id: 'r1' }), read({ id: 'r2', systolic: 126 })];
  const newHere = { ...KNOWN, isFirstPressure: true };

  // Bedside handbook 3.12: first visit, both arms (ISH 2020, NICE NG136).
  test('is asked for at the first pressure of a person, and not once it was taken', () => {
    expect(next(onOne, newHere)).toMatchObject({
      step: 'other-arm',
      side: 'left',
      why: [{ code: 'first-time-both-arms' }],
    });
    expect(next([...onOne, read({ id: 'l1', side: 'left' })], newHere).step).toBe('review');
    expect(next(onOne).step).toBe('review');
  });

  // Bedside handbook 3.12 (first visit, both arms); that it is said before the cuff is on is our decision.
  test('is said to come before the first reading, where it will be asked for', () => {
    const before = [prepared, ...rates];
    const ahead = (events: readonly RoundEvent[], facts = newHere, rules = RULES) =>
      next(events, facts, rules).why.map(({ code }) => code);
    for (const events of [before, [...before, placed], [...before, placed, felt]])
      expect(ahead(events)).toEqual(['both-arms-ahead']);
    expect(ahead([...before, { what: 'placed', place: { ...PLACE, site: 'thigh' } }])).toEqual([]);
    expect(ahead(before, KNOWN)).toEqual([]);
    expect(ahead(before, { ...newHere, arms: [{ kind: 'fistula', side: 'left' }] })).toEqual([]);
    expect(ahead(before, newHere, { ...RULES, plan: { ...RULES.plan, bothArmsFirstTime: false } })).toEqual(
      [],
    );
  });

  // Bedside handbook 3.15 and 8, C064: a fistula bars its arm, whoever asks.
  test('is never asked for if it is barred, and not as a matter of course if the other is better', () => {
    const asked: RoundEvent = { what: 'wanted', wanted: 'other-arm' };
    const with_ = (kind: 'fistula' | 'lymphoedema'): RoundFacts => ({
      ...newHere,
      arms: [{ kind, side: 'left' }],
    });
    expect(next([...onOne, asked], with_('fistula')).step).toBe('review');
    expect(next(onOne, with_('lymphoedema')).step).toBe('review');
    expect(next([...onOne, asked], with_('lymphoedema'))).toMatchObject({ step: 'other-arm', side: 'left' });
  });

  test('is not asked for after a reading at another site', () => {
    const thigh = { site: 'thigh' as const };
    const events = [prepared, ...rates, placed, felt, read({ ...thigh }), read({ id: 'r2', ...thigh })];
    expect(next(events, newHere).step).toBe('review');
  });
});

describe('lying and standing', () => {
  const sitting = [
    prepared,
    ...rates,
    placed,
    felt,
    read({ id: 'r1' }),
    read({ id: 'r2' }),
    { what: 'wanted', wanted: 'lying-and-standing' } as const,
  ];
  const lain = read({ id: 'r3', posture: 'lie' });

  test('comes when it was asked for: lying, then standing', () => {
    expect(next(sitting)).toMatchObject({ step: 'lying', posture: 'lie' });
    expect(next([...sitting, lain])).toMatchObject({ step: 'standing', posture: 'stand' });
    expect(next([...sitting, lain, read({ id: 'r4', posture: 'stand' })]).step).toBe('review');
  });

  // Bedside handbook 3.14: at 1 and at 3 minutes. A fall that comes late is not missed because an early reading was taken.
  test.each([
    [1, 'standing'],
    [2, 'standing'],
    [2.5, 'review'],
    [3, 'review'],
    [5, 'review'],
  ])('after %d min on the feet: %s', (uprightMinutes, step) => {
    const stood = read({ id: 'r4', posture: 'stand', uprightMinutes });
    const found = next([...sitting, lain, stood]);
    expect(found.step).toBe(step);
    expect(found.why.map(({ code }) => code)).toEqual(
      step === 'standing' ? ['third-minute-not-measured'] : [],
    );
  });

  // Bedside handbook 8, C065 to C067: a fall of 20 of the systolic or 10 of the diastolic is one; 19 and 9 are none.
  test.each([
    [130, 86, 'fall-on-standing'],
    [131, 81, 'third-minute-not-measured'],
    [150, 80, 'fall-on-standing'],
  ])(
    'a fall from 150/90 to %d/%d at 1 min: the third minute is asked for, because of %s',
    (systolic, diastolic, code) => {
      const from = read({ id: 'r3', posture: 'lie', systolic: 150, diastolic: 90 });
      const stood = read({ id: 'r4', posture: 'stand', uprightMinutes: 1, systolic, diastolic });
      const found = next([...sitting, from, stood]);
      expect(found.step).toBe('standing');
      expect(found.why.map((one) => one.code)).toEqual([code]);
    },
  );

  // Bedside handbook 3.17: a systolic of 90 or under is very low, so that it is taken again lying first (3.15). That nobody is
  // stood up with it: common practice, no source.
  test.each([
    [91, []],
    [90, ['low-before-standing']],
    [89, ['low-before-standing']],
  ])('after a systolic of %d lying, standing is asked for with %j', (systolic, low) => {
    const lying = { posture: 'lie', systolic, diastolic: 56 } as const;
    const once = [...sitting, read({ id: 'r3', ...lying })];
    expect(next(once).step).toBe(low.length === 0 ? 'standing' : 'repeat');
    const found = next([...once, read({ id: 'r4', ...lying })]);
    expect(found.step).toBe('standing');
    expect(found.why.map(({ code }) => code).filter((code) => code === 'low-before-standing')).toEqual(low);
  });

  // Bedside handbook 3.17: at 4 years low under 78.
  test.each([
    [88, [], 'standing'],
    [77, ['low-before-standing'], 'lying'],
  ])('a child of 4 years with %d goes by its own limit', (systolic, low, after) => {
    const child: RoundFacts = { ...KNOWN, ageMonths: 48 };
    const lies = read({ id: 'r3', posture: 'lie', systolic, diastolic: 50 });
    const again = read({ id: 'r5', posture: 'lie', systolic, diastolic: 50 });
    const codes = next([...sitting, lies, again], child).why.map(({ code }) => code);
    expect(codes.filter((code) => code === 'low-before-standing')).toEqual(low);
    const stood = read({ id: 'r4', posture: 'stand', uprightMinutes: 1, systolic, diastolic: 54 });
    expect(next([...sitting, lies, stood], child).step).toBe(after);
  });

  // Bedside handbook 3.14: lie down for symptoms, and for a systolic below 90 (at 90 it is very low, 3.17); a fall that is borne is
  // measured again.
  test.each([
    ['84/52', { systolic: 84, diastolic: 52 }, 'lying'],
    ['89/70', { systolic: 89, diastolic: 70 }, 'lying'],
    ['90/70', { systolic: 90, diastolic: 70 }, 'lying'],
    ['91/70', { systolic: 91, diastolic: 70 }, 'standing'],
    ['128/78 and unwell', { isUnwellUpright: true }, 'lying'],
    ['128/78 and well', { isUnwellUpright: false }, 'standing'],
    ['106/70 and well', { systolic: 106, diastolic: 70, isUnwellUpright: false }, 'standing'],
  ])('at 1 min %s: %j leads on to %s', (_, more, step) => {
    const stood = read({ id: 'r4', posture: 'stand', uprightMinutes: 1, ...more });
    expect(next([...sitting, lain, stood]).step).toBe(step);
    // Lying again, nobody is asked up a second time, nor for one more reading.
    if (step === 'lying')
      expect(next([...sitting, lain, stood, read({ id: 'r5', posture: 'lie' })]).step).toBe('review');
  });

  test('who is to lie down and was not measured lying is asked to be, and for no more readings on the feet', () => {
    const up = { posture: 'stand', uprightMinutes: 1, systolic: 84, diastolic: 52 } as const;
    expect(next([...sitting, read({ id: 'r3', ...up })])).toMatchObject({ step: 'lying', posture: 'lie' });
    const onFeet = [prepared, ...rates, placed, felt, read({ id: 'r1', ...up })];
    // Bedside handbook 3.15: very low or unwell is repeated at once (common practice).
    expect(next(onFeet)).toMatchObject({ step: 'lying', waitSeconds: 0, why: [{ code: 'again-at-once' }] });
    expect(next(onFeet, { ...KNOWN, isFirstPressure: true }).step).toBe('lying');
    const pregnant = { ...KNOWN, isPregnant: true, pregnancyWeeks: 32 };
    expect(next(onFeet, pregnant)).toMatchObject({ step: 'lying', posture: 'lie-left' });
  });

  // docs/conventions.md section 6: one by feel and one at a thigh are averaged with nothing, so that what is read lying is repeated.
  test.each([
    ['by feel', { method: 'palpation', diastolic: null }],
    ['at the thigh', { site: 'thigh' }],
    ['', {}],
  ] as const)(
    'of whoever was laid down after a reading %s is asked for again where it is what there is',
    (what, before) => {
      const up = { posture: 'stand', uprightMinutes: 1, systolic: 84, diastolic: 52 } as const;
      const found = next([
        prepared,
        ...rates,
        placed,
        felt,
        read({ id: 'r1', ...before }),
        read({ id: 'r2', ...up }),
        read({ id: 'r3', posture: 'lie', systolic: 152, diastolic: 96 }),
      ]);
      expect(found).toMatchObject(what === '' ? { step: 'review' } : { step: 'repeat', posture: 'lie' });
    },
  );

  test('late in pregnancy is on the left side, and never flat on the back', () => {
    const pregnant = { ...KNOWN, isPregnant: true, pregnancyWeeks: 32 };
    expect(next(sitting, pregnant)).toMatchObject({
      step: 'lying',
      posture: 'lie-left',
      why: [{ code: 'late-pregnancy-not-flat' }, { code: 'asked-for' }],
    });
  });

  test('of somebody who cannot stand is sitting, which was taken', () => {
    const cannotStand = { ...KNOWN, cannotStand: true };
    expect(next([...sitting, lain], cannotStand).step).toBe('review');
  });
});

describe('what must be answered before signing', () => {
  test('is what the protocol wants and what somebody asked for beside it', () => {
    const state = roundState([prepared, ...rates, { what: 'wanted', wanted: 'pain' }]);
    expect(missingSigns(state, DEFAULT_PLAN_RULES)).toEqual(['pressure', 'pain']);
    const none = { ...DEFAULT_PLAN_RULES, wantedSigns: [] };
    expect(missingSigns(state, none)).toEqual(['pain']);
  });

  test('is nothing once the person declined', () => {
    expect(missingSigns(roundState([{ what: 'declined' }]), DEFAULT_PLAN_RULES)).toEqual([]);
    expect(next([{ what: 'declined' }, prepared]).step).toBe('review');
  });
});
