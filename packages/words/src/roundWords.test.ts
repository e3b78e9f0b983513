import {
  ACT_NOW_IDS,
  type ActNowId,
  AVERAGING_RULE_IDS,
  actNow,
  armDifference,
  averageReadings,
  DEFAULT_ACT_NOW_RULES,
  DEFAULT_ARMS_RULES,
  DEFAULT_RECHECK_RULES,
  EMERGENCY_FEATURES,
  type EmergencyFeature,
  type Flag,
  type KnownSigns,
  type LeftOutReason,
  listPresets,
  NOTHING_KNOWN,
  type NotedReading,
  RECHECK_CLASSES,
  readingsRulesOf,
  recheckAfter,
  recheckFlag,
  rechecksBeside,
  roundNotes,
  severeLimits,
} from '@evenfall/clinical';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { english } from './english/index.js';
import { loadWords } from './loadWords.js';
import { wordsFor } from './words.js';

const words = wordsFor('en');

function said(flag: Flag): string {
  const sentence = words.detail(flag);
  expect(sentence).not.toMatch(/no sentence for/);
  expect(sentence).toMatch(/^[A-Z0-9].*\.$/);
  return sentence;
}

const alertsOf = (known: Partial<KnownSigns>) =>
  actNow({ ...NOTHING_KNOWN, ...known }, DEFAULT_ACT_NOW_RULES).map(({ condition: code, figures }) => ({
    code,
    figures,
  }));

describe('every code of a round has a sentence', () => {
  test('readings of every guideline', () => {
    const readings = fc.array(
      fc.record({
        systolic: fc.integer({ min: 100, max: 200 }),
        diastolic: fc.option(fc.integer({ min: 50, max: 99 }), { freq: 6 }),
      }),
      { maxLength: 6 },
    );
    const seen = new Set<string>();
    fc.assert(
      fc.property(
        fc.constantFrom(...AVERAGING_RULE_IDS),
        readings,
        fc.constantFrom(true, null),
        (rule, taken, irregular) => {
          const severe = severeLimits(DEFAULT_ACT_NOW_RULES);
          const known = { irregular, raisedFrom: null, severe };
          const { needs, flags, why } = averageReadings(taken, known, readingsRulesOf(rule));
          for (const flag of [...needs, ...flags, ...why]) {
            seen.add(flag.code);
            said(flag);
          }
        },
      ),
      { numRuns: 3000, seed: 31 },
    );
    expect([...seen].sort()).toEqual(
      [
        'differ-from',
        'differ-over',
        'irregular-more-readings',
        'irregular-takes-all',
        'more-readings',
        'no-diastolic-left-out',
        'no-two-close',
        'not-stable',
        'raised-not-known',
        'severe-again',
        'too-few',
      ].sort(),
    );
  });

  test('both arms and every repeat that is due', () => {
    const pair = (right: number, left: number) => ({
      right: { systolic: right, diastolic: 80 },
      left: { systolic: left, diastolic: 80 },
    });
    for (const pairs of [
      [pair(150, 120)],
      [pair(150, 120), pair(150, 120)],
      [pair(150, 148)],
      [pair(150, 150)],
    ]) {
      for (const flag of armDifference(pairs, DEFAULT_ARMS_RULES)?.why ?? []) said(flag);
    }
    const repeat = { firstSystolic: 84, againSystolic: 86 };
    for (const one of RECHECK_CLASSES) {
      const due = recheckAfter(one, DEFAULT_RECHECK_RULES);
      for (const recheck of due) said(recheckFlag(recheck));
      for (const flag of rechecksBeside(due.slice(-1), repeat)) said(flag);
    }
  });

  test('what was repeated at once is taken again by the local protocol, and that is one order: at what time is the list of people’s to say', () => {
    const figures = { firstSystolic: 84, againSystolic: 86, fromSeconds: 0 };
    const text = (more: object) =>
      said({ code: 'recheck-repeated-at-once', figures: { ...figures, ...more } });
    for (const more of [{ withinSeconds: 60 }, {}])
      expect(text(more)).toMatch(/take it again as that protocol says\.$/);
  });

  test('what is said beside a round', () => {
    const on = (id: string, more: Partial<NotedReading>): NotedReading => ({
      id,
      site: 'upper-arm',
      side: 'right',
      posture: 'lie',
      method: 'auscultation',
      systolic: 132,
      diastolic: 80,
      atSeconds: null,
      armCm: 40,
      cuff: { scheme: 'aha-2005', id: 'adult' },
      pulsePerMinute: 72,
      uprightMinutes: null,
      isUnwellUpright: null,
      lyingMinutes: null,
      sequence: 1,
      measuredSeconds: 1001,
      isRestKnown: false,
      ...more,
    });
    const readings = [
      on('a', {}),
      on('b', { side: 'left', cuff: { scheme: 'aha-2005', id: 'thigh' } }),
      on('c', { lyingMinutes: 4.96, measuredSeconds: 1060.96 }),
      on('d', {
        posture: 'stand',
        sequence: 2,
        uprightMinutes: 1,
        pulsePerMinute: null,
        measuredSeconds: 1400,
      }),
    ];
    const { arms, ofReading, standing } = roundNotes(
      readings,
      { gapSeconds: 60, actNow: DEFAULT_ACT_NOW_RULES },
      [],
      null,
    );
    const sentences = [...arms, ...Object.values(ofReading).flat(), ...standing].map(said);
    expect(sentences).toHaveLength(6);
    expect(sentences[1]).toContain('(expected to shift the systolic by +4.8 on the right)');
    // Each number on its own side of its limit, never rounded onto it.
    expect(sentences[2]).toContain('after 4.96 min lying');
    expect(sentences[3]).toContain('came 59.96 s after');
  });

  test('every condition of acting at once says what to do, and has a short name', () => {
    for (const id of ACT_NOW_IDS) {
      const sentence = english.details[id];
      expect([id, typeof sentence]).toEqual([id, 'function']);
    }
    english.titles.condition satisfies Record<ActNowId, string>;
    english.titles.feature satisfies Record<EmergencyFeature, string>;
    english.titles.leftOut satisfies Record<LeftOutReason, string>;
    for (const feature of EMERGENCY_FEATURES) {
      for (const alert of alertsOf({ systolic: 186, diastolic: 112, features: [feature] })) {
        expect(said(alert)).toMatch(/^186\/112 is severe, with .*: call for help now/);
      }
    }
  });

  test('every preset of a round has a title of its own section', () => {
    for (const section of [
      'readings',
      'arms',
      'recheck',
      'actNow',
      'signing',
      'equipment',
      'home',
      'ambulatory',
    ] as const) {
      const ids = listPresets().filter((one) => one.section === section);
      expect(ids.length).toBeGreaterThan(0);
      for (const { id } of ids) expect(words.title(section, id)).not.toBe(id);
    }
  });
});

