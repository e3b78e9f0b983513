import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { RoundEvent } from './event.js';
import { isOtherArmOpen, type NextStep, nextPressureStep, postureLaidDown } from './nextStep.js';
import { readingsRulesOf } from './readingsRules.js';
import { NO_ROUND_FACTS, type RoundFacts } from './roundFacts.js';
import type { ReadingPlace, RoundReading } from './roundReading.js';
import { readingsCircumstances } from './roundResult.js';
import { DEFAULT_ROUND_RULES, type RoundRules } from './roundRules.js';
import { roundState } from './roundState.js';
import { reading } from './testing.js';

const KNOWN: RoundFacts = { ...NO_ROUND_FACTS, ageMonths: 600, isFirstPressure: false };
const LATE: RoundFacts = { ...KNOWN, isPregnant: true, pregnancyWeeks: 34 };

type Around = {
  readonly facts?: RoundFacts;
  readonly rules?: RoundRules;
  readonly unwell?: boolean | null;
  readonly wanted?: readonly ('other-arm' | 'lying-and-standing')[];
  readonly place?: ReadingPlace | null;
};

/** What comes next after these readings, with what they and the person say of it. */
function next(
  taken: readonly RoundReading[],
  { facts = KNOWN, rules = DEFAULT_ROUND_RULES, unwell = null, wanted = [], place = null }: Around = {},
): NextStep | null {
  const readings = taken.map((one, i) => ({ ...one, id: `r${i}` }));
  const events: RoundEvent[] = [
    ...readings.map((one): RoundEvent => ({ what: 'taken', value: { ...one, of: 'pressure' } })),
    ...wanted.map((one): RoundEvent => ({ what: 'wanted', wanted: one })),
    ...(place === null ? [] : [{ what: 'placed', place } as const]),
  ];
  const judged = readings.map((one) => ({ ...one, irregular: null }));
  const input = { facts, readings: judged, isFeltIrregular: null, features: null, unwell, heightCm: null };
  return nextPressureStep(roundState(events), facts, readingsCircumstances(input, rules), rules);
}

/** A reading by its posture and systolic, unless more is said. */
const at = (posture: RoundReading['posture'], systolic: number, more: Partial<RoundReading> = {}) =>
  reading({
    posture,
    systolic,
    diastolic: Math.round(systolic * 0.6),
    uprightMinutes: posture === 'stand' ? 1 : null,
    ...more,
  });
const times = (count: number, one: RoundReading): RoundReading[] => Array.from({ length: count }, () => one);
const sat = (count: number) => times(count, at('sit', 128));

