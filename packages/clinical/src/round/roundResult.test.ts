import { describe, expect, test } from 'vitest';
import { readingsRulesOf } from './readingsRules.js';
import { NO_ROUND_FACTS, type RoundFacts } from './roundFacts.js';
import type { JudgedReading, RoundInput } from './roundInput.js';
import { type RoundRuleId, roundResult } from './roundResult.js';
import { DEFAULT_ROUND_RULES, type RoundRules } from './roundRules.js';
import { reading } from './testing.js';

const NOTHING: RoundInput = {
  readings: [],
  pulse: null,
  breaths: null,
  isFeltIrregular: null,
  temperature: null,
  oxygen: null,
  consciousness: null,
  heightCm: null,
  weightKg: null,
  features: null,
  unwell: null,
  facts: { ...NO_ROUND_FACTS, ageMonths: 600 },
};
const CHOSEN: RoundRules = {
  ...DEFAULT_ROUND_RULES,
  readings: readingsRulesOf('acc-aha-2025'),
  score: { ...DEFAULT_ROUND_RULES.score, earlyWarning: true, meanPressure: true, pulsePressure: true },
  category: {
    adultScheme: 'acc-aha-2025',
    childScheme: 'fourth-report-2004',
    pregnancyScheme: 'pregnancy',
  },
};

/** Readings `148/92`, or `122/P` for one by feel, in order. */
function readings(...texts: string[]): JudgedReading[] {
  return texts.map((text, at) => {
    const [systolic = '', diastolic = ''] = text.split('/');
    const isFelt = diastolic === 'P';
    return {
      ...reading({
        id: `r${at + 1}`,
        systolic: Number(systolic),
        diastolic: isFelt ? null : Number(diastolic),
        method: isFelt ? 'palpation' : 'auscultation',
      }),
      irregular: null,
    };
  });
}
const result = (more: Partial<RoundInput>, rules = CHOSEN, rule?: RoundRuleId) =>
  roundResult({ ...NOTHING, ...more }, rules, rule);
const facts = (more: Partial<RoundFacts>): RoundFacts => ({ ...NOTHING.facts, ...more });
const alerts = (more: Partial<RoundInput>, rules = CHOSEN) =>
  result(more, rules).actNow.map(({ condition }) => condition);

describe('the pressure of a round', () => {
  // Bedside handbook 8, C049 and C050: 152/94, 146/90, 144/88.
  test.each([
    ['esc-2024', 145, 89, ['r2', 'r3']],
    ['acc-aha-2025', 147.333, 90.667, ['r1', 'r2', 'r3']],
  ] as const)('is the average of %s, with the readings it was made of', (rule, systolic, diastolic, used) => {
    const { pressure } = result(
      { readings: readings('152/94', '146/90', '144/88') },
      { ...CHOSEN, readings: readingsRulesOf(rule) },
    );
    expect(pressure?.systolic).toBeCloseTo(systolic, 3);
    expect(pressure?.diastolic).toBeCloseTo(diastolic, 3);
    expect(pressure).toMatchObject({ rule, used });
  });

  // Bedside handbook 3.10 and 6.2 (AAP 2017): from 13 to under 18 raised from 120/80, whatever the height.
  test.each([
    [155, '119/79', ['more-readings', 'raised-not-known']],
    [156, '119/79', []],
    [156, '120/79', ['more-readings']],
    [215, '119/80', ['more-readings']],
  ])('of a child of %i months whose height is not known: %s asks for %j', (ageMonths, text, needs) => {
    const rules = { ...CHOSEN, readings: readingsRulesOf('aap-2017') };
    const { pressure } = result({ readings: readings(text), facts: facts({ ageMonths, sex: 'm' }) }, rules);
    expect(pressure?.needs.map(({ code }) => code)).toEqual(needs);
  });

  // Bedside handbook 3.13: at least 3 readings, all of them averaged (C060); 7.5: the rule of an irregular rhythm holds.
  test.each([
    [null, false, []],
    [true, false, ['irregular-more-readings']],
    [null, true, ['irregular-more-readings']],
    [false, true, ['irregular-more-readings']],
  ])('felt irregular %j, known to be so %j: %j', (isFeltIrregular, hasIrregularRhythm, needs) => {
    const { pressure } = result({
      readings: readings('128/76', '126/78'),
      isFeltIrregular,
      facts: facts({ hasIrregularRhythm }),
    });
    expect(pressure?.needs.map(({ code }) => code)).toEqual(needs);
  });

  test('is null with its reason for too few, and what is known is judged all the same', () => {
    const one = result({ readings: readings('184/122') });
    expect(one.pressure).toMatchObject({ systolic: null, why: [{ code: 'too-few' }] });
    expect(one.category).toMatchObject({ category: 'severe' });
    expect(one.ask.features).not.toEqual([]);
  });

  // Conventions 6: sites other than the upper arm are charted and never averaged or categorised with it.
  test('never takes a reading of another site, nor a category or a score from it', () => {
    const thigh = readings('210/130').map((one) => ({ ...one, site: 'thigh' as const }));
    const found = result({ readings: thigh });
    expect(found.pressure).toMatchObject({ systolic: null, leftOut: [{ id: 'r1', reason: 'other-site' }] });
    expect(found).toMatchObject({ category: null, earlyWarning: null, scores: [], meanPressureMmHg: null });
  });

  test('by feel alone has no diastolic, no mean and no pulse pressure, and its systolic still alarms', () => {
    // Bedside handbook 8, C091: palpated 84, mean pressure none; early-warning part 3.
    const felt = result({ readings: readings('84/P'), pulse: 120 });
    expect(felt).toMatchObject({ meanPressureMmHg: null, pulsePressureMmHg: null });
    expect(felt.category).toMatchObject({ category: null, systolicCategory: 'normal' });
    expect(felt.earlyWarning).toMatchObject({ total: null, parts: { systolic: 3 } });
    expect(felt.actNow.map(({ condition }) => condition)).toContain('very-low-pressure');
    expect(felt.recheckClass).toBe('very-low-or-unwell');
  });
});

