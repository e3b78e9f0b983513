import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { actNow, featuresToAsk } from './actNow.js';
import { ACT_NOW_CONDITIONS } from './actNowConditions.js';
import {
  ACT_NOW_IDS,
  type ActNowId,
  type ActNowRules,
  DEFAULT_ACT_NOW_ORIGINS,
  DEFAULT_ACT_NOW_RULES as RULES,
} from './actNowRules.js';
import { EMERGENCY_FEATURES, type KnownSigns, NOTHING_KNOWN } from './knownSigns.js';

function alerts(known: Partial<KnownSigns>, rules: ActNowRules = RULES): ActNowId[] {
  return actNow({ ...NOTHING_KNOWN, ...known }, rules).map(({ condition }) => condition);
}

const P95 = { systolic: 110, diastolic: 70 };

// Each limit at itself and on both sides. Sources: bedside handbook 1.7, 3.16, 3.17, 4.2, 5.2 and check values of 8.
describe.each<[string, [Partial<KnownSigns>, ActNowId[]][]]>([
  [
    'severe with a feature: at and over 180 or 120 (NICE; C071)',
    [
      [{ systolic: 179, diastolic: 119, features: ['fit'] }, []],
      [{ systolic: 180, diastolic: 100, features: ['fit'] }, ['severe-with-fit']],
      [{ systolic: 178, diastolic: 120, features: ['fit'] }, ['severe-with-fit']],
      [{ systolic: 184, diastolic: null, features: ['fit'] }, ['severe-with-fit']],
      [{ systolic: null, diastolic: 124, features: ['fit'] }, ['severe-with-fit']],
      [{ systolic: 184, diastolic: 124, features: [] }, []],
      [{ systolic: 184, diastolic: 124, features: null }, []],
    ],
  ],
  [
    'pregnancy: at and over 160 or 110 (C074), and up to six weeks after',
    [
      [{ systolic: 159, diastolic: 109, pregnant: true }, []],
      [{ systolic: 160, diastolic: 100, pregnant: true }, ['severe-in-pregnancy']],
      [{ systolic: 150, diastolic: 110, pregnant: true }, ['severe-in-pregnancy']],
      [{ systolic: 164, diastolic: 112, pregnant: false }, []],
      [{ systolic: 164, diastolic: 112, weeksAfterBirth: 0 }, ['severe-after-birth']],
      [{ systolic: 164, diastolic: 112, weeksAfterBirth: 6 }, ['severe-after-birth']],
      [{ systolic: 164, diastolic: 112, weeksAfterBirth: 7 }, []],
      [{ systolic: 158, diastolic: 108, weeksAfterBirth: 2 }, []],
    ],
  ],
  [
    'crisis of a child: more than 30 above the 95th centile, or over 180/120',
    [
      [{ systolic: 140, diastolic: 60, ageMonths: 60, p95: P95 }, []],
      [{ systolic: 141, diastolic: 60, ageMonths: 60, p95: P95 }, ['child-crisis']],
      [{ systolic: 100, diastolic: 100, ageMonths: 60, p95: P95 }, []],
      [{ systolic: 100, diastolic: 101, ageMonths: 60, p95: P95 }, ['child-crisis']],
      [{ systolic: 180, diastolic: 120, ageMonths: 170 }, []],
      [{ systolic: 181, diastolic: 90, ageMonths: 170 }, ['child-crisis']],
      [{ systolic: 150, diastolic: 121, ageMonths: 170 }, ['child-crisis']],
      [{ systolic: 181, diastolic: 90, ageMonths: 60 }, ['child-crisis']],
      [{ systolic: 181, diastolic: 90, ageMonths: 215 }, ['child-crisis']],
      [{ systolic: 181, diastolic: 90, ageMonths: 216 }, []],
      [{ systolic: 141, diastolic: 60, p95: P95 }, ['child-crisis']],
    ],
  ],
  [
    'a child from its 95th centile on with a feature',
    [
      [{ systolic: 109, diastolic: 69, ageMonths: 60, p95: P95, features: ['fit'] }, []],
      [
        { systolic: 110, diastolic: 60, ageMonths: 60, p95: P95, features: ['fit'] },
        ['child-high-with-feature'],
      ],
      [{ diastolic: 70, ageMonths: 60, p95: P95, features: ['fit'] }, ['child-high-with-feature']],
      [{ systolic: 112, diastolic: 72, ageMonths: 60, p95: P95, features: [] }, []],
    ],
  ],
  [
    'low pressure of a child (C075 to C077)',
    [
      [{ systolic: 59, ageMonths: 0 }, ['child-hypotension']],
      [{ systolic: 60, ageMonths: 0 }, []],
      [{ systolic: 69, ageMonths: 1 }, ['child-hypotension']],
      [{ systolic: 69, ageMonths: 6 }, ['child-hypotension']],
      [{ systolic: 70, ageMonths: 6 }, []],
      [{ systolic: 70, ageMonths: 11 }, []],
      [{ systolic: 71, ageMonths: 12 }, ['child-hypotension']],
      [{ systolic: 72, ageMonths: 12 }, []],
      [{ systolic: 77, ageMonths: 48 }, ['child-hypotension']],
      [{ systolic: 78, ageMonths: 59 }, []],
      [{ systolic: 89, ageMonths: 120 }, ['child-hypotension']],
      [{ systolic: 90, ageMonths: 131 }, []],
      [{ systolic: 89, ageMonths: 132 }, ['child-hypotension']],
      [{ systolic: 90, ageMonths: 191 }, []],
    ],
  ],
  [
    'very low pressure of an adult: 90 or under (5.2)',
    [
      [{ systolic: 90 }, ['very-low-pressure']],
      [{ systolic: 91 }, []],
      [{ systolic: 90, ageMonths: 192 }, ['very-low-pressure']],
      [{ systolic: 90, pregnant: true }, ['very-low-pressure']],
      [{ systolic: 84, diastolic: null, pulsePerMinute: 120 }, ['very-low-pressure']], // C091, palpated
    ],
  ],
  [
    'pulse: 40 or under, 131 or over (5.2); a child under 60 (1.7)',
    [
      [{ pulsePerMinute: 40 }, ['very-slow-pulse']],
      [{ pulsePerMinute: 41 }, []],
      [{ pulsePerMinute: 0 }, ['very-slow-pulse']],
      [{ pulsePerMinute: 130 }, []],
      [{ pulsePerMinute: 131 }, ['very-fast-pulse']],
      [{ pulsePerMinute: 140, ageMonths: 6 }, []],
      [{ pulsePerMinute: 131, ageMonths: 191 }, []],
      [{ pulsePerMinute: 131, ageMonths: 192 }, ['very-fast-pulse']],
      [{ pulsePerMinute: 59, ageMonths: 6 }, ['child-slow-pulse']],
      [{ pulsePerMinute: 60, ageMonths: 6 }, []],
      [{ pulsePerMinute: 59, ageMonths: 155 }, ['child-slow-pulse']],
      [{ pulsePerMinute: 59, ageMonths: 156 }, []],
      [{ pulsePerMinute: 40, ageMonths: 156 }, ['very-slow-pulse']],
    ],
  ],
  [
    'breathing: 8 or under, 25 or over (C026, C027)',
    [
      [{ breathsPerMinute: 8 }, ['very-slow-breathing']],
      [{ breathsPerMinute: 9 }, []],
      [{ breathsPerMinute: 0 }, ['very-slow-breathing']],
      [{ breathsPerMinute: 8, ageMonths: 24 }, ['very-slow-breathing']],
      [{ breathsPerMinute: 24 }, []],
      [{ breathsPerMinute: 25 }, ['very-fast-breathing']],
      [{ breathsPerMinute: 34, ageMonths: 12 }, []],
    ],
  ],
  [
    'oxygen: 91 or under on scale 1, 83 or under on scale 2 (5.2), under 92 for a child (4.2)',
    [
      [{ percentOxygen: 91 }, ['low-oxygen']],
      [{ percentOxygen: 92 }, []],
      [{ percentOxygen: 91, scale: 1 }, ['low-oxygen']],
      [{ percentOxygen: 91, scale: 2 }, []],
      [{ percentOxygen: 84, scale: 2 }, []],
      [{ percentOxygen: 83, scale: 2 }, ['low-oxygen-scale-2']],
      [{ percentOxygen: 91, ageMonths: 60 }, ['child-low-oxygen']],
      [{ percentOxygen: 92, ageMonths: 60 }, []],
      [{ percentOxygen: 86, ageMonths: 60, scale: 2 }, ['child-low-oxygen']],
    ],
  ],
  [
    'consciousness (4.3): unresponsive, and anything but alert',
    [
      [{ consciousness: 'unresponsive' }, ['unresponsive']],
      [{ consciousness: 'confusion' }, ['consciousness-changed']],
      [{ consciousness: 'voice' }, ['consciousness-changed']],
      [{ consciousness: 'pain' }, ['consciousness-changed']],
      [{ consciousness: 'alert' }, []],
      [{ consciousness: 'unresponsive', ageMonths: 20, pregnant: true }, ['unresponsive']],
    ],
  ],
  [
    'early-warning total: 7 and over, 5 and 6, and what is known of a partial one (5.2)',
    [
      [{ earlyWarning: { total: 4, atLeast: 4, parts: {} } }, []],
      [{ earlyWarning: { total: 5, atLeast: 5, parts: {} } }, ['early-warning-total-medium']],
      [{ earlyWarning: { total: 6, atLeast: 6, parts: {} } }, ['early-warning-total-medium']],
      [{ earlyWarning: { total: 7, atLeast: 7, parts: {} } }, ['early-warning-total-high']],
      [{ earlyWarning: { total: null, atLeast: 7, parts: {} } }, ['early-warning-total-high']],
      [{ earlyWarning: { total: null, atLeast: 4, parts: {} } }, []],
      [
        { earlyWarning: { total: 3, atLeast: 3, parts: { pulse: 3, systolic: 0 } } },
        ['early-warning-single-part'],
      ],
      [
        { earlyWarning: { total: null, atLeast: 3, parts: { pulse: 3, systolic: null } } },
        ['early-warning-single-part'],
      ],
      [{ earlyWarning: { total: 4, atLeast: 4, parts: { pulse: 2, systolic: 2 } } }, []],
    ],
  ],
])('%s', (_what, rows) => {
  test.each(rows)('%j', (known, expected) => {
    expect(alerts(known)).toEqual(expected);
  });
});