// Bedside handbook 3.15: very low or unwell is repeated at once, by hand, without a wait; that it is at the same arm and in the
// same posture: common practice, no source.
describe('after a very low reading one repeat at its place comes first', () => {
  test.each([
    ['lying, after three sitting and one on the feet', [...sat(3), at('stand', 84), at('lie', 86)], 'lie'],
    ['lying lower yet', [...sat(3), at('stand', 84), at('lie', 78)], 'lie'],
    ['lying, after two sitting, which are too few', [...sat(2), at('stand', 84), at('lie', 86)], 'lie'],
    ['lying, after one on the feet alone', [at('stand', 84), at('lie', 84)], 'lie'],
    ['sitting, at the second reading', [at('sit', 128), at('sit', 84)], 'sit'],
    ['sitting, of three', [...sat(3), at('sit', 84)], 'sit'],
  ] as const)('%s', (_, readings, posture) => {
    expect(next(readings)).toMatchObject({
      step: 'repeat',
      why: [{ code: 'again-at-once' }],
      waitSeconds: 0,
      side: 'right',
      site: 'upper-arm',
      posture,
    });
  });

  // By feel, or where a guideline takes more: other signs and help come first, whatever an average lacks.
  test.each([
    ['sitting', [at('sit', 84), at('sit', 82)]],
    ['by feel', times(2, at('sit', 84, { method: 'palpation', diastolic: null }))],
  ])('and no third at the first place: %s', (_, readings) => {
    const esc = { ...DEFAULT_ROUND_RULES, readings: readingsRulesOf('esc-2024') };
    expect(next(readings)).toBeNull();
    expect(next(readings, { rules: esc })).toBeNull();
  });

  // A low arm, and the other one read before its repeat: what that one says is no repeat of it.
  test('and the other arm is no matter of course before help', () => {
    const facts = { ...KNOWN, isFirstPressure: true };
    expect(next([at('sit', 84), at('sit', 82)], { facts })).toBeNull();
    expect(next(sat(2), { facts, unwell: true })).toBeNull();
    const left = at('sit', 62, { side: 'left' });
    expect(next([at('sit', 84), at('sit', 82), left, left], { facts })).toBeNull();
    expect(next([at('sit', 84), at('sit', 112), at('sit', 110)], { facts })).toMatchObject({
      step: 'other-arm',
    });
  });

  test('also once another arm was read, but not in a posture that was left', () => {
    const right = at('sit', 84);
    const left = at('sit', 120, { side: 'left' });
    expect(next([right, left])).toMatchObject({
      step: 'repeat',
      side: 'right',
      why: [{ code: 'again-at-once' }],
    });
    expect(next([right, left, at('sit', 118)])?.why ?? []).not.toContainEqual({
      code: 'again-at-once',
      figures: {},
    });
    expect(next([right, at('lie', 112)])?.why.map(({ code }) => code) ?? []).not.toContain('again-at-once');
  });

  test('on the other arm, and at another site', () => {
    expect(next([...sat(3), at('sit', 84, { side: 'left' })])).toMatchObject({
      step: 'repeat',
      side: 'left',
    });
    const forearm = next([...sat(3), at('sit', 84, { site: 'forearm' })]);
    expect(forearm).toMatchObject({ step: 'repeat', site: 'forearm', waitSeconds: 0 });
  });

  test('and no second one: that it was so, or was not, is known then', () => {
    const lain = [...sat(3), at('stand', 84), at('lie', 86)];
    expect(next([...lain, at('lie', 84)])).toBeNull();
    expect(next([...lain, at('lie', 112)])).toBeNull();
    const wanted = ['lying-and-standing'] as const;
    expect(next([...lain, at('lie', 112)], { wanted })).toBeNull();
  });

  test('also of whoever is unwell at every reading', () => {
    expect(next([...sat(3), at('lie', 128)], { unwell: true })).toMatchObject({
      step: 'repeat',
      posture: 'lie',
    });
    expect(next([...sat(3), ...times(2, at('lie', 128))], { unwell: true })).toBeNull();
  });

  // Bedside handbook 3.17: at 6 years low under 82.
  test('of a child by its own limit', () => {
    const facts = { ...KNOWN, ageMonths: 72 };
    expect(next([...times(3, at('sit', 100)), at('lie', 84)], { facts })).toBeNull();
    expect(next([...times(3, at('sit', 100)), at('lie', 80)], { facts })).toMatchObject({ posture: 'lie' });
  });

  test('late in pregnancy on the left side, also after one flat on the back', () => {
    const flat = next([...sat(3), at('lie', 84)], { facts: LATE });
    expect(flat).toMatchObject({ step: 'repeat', posture: 'lie-left', waitSeconds: 0 });
    expect(flat?.why.map(({ code }) => code)).toEqual(['again-at-once', 'late-pregnancy-not-flat']);
    const left = [at('lie', 84), ...times(2, at('lie-left', 84))];
    expect(next(left, { facts: LATE })).toBeNull();
  });
});

// Bedside handbook 3.14 (stop: lie down), 3.15; that nobody is asked up again: common practice, no source.
describe('whoever was low or unwell on their feet', () => {
  test.each([
    [
      'and then was not',
      [...times(3, at('lie', 128)), at('stand', 84), at('stand', 110, { uprightMinutes: 3 })],
    ],
    ['unwell, and then well', [...sat(3), at('stand', 110, { isUnwellUpright: true }), at('stand', 112)]],
    [
      'and stood up again by themselves',
      [...sat(3), at('stand', 84), ...times(2, at('lie', 112)), at('stand', 112)],
    ],
  ])('%s is measured lying', (_, readings) => {
    const wanted = ['lying-and-standing'] as const;
    const lying = { step: 'lying', posture: 'lie', waitSeconds: 0, why: [{ code: 'again-at-once' }] };
    expect(next(readings, { wanted })).toMatchObject(lying);
    expect(next(readings, { wanted, facts: LATE })).toMatchObject({ step: 'lying', posture: 'lie-left' });
    expect([postureLaidDown(KNOWN, DEFAULT_ROUND_RULES), postureLaidDown(LATE, DEFAULT_ROUND_RULES)]).toEqual(
      ['lie', 'lie-left'],
    );
  });

  test('is measured again where it is severe lying, and as often as the rule where nothing was read at rest before', () => {
    const up = at('stand', 112, { isUnwellUpright: true });
    expect(next([...sat(2), up, at('lie', 184, { diastolic: 112 })])).toMatchObject({
      step: 'repeat',
      posture: 'lie',
    });
    expect(next([...sat(2), up, at('lie', 118)])).toBeNull();
    expect(next([up, at('lie', 118)])).toMatchObject({ step: 'repeat', posture: 'lie' });
  });

  test('is asked neither up again nor for the other arm as a matter of course', () => {
    const lain = [at('sit', 128), at('stand', 84), at('lie', 110)];
    const facts = { ...KNOWN, isFirstPressure: true };
    expect(next(lain)).toBeNull();
    expect(next(lain, { facts, wanted: ['lying-and-standing'] })).toBeNull();
    expect(next(lain, { wanted: ['other-arm'] })).toMatchObject({ step: 'other-arm', posture: 'lie' });
  });

  test('unwell as they look: laid down, and not stood up again', () => {
    const around = { unwell: true, wanted: ['lying-and-standing'] } as const;
    const stood = [...sat(3), at('stand', 128)];
    expect(next(stood, around)).toMatchObject({ step: 'lying', waitSeconds: 0 });
    expect(next([...stood, ...times(2, at('lie', 128))], around)).toBeNull();
  });
});