describe('a category', () => {
  test('is not shown by a place that chose no protocol', () => {
    expect(result({ readings: readings('150/92', '148/90') }, DEFAULT_ROUND_RULES).category).toBeNull();
  });

  test('is that of the person: adult, pregnant, soon after a birth, child', () => {
    const of = (more: Partial<RoundFacts>) =>
      result({ readings: readings('142/91', '142/91'), facts: facts(more) }).category;
    expect(of({})).toMatchObject({ guideline: 'acc-aha-2025', category: 'stage-2' });
    expect(of({ isPregnant: true })).toMatchObject({ guideline: 'pregnancy', category: 'hypertension' });
    expect(of({ weeksAfterBirth: 5 })).toMatchObject({ guideline: 'pregnancy' });
    expect(of({ weeksAfterBirth: 7 })).toMatchObject({ guideline: 'acc-aha-2025' });
    expect(of({ ageMonths: 215 })).toMatchObject({ guideline: 'fourth-report-2004', category: null });
    expect(of({ ageMonths: 216 })).toMatchObject({ guideline: 'acc-aha-2025', category: 'stage-2' });
  });

  // AAP 2017 takes three readings (bedside handbook 3.10): until then a lower one never hides a raised one (our decision).
  test('without an average is that of the highest reading, and the look-again stays until the average', () => {
    const rules = { ...CHOSEN, readings: readingsRulesOf('aap-2017') };
    const girl = { facts: facts({ ageMonths: 60, sex: 'f' }), heightCm: 110 };
    const of = (...texts: string[]) => result({ ...girl, readings: readings(...texts) }, rules);
    const two = of('112/72', '98/58');
    expect(two.pressure).toMatchObject({ systolic: null });
    expect(two.category).toMatchObject({ category: 'stage-1', highestOf: 2 });
    expect(two.category?.shown).toEqual({ systolic: '112', diastolic: '72' });
    expect(two.rechecks.map(({ code }) => code)).toEqual(['recheck-abnormal-later']);
    expect(of('98/58', '112/72').category).toMatchObject({ category: 'stage-1', highestOf: 2 });
    expect(of('112/72').category).toMatchObject({ category: 'stage-1', highestOf: 1 });
    const three = of('112/72', '98/58', '96/56');
    expect(three.category).toMatchObject({ category: 'normal', highestOf: null });
    expect(three.rechecks).toEqual([]);
  });

  test('without an average is the highest by its scheme, not by its systolic alone', () => {
    const rules = { ...CHOSEN, readings: readingsRulesOf('esc-2024') };
    const of = (...texts: string[]) => result({ readings: readings(...texts) }, rules).category;
    expect(of('138/92', '139/85')).toMatchObject({ category: 'stage-2', shown: { systolic: '138' } });
    expect(of('131/79', '129/84')).toMatchObject({ category: 'stage-1', shown: { systolic: '131' } });
    // By feel 150 is at least stage 2, whatever was heard of the same height or below.
    expect(of('150/P', '128/78')).toMatchObject({ category: null, atLeast: 'stage-2' });
    expect(of('150/P', '148/78')).toMatchObject({ category: 'stage-2', shown: { systolic: '148' } });
  });

  // Bedside handbook 6.4, worked example: girl 5 y, 105 cm, 104/70 is elevated by its diastolic (93.2).
  test('of a child is by sex, age and height, and without one of them it is not classified', () => {
    const girl = facts({ ageMonths: 60, sex: 'f' });
    const taken = { readings: readings('104/70', '104/70'), heightCm: 105 };
    const { category } = result({ ...taken, facts: girl });
    expect(category).toMatchObject({ category: 'elevated', diastolicCategory: 'elevated' });
    expect(category?.centiles?.diastolic).toBeCloseTo(93.2, 1);
    for (const [missing, codes] of [
      [{ ...taken, heightCm: null, facts: girl }, ['child-height-missing']],
      [{ ...taken, facts: facts({ ageMonths: 60 }) }, ['child-sex-missing']],
      [
        { ...taken, heightCm: null, facts: facts({ ageMonths: 60 }) },
        ['child-sex-missing', 'child-height-missing'],
      ],
      // The tables begin at 24 months (bedside handbook 6.4).
      [{ ...taken, facts: facts({ ageMonths: 23, sex: 'f' }) }, ['under-age-of-scheme']],
      [{ ...taken, heightCm: 85, facts: facts({ ageMonths: 24, sex: 'f' }) }, []],
    ] as const) {
      const found = result(missing).category;
      expect(found?.why.map(({ code }) => code)).toEqual(codes);
      expect(found?.category === null).toBe(codes.length > 0);
    }
  });
});