test('each emergency feature makes a severe pressure an alert of its own, and all of them at once', () => {
  // Bedside handbook 3.16: chest or back pain, breathlessness, weakness, numbness, speech or vision change, severe
  // headache, confusion, fit, little urine; pregnancy is a condition by itself.
  expect(EMERGENCY_FEATURES).toHaveLength(9);
  for (const feature of EMERGENCY_FEATURES) {
    expect(alerts({ systolic: 186, diastolic: 112, features: [feature] })).toEqual([
      `severe-with-${feature}`,
    ]);
  }
  expect(alerts({ systolic: 186, features: EMERGENCY_FEATURES })).toHaveLength(9);
});

// Conventions 4: rates are shown whole, half up; what is shown and what alerts do not disagree. Both sides of the half.
test.each([
  [{ breathsPerMinute: 8.4, ageMonths: 24 }, ['very-slow-breathing']],
  [{ breathsPerMinute: 8.5, ageMonths: 24 }, []],
  [{ pulsePerMinute: 130.5, pregnant: true }, ['very-fast-pulse']],
  [{ pulsePerMinute: 130.4, pregnant: true }, []],
  [{ pulsePerMinute: 59.6, ageMonths: 60 }, ['child-slow-pulse']],
])('a rate alerts as it is shown, or as it is: %j', (known, expected) => {
  expect(alerts(known)).toEqual(expected);
});