// Bedside handbook 3.17: a systolic of 90 or under. The alert and the step say one thing, on the feet and before them.
describe('what raises the alert of a low pressure', () => {
  const own = {
    ...DEFAULT_ROUND_RULES,
    actNow: { ...DEFAULT_ROUND_RULES.actNow, veryLowSystolic: 100, olderChildLowSystolic: 100 },
  };
  const lain = times(3, at('lie', 128));
  const wanted = ['lying-and-standing'] as const;

  test.each([
    ['an adult at 90', KNOWN, DEFAULT_ROUND_RULES, 90, 'lying'],
    ['an adult at 91', KNOWN, DEFAULT_ROUND_RULES, 91, 'standing'],
    ['an adult at 100, where the place says 100', KNOWN, own, 100, 'lying'],
    ['an adult at 101, where the place says 100', KNOWN, own, 101, 'standing'],
    ['14 years at 99, where the place says 100', { ...KNOWN, ageMonths: 168 }, own, 99, 'lying'],
    ['14 years at 100, where the place says 100', { ...KNOWN, ageMonths: 168 }, own, 100, 'standing'],
  ])('%s on the feet', (_, facts, rules, systolic, step) => {
    expect(next([...lain, at('stand', systolic)], { facts, rules, wanted })).toMatchObject({ step });
  });

  test('speaks against standing up, too', () => {
    const codes = (systolic: number) =>
      next([...lain, ...times(2, at('lie', systolic))], { wanted })?.why.map(({ code }) => code);
    expect(codes(90)).toContain('low-before-standing');
    expect(codes(91)).not.toContain('low-before-standing');
  });
});

// Bedside handbook 3.12: a difference over the limit is repeated in both arms.
describe('two arms that differ too much', () => {
  const left = (systolic: number, more: Partial<RoundReading> = {}) =>
    at('sit', systolic, { side: 'left', ...more });
  const first = [...times(3, at('sit', 142)), left(128, { atSeconds: 200 })];
  const gapSeconds = DEFAULT_ROUND_RULES.readings.gapSeconds;

  test('are both asked for again, the arm with the cuff first and after its rest', () => {
    expect(next(first)).toMatchObject({
      step: 'repeat',
      side: 'left',
      posture: 'sit',
      why: [{ code: 'arms-repeat', figures: { systolicMmHg: 14, limitMmHg: 10 } }],
      earliestAtSeconds: 200 + gapSeconds,
      waitSeconds: gapSeconds,
    });
    const then = next([...first, left(130)]);
    expect(then).toMatchObject({ step: 'other-arm', side: 'right', waitSeconds: null });
    expect(next([...first, left(130), at('sit', 144)])).toBeNull();
  });

  test('come before lying and standing, but not in the middle of it', () => {
    const wanted = ['lying-and-standing'] as const;
    expect(next(first, { wanted })).toMatchObject({ step: 'repeat', side: 'left' });
    const lain = [...first, at('lie', 140, { side: 'left' })];
    expect(next(lain, { wanted })).toMatchObject({ step: 'standing' });
  });

  test('are not asked for of an arm that is barred, nor of whoever was laid down', () => {
    const facts: RoundFacts = { ...KNOWN, arms: [{ kind: 'fistula', side: 'left' }] };
    expect(next(first, { facts })).toBeNull();
    expect(next([...first, at('stand', 84), ...times(2, at('lie', 120))])).toBeNull();
  });
});