describe('acting now', () => {
  test('holds for any reading of the round, whatever the average says', () => {
    const taken = { readings: readings('168/104', '138/88', '136/86'), facts: facts({ isPregnant: true }) };
    expect(result(taken).pressure?.systolic).toBeLessThan(160);
    expect(alerts(taken)).toEqual(['severe-in-pregnancy']);
  });

  // Bedside handbook 3.15: with both arms barred the leg is all there is; 3.16 and 3.17 as at the arm (our decision).
  test('holds for a reading at the leg, where both arms are barred', () => {
    const thigh = (text: string) => readings(text).map((one) => ({ ...one, site: 'thigh' as const }));
    expect(alerts({ readings: thigh('90/50') })).toEqual(['very-low-pressure']);
    expect(alerts({ readings: thigh('91/50') })).toEqual([]);
    expect(result({ readings: thigh('90/50') }).recheckClass).toBe('very-low-or-unwell');
    const severe = { readings: thigh('210/130') };
    expect(result(severe)).toMatchObject({ actNow: [], recheckClass: 'severe' });
    expect(result(severe).ask.features).toContain('severe-headache');
    expect(alerts({ ...severe, features: ['fit'] })).toEqual(['severe-with-fit']);
    expect(alerts({ ...severe, facts: facts({ isPregnant: true }) })).toEqual(['severe-in-pregnancy']);
  });

  // Kaelber: Ma 2016, table 1 (bedside handbook 6.4): boy of 5, height at the 5th centile, 95th systolic printed 108
  // (computed 107.99); 3.16: further than 30 above it is a crisis. Not knowing the height is no reason to be silent.
  test('of a child whose height nobody knows goes by the limits of a short one', () => {
    const boy5 = facts({ ageMonths: 60, sex: 'm' });
    expect(alerts({ readings: readings('138/60'), facts: boy5 })).toEqual(['child-crisis']);
    expect(alerts({ readings: readings('137/60'), facts: boy5 })).toEqual([]);
    expect(result({ readings: readings('137/60'), facts: boy5 }).ask.features).not.toEqual([]);
    expect(result({ readings: readings('107/60'), facts: boy5 }).ask.features).toEqual([]);
    expect(result({ readings: readings('108/60'), facts: boy5 }).ask.features).not.toEqual([]);
    expect(alerts({ readings: readings('150/90'), facts: facts({ ageMonths: 60 }) })).toEqual([
      'child-crisis',
    ]);
    expect(alerts({ readings: readings('150/90'), facts: facts({ ageMonths: 12 }) })).toEqual([
      'child-crisis',
    ]);
    // Nothing is published under 1 year (bedside handbook, appendix C); what holds of an adolescent is left.
    expect(alerts({ readings: readings('150/90'), facts: facts({ ageMonths: 11 }) })).toEqual([]);
  });

  // 115 cm typed as 155: 5.5 SD and more above the median of boys of 6 (CDC 2000).
  test('of a child is not hidden by a height that cannot be', () => {
    const boy6 = facts({ ageMonths: 72, sex: 'm' });
    const slip = { readings: readings('150/90', '150/90'), heightCm: 155, facts: boy6 };
    expect(alerts(slip)).toEqual(['child-crisis']);
    expect(result(slip).category).toMatchObject({
      category: null,
      why: [{ code: 'child-height-impossible' }],
    });
  });

  // Bedside handbook 3.16: severe and one emergency feature is an emergency; without one it is looked at again.
  test('of a severe pressure waits for the questions, which are asked once', () => {
    const severe = { readings: readings('186/112') };
    expect(result(severe)).toMatchObject({ actNow: [], recheckClass: 'severe' });
    expect(result(severe).ask.features).toContain('severe-headache');
    expect(result({ ...severe, features: [] }).ask.features).toEqual([]);
    expect(alerts({ ...severe, features: ['severe-headache'] })).toEqual(['severe-with-severe-headache']);
    expect(result({ ...severe, features: ['severe-headache'] }).recheckClass).toBe('very-low-or-unwell');
  });

  // Bedside handbook 3.16 and 6.4 (Kaelber, 95th systolic of a boy of 5 at the 5th height centile: 108).
  test('asks with the reading that raises it, which a lower one after it does not take back', () => {
    const why = (...texts: string[]) =>
      result({ readings: readings(...texts), facts: facts({ ageMonths: 60, sex: 'm' }) }).ask.why;
    const asked = (code: string, systolic: number, diastolic: number) => [
      { code, figures: { systolic, diastolic } },
    ];
    expect(why('107/60')).toEqual([]);
    expect(why('108/60', '98/58')).toEqual(asked('short-child-high-asks', 108, 60));
    expect(why('138/60', '110/60')).toEqual(asked('severe-asks', 138, 60));
    const girl = { facts: facts({ ageMonths: 60, sex: 'f' }), heightCm: 110 };
    const ofGirl = (...texts: string[]) => result({ ...girl, readings: readings(...texts) }).ask.why;
    expect(ofGirl('112/72', '98/58')).toEqual(asked('child-high-asks', 112, 72));
    expect(ofGirl('98/58')).toEqual([]);
    expect(result({ readings: readings('186/112', '181/100', '150/90') }).ask.why).toEqual(
      asked('severe-asks', 181, 100),
    );
    expect(result({ readings: readings('186/112'), features: [] }).ask.why).toEqual([]);
  });

  test('asks for pregnancy where it could be, from 10 years to under 60 (our bound)', () => {
    const asks = (more: Partial<RoundFacts>) =>
      result({ readings: readings('168/104'), facts: facts(more) }).ask.pregnancy;
    expect([119, 120, 719, 720].map((ageMonths) => asks({ ageMonths }))).toEqual([false, true, true, false]);
    expect(asks({ ageMonths: null })).toBe(true);
    expect(asks({ sex: 'm', ageMonths: 400 })).toBe(false);
    expect(asks({ isPregnant: true, ageMonths: 400 })).toBe(false);
  });

  test('in the weeks after a birth asks for a repeat from the limits of pregnancy on', () => {
    const at = (weeksAfterBirth: number) =>
      result({ readings: readings('162/100'), facts: facts({ weeksAfterBirth }) });
    expect(at(3).pressure?.needs.map(({ code }) => code)).toContain('severe-again');
    expect(at(9).pressure?.needs.map(({ code }) => code)).not.toContain('severe-again');
  });

  // Bedside handbook 5.3, W6: only the systolic of 88 scores, 3 points by itself.
  test('comes of a single part of a score, though parts are missing', () => {
    const low = { readings: readings('88/60'), pulse: 88 };
    expect(result(low).earlyWarning).toMatchObject({ total: null, atLeast: 3 });
    expect(alerts(low)).toContain('early-warning-single-part');
  });

  test('says nothing of what nobody took', () => {
    expect(result({})).toMatchObject({
      pressure: null,
      category: null,
      earlyWarning: null,
      actNow: [],
      recheckClass: null,
      rechecks: [],
    });
  });
});