test('new confusion that was found is not asked for a second time', () => {
  expect(alerts({ systolic: 186, consciousness: 'confusion', features: null })).toEqual([
    'severe-with-confusion',
    'consciousness-changed',
  ]);
});

describe('what is not known', () => {
  /** Somebody for whom every single condition of an adult holds, or of a child. */
  const anything: fc.Arbitrary<KnownSigns> = fc.record({
    systolic: fc.option(fc.integer({ min: 50, max: 240 })),
    diastolic: fc.option(fc.integer({ min: 30, max: 140 })),
    ageMonths: fc.option(fc.integer({ min: 0, max: 1000 })),
    pregnant: fc.option(fc.boolean()),
    isUnwellUpright: fc.option(fc.boolean()),
    weeksAfterBirth: fc.option(fc.integer({ min: 0, max: 12 })),
    pulsePerMinute: fc.option(fc.integer({ min: 0, max: 220 })),
    breathsPerMinute: fc.option(fc.integer({ min: 0, max: 60 })),
    percentOxygen: fc.option(fc.integer({ min: 60, max: 100 })),
    scale: fc.constantFrom(1, 2, null),
    consciousness: fc.constantFrom('alert', 'confusion', 'voice', 'pain', 'unresponsive', null),
    features: fc.option(fc.subarray([...EMERGENCY_FEATURES])),
    earlyWarning: fc.option(
      fc.record({
        total: fc.constant(null),
        atLeast: fc.integer({ min: 0, max: 20 }),
        parts: fc.record({ pulse: fc.option(fc.integer({ min: 0, max: 3 })) }),
      }),
    ),
    p95: fc.option(
      fc.record({
        systolic: fc.integer({ min: 90, max: 140 }),
        diastolic: fc.integer({ min: 50, max: 90 }),
      }),
    ),
  });

  test('a part that is missing never hides an alert that does not need it', () => {
    const parts = Object.keys(NOTHING_KNOWN) as (keyof KnownSigns)[];
    fc.assert(
      fc.property(anything, fc.constantFrom(...parts), (known, gone) => {
        const before = alerts(known);
        const after = alerts({ ...known, [gone]: null });
        const needing = ACT_NOW_CONDITIONS.filter(({ needs }) => needs.includes(gone)).map(({ id }) => id);
        for (const id of before) if (!needing.includes(id)) expect(after).toContain(id);
      }),
      { numRuns: 2000 },
    );
  });

  test('one number of a pressure alerts without the other', () => {
    fc.assert(
      fc.property(anything, (known) => {
        const whole = alerts(known);
        const each = [...alerts({ ...known, systolic: null }), ...alerts({ ...known, diastolic: null })];
        for (const id of whole) expect(each).toContain(id);
      }),
    );
  });

  test('nothing known is no alert, and no alert is made of a blank', () => {
    expect(alerts({})).toEqual([]);
  });

  test('an age that is not known counts as adult', () => {
    expect(alerts({ pulsePerMinute: 150, breathsPerMinute: 30, percentOxygen: 90, systolic: 84 })).toEqual([
      'very-low-pressure',
      'very-fast-pulse',
      'very-fast-breathing',
      'low-oxygen',
    ]);
  });
});