// Bedside handbook 3.14 (stop if unwell); that whoever is unwell before it is not stood up: common practice, no source.
describe('whoever is unwell at every reading', () => {
  const wanted = ['lying-and-standing'] as const;

  test.each([
    ['after sitting and lying', [...sat(3), ...times(2, at('lie', 128))]],
    ['after lying alone', times(3, at('lie', 128))],
  ])('is not asked onto their feet: %s', (_, readings) => {
    expect(next(readings, { wanted })).toMatchObject({ step: 'standing' });
    expect(next(readings, { wanted, unwell: true })).toBeNull();
  });

  test('is measured lying all the same, where that was asked for', () => {
    expect(next(sat(3), { wanted, unwell: true })).toMatchObject({ step: 'lying', posture: 'lie' });
  });
});

/** The reading that does what is asked; on the feet later than the one before. */
function doing({ side, site, posture }: NextStep, taken: readonly RoundReading[], said: Said): RoundReading {
  const [systolic, isFelt, isUnwellUpright] = said;
  const stood = taken.filter((one) => one.posture === 'stand').length;
  const isUp = posture === 'stand';
  return {
    ...at(posture ?? 'sit', systolic),
    side: side ?? 'right',
    site: site ?? 'upper-arm',
    ...(isFelt ? { method: 'palpation', diastolic: null } : {}),
    uprightMinutes: isUp ? 1 + stood : null,
    isUnwellUpright: isUp ? isUnwellUpright : null,
  };
}

type Said = readonly [systolic: number, isFelt: boolean, isUnwellUpright: boolean];

/** More readings than anybody is asked for who does what is asked: five of one place, and a few after them. */
const MOST = 24;
const said = fc.tuple(fc.integer({ min: 50, max: 220 }), fc.boolean(), fc.boolean());
const begun = fc.array(
  fc.record({
    posture: fc.constantFrom('sit', 'lie', 'lie-left', 'stand'),
    side: fc.constantFrom('right', 'left'),
    systolic: fc.integer({ min: 50, max: 220 }),
    isUnwellUpright: fc.boolean(),
  } as const),
  { minLength: 1, maxLength: 4 },
);
const around = fc.record({
  facts: fc.record({
    ageMonths: fc.constantFrom(null, 48, 168, 600),
    isFirstPressure: fc.boolean(),
    cannotStand: fc.boolean(),
    isPregnant: fc.boolean(),
  }),
  unwell: fc.constantFrom(null, true),
  wanted: fc.subarray(['other-arm', 'lying-and-standing'] as const),
});

test('whoever does what is asked comes to an end, and nobody who lies after their feet is asked up again', () => {
  fc.assert(
    fc.property(begun, around, fc.array(said, { minLength: MOST, maxLength: MOST }), (before, given, all) => {
      const isLate = given.facts.isPregnant;
      const facts = { ...KNOWN, ...given.facts, pregnancyWeeks: isLate ? 34 : null };
      const taken: RoundReading[] = before.map((one) =>
        at(one.posture, one.systolic, {
          side: one.side,
          isUnwellUpright: one.posture === 'stand' ? one.isUnwellUpright : null,
        }),
      );
      let wasLaid = false;
      for (const one of all) {
        const step = next(taken, { ...given, facts });
        if (step === null) return;
        // Laid down by what was asked: from then on nothing up, nor flat late in pregnancy.
        wasLaid ||= step.step === 'lying' && step.why[0]?.code === 'again-at-once';
        if (wasLaid) expect(isLate ? ['lie-left'] : ['lie', 'lie-left']).toContain(step.posture);
        taken.push(doing(step, taken, one));
      }
      expect(next(taken, { ...given, facts })).toBeNull();
    }),
    { numRuns: 2_000, seed: 20261126 },
  );
});

// Bedside handbook 3.12, 3.15 (a fistula bars its arm).
test('the other arm can be asked for until it was measured, and not where it is barred or the cuff is elsewhere', () => {
  const open = (taken: readonly RoundReading[], facts = KNOWN) =>
    isOtherArmOpen(taken, facts, DEFAULT_ROUND_RULES);
  expect(open(sat(2))).toBe(true);
  expect(open([...sat(2), at('sit', 128, { side: 'left' })])).toBe(false);
  expect(open([])).toBe(false);
  expect(open([at('sit', 128, { site: 'forearm' })])).toBe(false);
  expect(open(sat(2), { ...KNOWN, arms: [{ kind: 'fistula', side: 'left' }] })).toBe(false);
});