describe('the score', () => {
  // Bedside handbook 5.3, W4: 2 + 1 + 0 + 1 + 2 + 0 + 1 = 7, high.
  const w4: Partial<RoundInput> = {
    readings: readings('108/70', '108/70'),
    pulse: 112,
    breaths: 22,
    oxygen: { percent: 94, onOxygen: false, isDoubtful: false },
    consciousness: 'alert',
    temperature: 38.4,
  };

  test('is made of the whole round', () => {
    expect(result(w4).earlyWarning).toMatchObject({ total: 7, band: 'high' });
    expect(alerts(w4)).toEqual(['early-warning-total-high']);
  });

  // Bedside handbook 4.2 (common practice): a pulse of the oximeter more than 10 from the felt one; alerts stay.
  test('says that it goes by a saturation that is not to be relied on, and alarms as before', () => {
    const doubtful = { ...w4, oxygen: { percent: 91, onOxygen: false, isDoubtful: true } };
    const { earlyWarning } = result(doubtful);
    expect(earlyWarning?.flags).toEqual([{ code: 'saturation-doubtful', figures: { points: 3 } }]);
    const sure = { ...w4, oxygen: { percent: 91, onOxygen: false, isDoubtful: false } };
    expect(result(sure).earlyWarning?.flags).toEqual([]);
    expect(result(doubtful).actNow).toEqual(result(sure).actNow);
    expect(alerts(doubtful)).toContain('low-oxygen');
  });

  test('and every other one is shown only by a place that chose it, and alarms all the same', () => {
    const shown = result(w4, { ...CHOSEN, score: DEFAULT_ROUND_RULES.score });
    expect(shown).toMatchObject({
      earlyWarning: null,
      meanPressureMmHg: null,
      pulsePressureMmHg: null,
      scores: [],
    });
    expect(shown.actNow.map(({ condition }) => condition)).toEqual(['early-warning-total-high']);
  });

  // Bedside handbook 5.3: W3 (shock indices), W8 (sepsis screen 2, positive), W12 (7 y, 118 and 104: 1.135, raised).
  test('of every kind that was chosen is made of the round', () => {
    const all = { ...CHOSEN.score, shockIndex: true, sepsisScreen: true, paediatricShockIndex: true };
    const of = (more: Partial<RoundInput>) =>
      result(more, { ...CHOSEN, score: all }).scores.map(({ of: id, value, band }) => [
        id,
        value?.toFixed(2),
        band,
      ]);
    const w3 = { readings: readings('90/60', '90/60'), pulse: 110, facts: facts({ ageMonths: 840 }) };
    expect(of(w3)).toEqual([
      ['sepsis-screen', undefined, null],
      ['shock-index', '1.22', 'high'],
      ['modified-shock-index', '1.57', 'high'],
      ['age-shock-index', '85.56', 'high'],
    ]);
    const w8 = { readings: readings('98/60', '98/60'), breaths: 24, consciousness: 'alert' } as const;
    expect(of(w8)).toContainEqual(['sepsis-screen', '2.00', 'positive']);
    const w12 = { readings: readings('104/60', '104/60'), pulse: 118, facts: facts({ ageMonths: 90 }) };
    expect(of(w12)).toEqual([['paediatric-shock-index', '1.13', 'high']]);
  });

  // Bedside handbook 5.2: from 16 years on, not in pregnancy, not with a spinal injury.
  test('is not for a child under 16, in pregnancy, or with a spinal injury', () => {
    for (const more of [{ ageMonths: 191 }, { isPregnant: true }, { hasSpinalInjury: true }])
      expect(result({ ...w4, facts: facts(more) }).earlyWarning).toBeNull();
    expect(result({ ...w4, facts: facts({ ageMonths: 192 }) }).earlyWarning?.total).toBe(7);
  });
});