describe('the local protocol', () => {
  test('a condition that is switched off does not alert, and every other one does', () => {
    const known = { systolic: 84, pulsePerMinute: 150 };
    const rules = { ...RULES, switchedOff: ['very-low-pressure'] as const };
    expect(alerts(known, rules)).toEqual(['very-fast-pulse']);
    expect(RULES.switchedOff).toEqual([]);
  });

  test('every condition can be switched off by its name, and each has one', () => {
    expect(ACT_NOW_CONDITIONS.map(({ id }) => id)).toEqual(ACT_NOW_IDS);
    expect(new Set(ACT_NOW_IDS).size).toBe(ACT_NOW_IDS.length);
  });

  test('a limit is the place’s own', () => {
    // Bedside handbook 8, C072 and C073: by ACC/AHA 180 is not severe, 181 is.
    const over = { severeSystolic: { comparison: '>', limit: 180 } } as const;
    const acc = { ...RULES, ...over, severeDiastolic: { comparison: '>', limit: 120 } as const };
    expect(alerts({ systolic: 180, diastolic: 118, features: ['fit'] }, acc)).toEqual([]);
    expect(alerts({ systolic: 181, diastolic: 90, features: ['fit'] }, acc)).toEqual(['severe-with-fit']);
    expect(alerts({ systolic: 160, diastolic: 120, features: ['fit'] }, acc)).toEqual([]);
    expect(alerts({ pulsePerMinute: 121 }, { ...RULES, veryFastPulsePerMinute: 120 })).toEqual([
      'very-fast-pulse',
    ]);
  });
});