describe('what the sentences say', () => {
  // Bedside handbook 3.15: repeated at once, once.
  test('a low pressure that was repeated is not asked to be repeated', () => {
    for (const known of [{ systolic: 84 }, { systolic: 70, ageMonths: 48 }]) {
      const [low] = alertsOf(known);
      if (low === undefined) throw new Error('No alert');
      expect(said(low)).toContain('repeat by hand at once');
      const again = said({ ...low, figures: { ...low.figures, firstSystolic: 84, againSystolic: 86 } });
      expect(again).toContain('stay with them (it was repeated: 84, then 86)');
      expect(again).not.toContain('repeat by hand');
    }
  });

  test.each<[Partial<KnownSigns>, RegExp]>([
    // Only one number known: it stands alone, and no other is made up.
    [{ systolic: 184, features: ['fit'] }, /^A systolic of 184 is severe, with a fit: call for help now/],
    [{ diastolic: 124, features: ['fit'] }, /^A diastolic of 124 is severe, with a fit/],
    [
      { systolic: 160, diastolic: 100, pregnant: true },
      /^160\/100 in pregnancy is severe: call obstetrics urgently/,
    ],
    [{ systolic: 77, ageMonths: 48 }, /^A systolic of 77 is under the low limit for this child \(78\)/],
    [{ systolic: 90 }, /^A systolic of 90 is very low \(90 or under\): look at the person first/],
    [{ pulsePerMinute: 131 }, /^A pulse of 131 a minute is very fast \(131 or over\)/],
    [{ percentOxygen: 83, scale: 2 }, /^A saturation of 83 % is low \(83 % or under on scale 2\)/],
    [
      { earlyWarning: { total: null, atLeast: 8, parts: {} } },
      /^An early-warning score of at least 8 is high/,
    ],
    [
      { earlyWarning: { total: 6, atLeast: 6, parts: { pulse: 3, systolic: 3, temperature: 0 } } },
      /^An early-warning score of 6 is medium/,
    ],
  ])('%j', (known, sentence) => {
    expect(said(alertsOf(known)[0] as Flag)).toMatch(sentence);
  });

  test('a single part is named, and one that is less than 3 is not', () => {
    const [alert] = alertsOf({
      earlyWarning: { total: 3, atLeast: 3, parts: { pulse: 0, systolic: 3, temperature: null } },
    });
    expect(said(alert as Flag)).toMatch(/\(systolic\)/);
  });

  test('a rule read in no source asks to be confirmed, and sends nobody to a handbook they do not have', () => {
    expect(words.sentence('cautions.confirmLocally')).toBe('Confirm with your local protocol.');
    const told = Object.values(english.details).map(String).join(' ');
    expect(told).toMatch(/onfirm this limit with your local protocol/);
    expect(told).not.toMatch(/from memory|bedside handbook/);
  });

  // Bedside handbook 3.14 (below 90) and 3.17 (90 or under): at 90 nothing says that it is below 90.
  test('a systolic that is low by the alert alone is not said to be under a limit of the standing test', async () => {
    for (const language of ['en', 'es'] as const) {
      const { detail } = await loadWords(language);
      for (const code of ['standing-systolic-low', 'low-before-standing']) {
        const [at90, at89] = [{ systolic: 90 }, { systolic: 89, limitMmHg: 90 }].map((figures) =>
          detail({ code, figures: { ...figures, minutes: 1 } }),
        );
        expect(at90?.match(/90/g)).toHaveLength(1);
        expect(at90).toMatch(/very low|muy baja/);
        expect(at89).toMatch(/89.* (under|below|menos de) 90/);
      }
    }
  });

  // Bedside handbook 3.13 and 3.15, as clinical/round asks for them: each is true whenever it is shown.
  test('what asks for another reading speaks of no guideline where none was chosen, nor of a rest where nobody waits', () => {
    const needs = { readings: 1, needs: 3 };
    expect(said({ code: 'more-readings', figures: needs })).toMatch(/this guideline goes by 3/);
    expect(said({ code: 'more-readings-general', figures: needs })).toMatch(/general rule goes by 3/);
    expect(said({ code: 'more-readings-general', figures: needs })).not.toMatch(/this guideline/);
    expect(said({ code: 'too-few', figures: needs })).toBe(
      '1 reading with both numbers is too few for an average, which takes 3 here.',
    );
    expect(said({ code: 'again-at-once', figures: {} })).not.toMatch(/rest/);
    const later = { fromSeconds: 600, withinSeconds: 900 };
    expect(said({ code: 'recheck-abnormal-later', figures: later })).toMatch(/^If it is still high/);
  });

  test('a single reading that a category goes by is the higher or highest where there are several', () => {
    const of = (highestOf: number) =>
      words.sentence('result.fallsInOne', {
        pressure: '131/79',
        category: 'Stage 1',
        guideline: 'X',
        highestOf,
      });
    expect(of(1)).toMatch(/^One reading, 131\/79, and no average yet/);
    expect(of(2)).toMatch(/^131\/79, the higher of 2 readings, and no average yet/);
    expect(of(3)).toMatch(/^131\/79, the highest of 3 readings/);
  });

  test('the question of emergency features names its reading, and calls severe only what is', () => {
    expect(said({ code: 'child-high-asks', figures: { systolic: 112, diastolic: 72 } })).toMatch(
      /^The reading of 112\/72 is high for this child/,
    );
    for (const code of ['child-high-asks', 'short-child-high-asks'])
      expect(said({ code, figures: { systolic: 112 } })).not.toMatch(/severe/);
    expect(said({ code: 'severe-asks', figures: { systolic: 186 } })).toBe(
      'The systolic of 186 is severe and can be an emergency.',
    );
  });

  test('a difference beside its limit never reads as the limit', () => {
    // 10.4 is over 10; whole numbers would say "differ by 10, more than 10".
    const figures = { systolicMmHg: 10.4, diastolicMmHg: 2, limitMmHg: 10 };
    expect(said({ code: 'differ-over', figures })).toMatch(
      /differ by 10\.4 in the systolic .* more than 10:/,
    );
  });

  test('which arm, from the sign: right minus left', () => {
    // Bedside handbook 8, C061 and C063.
    const figures = (systolicMmHg: number, limitMmHg: number) => ({ systolicMmHg, limitMmHg });
    expect(said({ code: 'arms-repeat', figures: figures(16, 15) })).toMatch(
      /^The right arm reads 16 higher, more than 15/,
    );
    expect(said({ code: 'arms-higher', figures: figures(-12, 10) })).toMatch(
      /^The left arm reads 12 higher, more than 10/,
    );
    expect(said({ code: 'arms-either', figures: figures(0, 10) })).toMatch(/^Both arms read the same/);
  });

  test('when to look again, in minutes', () => {
    const sentences = RECHECK_CLASSES.flatMap((one) =>
      recheckAfter(one, DEFAULT_RECHECK_RULES).map((recheck) => said(recheckFlag(recheck))),
    );
    expect(sentences.join(' ')).toMatch(
      /within 15 minutes.*rest 5 minutes.*after 1 minute, within 2 minutes.*after 10 minutes, within 15 minutes/,
    );
  });
});