describe('looking again', () => {
  // Bedside handbook 3.15: repeat after 1 to 2 minutes, then again after 10 to 15 (common practice).
  test('of an abnormal pressure is soon and later; once repeated, only later', () => {
    const codes = (...texts: string[]) =>
      result({ readings: readings(...texts) }).rechecks.map(({ code }) => code);
    expect(codes('150/92')).toEqual(['recheck-abnormal-soon', 'recheck-abnormal-later']);
    expect(codes('150/92', '148/92')).toEqual(['recheck-abnormal-later']);
    expect(codes('118/72', '116/72')).toEqual([]);
  });

  // Bedside handbook 3.15 and 3.17: at 90 and under at once; the person who is unwell too. At the limit and beside it.
  test.each<[string, Partial<RoundInput>, string[]]>([
    ['90/58', {}, ['again-at-once']],
    ['91/58', {}, ['more-readings']],
    ['118/72', { unwell: true }, ['again-at-once']],
    ['118/72', { unwell: false }, ['more-readings']],
  ])('%s with %j: the next reading is asked for by %j', (text, more, codes) => {
    const { pressure } = result({ readings: readings(text), ...more });
    expect(pressure?.needs.map(({ code }) => code)).toEqual(codes);
  });

  // Bedside handbook 3.16: severe is repeated after 5 min. A lower other arm says nothing of the severe one.
  test('of a severe arm is not settled by the other arm, and is by a repeat of that one', () => {
    const arm = (side: 'right' | 'left', text: string) => ({ ...(readings(text)[0] as JudgedReading), side });
    const both = [arm('right', '188/112'), arm('left', '152/94')];
    expect(result({ readings: both }).recheckClass).toBe('severe');
    expect(result({ readings: [...both, arm('right', '166/98')] }).recheckClass).toBe('abnormal');
    expect(result({ readings: [arm('right', '88/50'), arm('left', '118/70')] }).recheckClass).toBe(
      'very-low-or-unwell',
    );
  });

  test('of an abnormal pressure was repeated, however many readings the guideline takes', () => {
    const codes = (...texts: string[]) =>
      result(
        { readings: readings(...texts) },
        { ...CHOSEN, readings: readingsRulesOf('nice-ng136') },
      ).rechecks.map(({ code }) => code);
    expect(codes('150/92', '148/92')).toEqual(['recheck-abnormal-later']);
    // By feel is no repeat of a pressure by ear.
    expect(codes('150/92', '148/P')).toEqual(['recheck-abnormal-soon', 'recheck-abnormal-later']);
  });
});