describe('where an alert comes from', () => {
  const alertOf = (known: Partial<KnownSigns>, origins = DEFAULT_ACT_NOW_ORIGINS) =>
    actNow({ ...NOTHING_KNOWN, ...known }, RULES, origins)[0];

  test('what was read in no source asks to be confirmed locally, and alerts all the same', () => {
    // Bedside handbook 3.16: the features, pregnancy and the crisis of a child are from memory, to lie down unwell is practice (3.14); 3.17 and 5.2 are not.
    const toConfirm = ACT_NOW_CONDITIONS.map(({ id }) => id).filter((id) =>
      /^severe-|^child-crisis$|^child-high|^unwell-upright$/.test(id),
    );
    const seen = new Map(
      [
        ...EMERGENCY_FEATURES.map((feature) => ({ systolic: 186, features: [feature] })),
        { systolic: 166, pregnant: true },
        { systolic: 166, weeksAfterBirth: 2 },
        { systolic: 186, ageMonths: 170 },
        { systolic: 115, ageMonths: 60, p95: P95, features: ['fit'] as const },
        { systolic: 60, ageMonths: 60 },
        { systolic: 80 },
        { systolic: 112, isUnwellUpright: true },
        { pulsePerMinute: 30 },
        { pulsePerMinute: 50, ageMonths: 60 },
        { pulsePerMinute: 140 },
        { breathsPerMinute: 6 },
        { breathsPerMinute: 30 },
        { percentOxygen: 80 },
        { percentOxygen: 80, scale: 2 as const },
        { percentOxygen: 80, ageMonths: 60 },
        { consciousness: 'unresponsive' as const },
        { consciousness: 'voice' as const },
        { earlyWarning: { total: 8, atLeast: 8, parts: {} } },
        { earlyWarning: { total: 5, atLeast: 5, parts: {} } },
        { earlyWarning: { total: 3, atLeast: 3, parts: { pulse: 3 } } },
      ].map((known) => {
        const alert = alertOf(known);
        return [alert?.condition, alert] as const;
      }),
    );
    expect([...seen.keys()].sort()).toEqual([...ACT_NOW_IDS].sort());
    for (const [id, alert] of seen) {
      expect([id, alert?.confirmLocally]).toEqual([id, toConfirm.some((one) => one === id)]);
      expect(alert?.source).not.toBe('');
    }
  });

  test('a limit that the place set itself is confirmed by it', () => {
    const local = { source: 'local', sure: 'decision', isLocal: true } as const;
    const origins = { ...DEFAULT_ACT_NOW_ORIGINS, pregnancySystolic: local, pregnancyDiastolic: local };
    expect(alertOf({ systolic: 166, pregnant: true }, origins)).toMatchObject({
      source: 'local',
      sure: 'decision',
      confirmLocally: false,
    });
    const half = { ...DEFAULT_ACT_NOW_ORIGINS, pregnancySystolic: local };
    expect(alertOf({ systolic: 166, pregnant: true }, half)).toMatchObject({
      sure: 'memory',
      confirmLocally: true,
    });
  });

  test('the figures are those that the sentence needs, with their units', () => {
    expect(alertOf({ pulsePerMinute: 38 })?.figures).toEqual({
      pulsePerMinute: 38,
      verySlowPulsePerMinute: 40,
    });
    expect(alertOf({ systolic: 186, features: ['fit'] })?.figures).toEqual({ systolic: 186 });
    expect(alertOf({ systolic: 77, ageMonths: 48 })?.figures).toEqual({ systolic: 77, lowSystolic: 78 });
    expect(alertOf({ earlyWarning: { total: null, atLeast: 8, parts: {} } })?.figures).toEqual({
      atLeast: 8,
    });
    expect(
      alertOf({ earlyWarning: { total: 3, atLeast: 3, parts: { pulse: 3, systolic: 0 } } })?.figures,
    ).toEqual({ pulse: 3 });
  });
});

describe('what to ask', () => {
  const ask = (known: Partial<KnownSigns>) => featuresToAsk({ ...NOTHING_KNOWN, ...known }, RULES);

  test('a severe pressure asks for every feature, once', () => {
    // Bedside handbook 3.16: asked when 180 or 120 is reached.
    expect(ask({ systolic: 180 }).features).toEqual(EMERGENCY_FEATURES);
    expect(ask({ diastolic: 120 }).features).toEqual(EMERGENCY_FEATURES);
    expect(ask({ systolic: 179, diastolic: 119 }).features).toEqual([]);
    expect(ask({ systolic: 186, features: [] }).features).toEqual([]);
  });

  test('a child is asked from its 95th centile on', () => {
    expect(ask({ systolic: 110, ageMonths: 60, p95: P95 }).features).toEqual(EMERGENCY_FEATURES);
    expect(ask({ systolic: 109, ageMonths: 60, p95: P95 }).features).toEqual([]);
  });

  test('pregnancy is asked where it is not known and would change what to do', () => {
    expect(ask({ systolic: 160 }).pregnancy).toBe(true);
    expect(ask({ systolic: 159, diastolic: 109 }).pregnancy).toBe(false);
    expect(ask({ diastolic: 110 }).pregnancy).toBe(true);
    expect(ask({ systolic: 160, pregnant: false }).pregnancy).toBe(false);
    expect(ask({ systolic: 160, pregnant: true }).pregnancy).toBe(false);
    expect(ask({ systolic: 160, weeksAfterBirth: 6 }).pregnancy).toBe(false);
    expect(ask({ systolic: 160, weeksAfterBirth: 7 }).pregnancy).toBe(true);
  });
});