// Bedside handbook 3.16: severe and no emergency feature: rest 5 min, repeat by hand; in pregnancy within 15 min, without that rest.
describe('after a severe reading there is one wait', () => {
  const severe = (more: Partial<RoundReading> = {}) =>
    at('sit', 182, { diastolic: 122, atSeconds: 200, ...more });
  const { gapSeconds } = DEFAULT_ROUND_RULES.readings;

  test('the rest of the person, as long as the place has it', () => {
    const rest = DEFAULT_ROUND_RULES.recheck.severeRestSeconds;
    expect(rest).toBe(300);
    expect(next([severe()])).toMatchObject({ step: 'repeat', waitSeconds: 300, earliestAtSeconds: 500 });
    const rules = {
      ...DEFAULT_ROUND_RULES,
      recheck: { ...DEFAULT_ROUND_RULES.recheck, severeRestSeconds: 600 },
    };
    expect(next([severe()], { rules })).toMatchObject({ waitSeconds: 600, earliestAtSeconds: 800 });
  });

  test('and that of the arm where it is not severe, or is in pregnancy', () => {
    expect(next([at('sit', 178, { atSeconds: 200 })])).toMatchObject({ waitSeconds: gapSeconds });
    const pregnant = { ...KNOWN, isPregnant: true };
    expect(next([severe()], { facts: pregnant })).toMatchObject({ step: 'repeat', waitSeconds: gapSeconds });
  });

  test('also where the other arm was read meanwhile: what is left of it', () => {
    const left = (more: Partial<RoundReading>) => at('sit', 150, { side: 'left', diastolic: 90, ...more });
    expect(next([severe(), left({ atSeconds: 260 })])).toMatchObject({
      step: 'repeat',
      side: 'right',
      waitSeconds: 240,
      earliestAtSeconds: 500,
    });
    expect(next([severe(), left({ atSeconds: 900 })])).toMatchObject({ waitSeconds: gapSeconds });
    expect(next([severe(), left({ atSeconds: null })])).toMatchObject({ waitSeconds: 300 });
    // The last one of its arm was not severe any more.
    expect(next([severe(), at('sit', 150, { atSeconds: 500 })])).toMatchObject({ waitSeconds: gapSeconds });
  });

  // Bedside handbook 3.17: a child 30 mmHg over its 95th centile; of a girl of 8 and 128 cm that is below 155/98.
  test("of a child by the limits of its age, as the round's own repeats", () => {
    const facts = { ...KNOWN, ageMonths: 96, sex: 'f', heightCm: 128 } as const;
    expect(next([at('sit', 155, { diastolic: 98 })], { facts })).toMatchObject({ waitSeconds: 300 });
    expect(next([at('sit', 125, { diastolic: 80 })], { facts })).toMatchObject({ waitSeconds: gapSeconds });
  });

  test('and none by what was read on the feet, for whoever is read sitting', () => {
    const sitting = at('sit', 150, { diastolic: 90, atSeconds: 0 });
    const stood = { uprightMinutes: 3, atSeconds: 300 };
    expect(next([sitting, at('stand', 185, { diastolic: 98, ...stood })])).toMatchObject({
      posture: 'sit',
      waitSeconds: gapSeconds,
    });
    expect(next([severe(), at('stand', 150, stood)])).toMatchObject({
      posture: 'sit',
      earliestAtSeconds: 500,
    });
  });
});

// Bedside handbook 3.14: at 1 and at 3 minutes on the feet.
describe('whoever still stands', () => {
  const sitting = at('sit', 128);
  const stood = (uprightMinutes: number) => at('stand', 126, { uprightMinutes });

  test('is read on their feet again until the third minute, before anything is read sitting', () => {
    for (const wanted of [[], ['lying-and-standing']] as const) {
      const due = { step: 'standing', posture: 'stand', why: [{ code: 'third-minute-not-measured' }] };
      expect(next([sitting, stood(0)], { wanted })).toMatchObject(due);
      expect(next([sitting, stood(0), stood(1)], { wanted })).toMatchObject(due);
    }
    expect(next([sitting, stood(1), stood(3)])).toMatchObject({ step: 'repeat', posture: 'sit' });
  });

  test('not once they sit again, cannot stand or are unwell, nor where nothing was read off their feet', () => {
    const place = { site: 'upper-arm', side: 'right', posture: 'sit' } as const;
    const after = [sitting, stood(1)];
    expect(next(after, { place })).toMatchObject({ step: 'repeat', posture: 'sit' });
    expect(next(after, { place: { ...place, posture: 'stand' } })).toMatchObject({ step: 'standing' });
    expect(next(after, { facts: { ...KNOWN, cannotStand: true } })?.step).not.toBe('standing');
    expect(next(after, { unwell: true })?.step).not.toBe('standing');
    expect(next([stood(1)])).toMatchObject({ step: 'repeat', posture: 'stand' });
  });
});