describe('both arms', () => {
  // Bedside handbook 8, C061 to C063 by the rule of ESC: more than 10 mmHg, repeated.
  test('are told apart by readings of the arms, never by one standing up', () => {
    const arm = (id: string, side: 'right' | 'left', systolic: number): JudgedReading => ({
      ...reading({ id, side, systolic }),
      irregular: null,
    });
    const twice = [
      arm('a', 'right', 128),
      arm('b', 'left', 140),
      arm('c', 'right', 126),
      arm('d', 'left', 138),
    ];
    expect(result({ readings: twice.slice(0, 2) }).arms).toMatchObject({
      systolicMmHg: -12,
      isRepeatNeeded: true,
    });
    expect(result({ readings: twice }).arms).toMatchObject({ systolicMmHg: -12, higherArm: 'left' });
    const stood = twice.map((one) => ({ ...one, posture: 'stand' as const }));
    expect(result({ readings: stood }).arms).toBeNull();
  });
});

describe('lying and standing', () => {
  const at = (
    id: string,
    posture: 'lie' | 'sit' | 'stand',
    text: string,
    pulse: number,
    minutes: number | null,
  ) => ({
    ...(readings(text)[0] as JudgedReading),
    id,
    posture,
    pulsePerMinute: pulse,
    uprightMinutes: minutes,
  });

  // Bedside handbook 5.3, W10: lying 148/84 and 68, at 3 min 112/70 and 76: a fall of 36, ratio 0.222.
  test('are held against each other, by the minutes on the feet', () => {
    const { standing } = result({
      readings: [at('a', 'lie', '148/84', 68, null), at('b', 'stand', '112/70', 76, 3)],
      isFeltIrregular: false,
    });
    expect(standing).toMatchObject({ positive: true, falls: [{ minutes: 3, systolicFall: 36 }] });
  });

  // The pulse of a round is one for all its readings until it is counted anew: no rise without a count on the feet.
  test.each([
    ['112/70', 68, null, ['no-pulse-with-fall']],
    ['146/84', 68, null, []],
    ['146/84', 69, 1, ['no-systolic-fall']],
  ])('%s with a pulse of %d, after 68 lying: the rise is %s, and %j', (text, pulse, rise, why) => {
    const { standing } = result({
      readings: [at('a', 'lie', '148/84', 68, null), at('b', 'stand', text, pulse, 3)],
    });
    expect(standing?.pulseRise).toBe(rise);
    expect(standing?.why.map(({ code }) => code)).toEqual(why);
  });

  // Bedside handbook 3.14 has no number for it: how a person feels on their feet is told, whatever the numbers.
  test('tell how the person felt on their feet, where they were asked', () => {
    const codes = (isUnwellUpright?: boolean | null) =>
      result({
        readings: [
          at('a', 'lie', '120/80', 68, null),
          {
            ...at('b', 'stand', '118/80', 70, 1),
            ...(isUnwellUpright === undefined ? {} : { isUnwellUpright }),
          },
        ],
      }).standing?.flags.map(({ code }) => code);
    expect(codes(true)).toContain('symptoms-on-standing');
    for (const none of [false, null, undefined]) expect(codes(none)).not.toContain('symptoms-on-standing');
  });

  // Bedside handbook 3.14: stop, lie down. A pressure at rest is what was read before; the score is of the person now (5.2: a
  // systolic of 90 and under is 3 points).
  test('by which somebody was laid down end the readings at rest, and the score goes by the newest', () => {
    const nice = { ...CHOSEN, readings: readingsRulesOf('nice-ng136') };
    const lain = [at('c', 'lie', '86/50', 90, null), at('d', 'lie', '88/52', 90, null)];
    const sat = [at('a', 'sit', '128/76', 68, null), at('b', 'sit', '126/74', 68, null)];
    const readings = [...sat, at('up', 'stand', '84/50', 96, 1), ...lain];
    const found = result({ readings }, nice);
    expect(found.pressure).toMatchObject({ systolic: 126, used: ['a', 'b'].slice(1) });
    expect(found.earlyWarning?.parts.systolic).toBe(3);
    for (const before of ['round-3', 'round-4'] as const) {
      expect(result({ readings }, nice, before).earlyWarning?.parts.systolic).toBe(0);
      expect(
        result({ readings: [sat[0] as JudgedReading, ...readings.slice(2)] }, nice, before).pressure?.leftOut,
      ).not.toContainEqual(expect.objectContaining({ reason: 'laid-down' }));
    }
    const better = [...readings.slice(0, 3), at('c', 'lie', '96/60', 90, null)];
    expect(result({ readings: better }, nice).earlyWarning?.parts.systolic).toBe(2);
    const supine = result({ readings: [at('a', 'lie', '128/76', 68, null), ...readings.slice(2)] });
    expect(supine.pressure).toMatchObject({ systolic: null, posture: 'lie' });
    expect(supine.pressure?.leftOut).toEqual([
      { id: 'up', reason: 'standing' },
      { id: 'c', reason: 'laid-down' },
      { id: 'd', reason: 'laid-down' },
    ]);
  });

  // ESC 2024: 140/90 is hypertension, 120/70 elevated (bedside handbook 6.1). What is no pressure at rest gives none.
  test('by which somebody was laid down give no category while something was read at rest', () => {
    const esc: RoundRules = {
      ...CHOSEN,
      readings: readingsRulesOf('esc-2024'),
      category: { ...CHOSEN.category, adultScheme: 'esc-2024' },
    };
    const lain = at('c', 'lie', '158/98', 72, null);
    const up = { ...at('up', 'stand', '112/70', 80, 1), isUnwellUpright: true };
    const readings = [at('a', 'sit', '128/76', 68, null), up, lain];
    const found = result({ readings }, esc);
    expect(found.category).toMatchObject({ category: 'elevated', highestOf: 1 });
    expect(found.rechecks.map(({ code }) => code)).not.toContain('recheck-abnormal-soon');
    expect(result({ readings }, esc, 'round-5').category).toMatchObject({ category: 'hypertension' });
    // With nothing read at rest it is what there is.
    expect(result({ readings: [up, lain] }, esc).category).toMatchObject({ category: 'hypertension' });
  });

  test('one by feel before is none at rest: what is read lying is averaged, as it was not under `round-5`', () => {
    const nice = { ...CHOSEN, readings: readingsRulesOf('nice-ng136') };
    const felt = { ...at('a', 'sit', '122/80', 68, null), method: 'palpation', diastolic: null } as const;
    const readings = [felt, at('up', 'stand', '84/50', 96, 1), at('c', 'lie', '112/72', 80, null)];
    expect(result({ readings }, nice).pressure).toMatchObject({ systolic: 112, used: ['c'], posture: 'lie' });
    expect(result({ readings }, nice, 'round-5').pressure).toMatchObject({ systolic: null, posture: 'sit' });
  });

  // Bedside handbook 3.15: unwell is looked at again at once; a reading lying after it settles it. Earlier versions knew it not.
  test('of somebody who felt unwell on their feet is due again at once, until one is taken off them', () => {
    const stood = { ...at('b', 'stand', '112/72', 70, 1), isUnwellUpright: true };
    const taken = [at('a', 'lie', '116/72', 68, null), stood];
    const due = (more: readonly JudgedReading[], rule?: RoundRuleId) => {
      const { recheckClass, rechecks } = result({ readings: [...taken, ...more] }, CHOSEN, rule);
      return [recheckClass, ...rechecks.map(({ code }) => code)];
    };
    expect(due([])).toEqual(['very-low-or-unwell', 'recheck-at-once']);
    expect(due([at('c', 'lie', '118/72', 68, null)])).toEqual([null]);
    for (const before of ['round-3', 'round-4'] as const) expect(due([], before)).toEqual([null]);
  });

  // Bedside handbook 3.14: the same arm. Right 148 lying and left 126 standing may be two arms and no fall.
  test('are of one arm: the other one is no rest for it', () => {
    const left = { ...at('b', 'stand', '126/80', 76, 3), side: 'left' as const };
    const lying = [at('a', 'lie', '148/84', 68, null)];
    expect(result({ readings: [...lying, left] }).standing).toBeNull();
    const leftLying = { ...at('c', 'lie', '130/82', 68, null), side: 'left' as const };
    const both = result({ readings: [leftLying, ...lying, left, at('d', 'stand', '100/60', 90, 5)] });
    expect(both.standing?.falls).toMatchObject([{ minutes: 3, systolicFall: 4 }]);
  });

  test('are none without a reading before, or without the minutes', () => {
    expect(result({ readings: [at('b', 'stand', '112/70', 76, 3)] }).standing).toBeNull();
    const unknown = [at('a', 'lie', '148/84', 68, null), at('b', 'stand', '112/70', 76, null)];
    expect(result({ readings: unknown }).standing).toBeNull();
  });

  test('never enter the average of the round with each other', () => {
    const { pressure } = result({
      readings: [
        at('a', 'sit', '130/80', 70, null),
        at('b', 'sit', '128/78', 70, null),
        at('c', 'stand', '100/60', 90, 1),
      ],
    });
    expect(pressure).toMatchObject({
      systolic: 129,
      diastolic: 79,
      leftOut: [{ id: 'c', reason: 'standing' }],
    });
  });
});
