import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { averageReadings, type ReadingsAverage } from './averageReadings.js';
import { AVERAGING_RULE_IDS, AVERAGING_RULES, type AveragingRuleId } from './averagingRules.js';
import type { Reading } from './fullReadings.js';
import { type ReadingsCircumstances, UNKNOWN_READINGS_CIRCUMSTANCES as UNKNOWN } from './furtherReading.js';
import { readingsRulesOf } from './readingsRules.js';

/** Readings as the trade writes them: `152/94`, or `122/P` by palpation. */
function read(text: string): Reading[] {
  return text.split(' ').map((one) => {
    const [systolic, diastolic] = one.split('/');
    return { systolic: Number(systolic), diastolic: diastolic === 'P' ? null : Number(diastolic) };
  });
}

function average(
  rule: AveragingRuleId,
  readings: string | readonly Reading[],
  known: Partial<ReadingsCircumstances> = {},
): ReadingsAverage {
  const taken = typeof readings === 'string' ? read(readings) : readings;
  return averageReadings(taken, { ...UNKNOWN, ...known }, readingsRulesOf(rule));
}

const codes = (flags: readonly { readonly code: string }[]) => flags.map(({ code }) => code);
const pressure = ({ systolic, diastolic }: ReadingsAverage) => [systolic, diastolic];

describe('the guidelines, each by its own words', () => {
  // Bedside handbook 3.10, and its check values C049 to C052 (section 8).
  test.each<[AveragingRuleId, string, [number, number], number[]]>([
    ['esc-2024', '152/94 146/90 144/88', [145, 89], [2, 3]], // C049
    ['esh-2023', '152/94 146/90 144/88', [145, 89], [2, 3]], // C049
    ['ish-2020', '152/94 146/90 144/88', [145, 89], [2, 3]], // C049
    ['esc-esh-2018', '152/94 146/90 144/88', [145, 89], [2, 3]],
    ['acc-aha-2017', '152/94 146/90 144/88', [442 / 3, 272 / 3], [1, 2, 3]], // C050: 147.33/90.67
    ['hypertension-canada', '152/94 146/90 144/88', [442 / 3, 272 / 3], [1, 2, 3]], // C050
    ['acc-aha-2025', '152/94 146/90 144/88', [442 / 3, 272 / 3], [1, 2, 3]],
    ['nice-ng136', '152/94 146/90 144/88', [144, 88], [3]], // C051
    ['jsh-2019', '152/94 146/90 144/88', [145, 89], [2, 3]], // C052
    ['aha-2005', '152/94 150/92', [151, 93], [1, 2]],
    ['two-within-10', '164/98 150/92 146/90', [148, 91], [2, 3]],
    ['korea-2013', '152/94 146/90', [149, 92], [1, 2]],
    ['who-2021', '152/94 146/90', [149, 92], [1, 2]],
    ['aap-2017', '118/76 112/72 110/70', [340 / 3, 218 / 3], [1, 2, 3]],
  ])('%s of %s', (rule, readings, [systolic, diastolic], used) => {
    const found = average(rule, readings, { raisedFrom: { systolic: 110, diastolic: 70 } });
    expect(found.systolic).toBeCloseTo(systolic, 10);
    expect(found.diastolic).toBeCloseTo(diastolic, 10);
    expect(found).toMatchObject({ used, needs: [], why: [], flags: [] });
  });

  test('the printed digits of C050 are 147 and 91', () => {
    const { systolic, diastolic } = average('acc-aha-2017', '152/94 146/90 144/88');
    expect([Math.abs((systolic ?? 0) - 147.33) < 0.005, Math.abs((diastolic ?? 0) - 90.67) < 0.005]).toEqual([
      true,
      true,
    ]);
  });

  test('the ids stand in the order of the handbook, each once, each with its source', () => {
    expect(AVERAGING_RULES.map(({ id }) => id)).toEqual(AVERAGING_RULE_IDS);
    expect(new Set(AVERAGING_RULE_IDS).size).toBe(AVERAGING_RULE_IDS.length);
  });
});

describe('too few, and fewer that are enough', () => {
  // Bedside handbook 3.10: readings needed by each guideline.
  test.each<[AveragingRuleId, string, number]>([
    ['esc-2024', '152/94 146/90', 3],
    ['esc-esh-2018', '152/94 146/90', 3],
    ['esh-2023', '152/94 146/90', 3],
    ['ish-2020', '152/94 146/90', 3],
    ['acc-aha-2017', '152/94', 2],
    ['acc-aha-2025', '152/94', 2],
    ['aha-2005', '152/94', 2],
    ['two-within-10', '152/94', 2],
    ['jsh-2019', '152/94', 2],
    ['nice-ng136', '152/94', 2],
    ['hypertension-canada', '152/94 146/90', 3],
    ['korea-2013', '152/94', 2],
    ['aap-2017', '118/76 112/72', 3],
    ['who-2021', '152/94', 2],
  ])('%s of %s needs %d', (rule, readings, needs) => {
    const found = average(rule, readings);
    expect(pressure(found)).toEqual([null, null]);
    expect(found.used).toEqual([]);
    expect(found.why).toEqual([{ code: 'too-few', figures: { readings: read(readings).length, needs } }]);
    expect(found.needs[0]).toEqual({
      code: 'more-readings',
      figures: { readings: read(readings).length, needs },
    });
  });

  test('no reading at all', () => {
    for (const rule of AVERAGING_RULE_IDS) {
      expect(average(rule, [])).toMatchObject({ systolic: null, diastolic: null, used: [] });
      expect(codes(average(rule, []).needs)).toEqual(['more-readings']);
      expect(codes(average(rule, []).why)).toEqual(['too-few']);
    }
  });

  // Bedside handbook 8, C053, C054 (ISH: below 130/85) and C056, C057 (NICE: below 140/90); both sides of each number.
  test.each<[AveragingRuleId, string, boolean]>([
    ['ish-2020', '128/82', true],
    ['ish-2020', '129/84', true],
    ['ish-2020', '130/82', false],
    ['ish-2020', '128/85', false],
    ['nice-ng136', '138/84', true],
    ['nice-ng136', '139/89', true],
    ['nice-ng136', '140/84', false],
    ['nice-ng136', '138/90', false],
  ])('%s: a first reading of %s is enough: %s', (rule, first, isEnough) => {
    const { systolic, diastolic, used, needs, why } = average(rule, first);
    const [one] = read(first);
    expect({ systolic, diastolic, used }).toEqual(
      isEnough ? { ...one, used: [1] } : { systolic: null, diastolic: null, used: [] },
    );
    expect([codes(needs), codes(why)]).toEqual(isEnough ? [[], []] : [['more-readings'], ['too-few']]);
  });

  test('one is not enough once a second one says otherwise', () => {
    expect(average('ish-2020', '128/82 126/80')).toMatchObject({ systolic: 127, diastolic: 81, needs: [] });
    expect(average('ish-2020', '128/82 134/80').systolic).toBeNull();
  });

  // Bedside handbook 3.10 and 3.15: two more when the first is at or above the 90th centile.
  test.each([
    ['109/69', true],
    ['110/69', false],
    ['109/70', false],
  ])('a child with 90th centiles 110/70: %s alone is enough: %s', (first, isEnough) => {
    const found = average('aap-2017', first, { raisedFrom: { systolic: 110, diastolic: 70 } });
    expect(found.systolic === null).toBe(!isEnough);
    expect(codes(found.needs)).toEqual(isEnough ? [] : ['more-readings']);
  });

  // Bedside handbook 6.2: elevated from the 90th centile, or from 120/80 where that is lower, as in tall adolescents.
  test.each([
    ['119/79', true],
    ['120/79', false],
    ['119/80', false],
  ])('a child with 90th centiles 134/85: %s alone is enough: %s', (first, isEnough) => {
    const found = average('aap-2017', first, { raisedFrom: { systolic: 134, diastolic: 85 } });
    expect(found.systolic === null).toBe(!isEnough);
  });

  test('a child whose centiles are not known is never taken for one that is not raised', () => {
    const found = average('aap-2017', '90/50');
    expect(found.systolic).toBeNull();
    expect(codes(found.needs)).toEqual(['more-readings', 'raised-not-known']);
  });
});

describe('the lower of the last two, as a pair', () => {
  // Bedside handbook 3.10 (common practice; NICE does not say how): by systolic, then diastolic.
  test.each([
    ['150/90 142/96', [142, 96], [2]],
    ['142/96 150/90', [142, 96], [1]],
    ['148/92 148/88', [148, 88], [2]],
    ['148/88 148/92', [148, 88], [1]],
    ['148/92 148/92', [148, 92], [2]],
    ['132/80 146/90 144/88', [144, 88], [3]],
  ])('%s', (readings, expected, used) => {
    expect(average('nice-ng136', readings)).toMatchObject({ used });
    expect(pressure(average('nice-ng136', readings))).toEqual(expected);
  });
});

describe('two that do not differ', () => {
  // Bedside handbook 3.10: JSH under 5 in both numbers; the journal's table within 10.
  test.each<[AveragingRuleId, string, number[]]>([
    ['jsh-2019', '150/90 146/86', [1, 2]],
    ['jsh-2019', '150/90 145/90', []],
    ['jsh-2019', '150/90 150/85', []],
    ['jsh-2019', '150/90 146/86 130/80', [1, 2]],
    ['jsh-2019', '150/90 140/90 150/90', []],
    ['two-within-10', '150/90 140/80', [1, 2]],
    ['two-within-10', '150/90 139/90', []],
    ['two-within-10', '150/90 150/79', []],
  ])('%s of %s uses %j', (rule, readings, used) => {
    const found = average(rule, readings);
    expect(found.used).toEqual(used);
    expect(codes(found.why)).toEqual(used.length === 0 ? ['no-two-close'] : []);
    expect(found.systolic === null).toBe(used.length === 0);
  });
});

describe('a reading without a diastolic', () => {
  test('a palpated systolic never enters an average, and takes no other reading’s place', () => {
    const found = average('esc-2024', '110/P 152/94 146/90 144/88');
    expect(pressure(found)).toEqual([145, 89]);
    expect(found.used).toEqual([3, 4]);
    expect(found.flags).toEqual([{ code: 'no-diastolic-left-out', figures: { leftOut: 1 } }]);
  });

  test('palpated readings alone make no average', () => {
    const found = average('acc-aha-2017', '110/P 112/P 108/P');
    expect(pressure(found)).toEqual([null, null]);
    expect(codes(found.why)).toEqual(['too-few']);
    expect(found.flags).toEqual([{ code: 'no-diastolic-left-out', figures: { leftOut: 3 } }]);
  });

  test('wherever one is put in, the average stays', () => {
    const full = fc.array(
      fc.record({
        systolic: fc.integer({ min: 80, max: 220 }),
        diastolic: fc.integer({ min: 40, max: 79 }),
      }),
      { maxLength: 6 },
    );
    const palpated = fc.record({
      systolic: fc.integer({ min: 60, max: 260 }),
      diastolic: fc.constant<number | null>(null),
    });
    fc.assert(
      fc.property(
        fc.constantFrom(...AVERAGING_RULE_IDS),
        full,
        palpated,
        fc.nat({ max: 6 }),
        (rule, taken, felt, at) => {
          const without = average(rule, taken);
          const found = average(rule, [...taken.slice(0, at), felt, ...taken.slice(at)]);
          expect(pressure(found)).toEqual(pressure(without));
          expect(codes(found.needs)).toEqual(codes(without.needs));
          expect(codes(found.flags)).toContain('no-diastolic-left-out');
        },
      ),
    );
  });
});

describe('an irregular pulse', () => {
  // Bedside handbook 3.13 (British and Irish Hypertension Society 2019, found): at least 3, mean of all; C060.
  test.each(AVERAGING_RULE_IDS)('%s: two readings are not enough, three are, and all count', (rule) => {
    const two = average(rule, '128/82 126/80', { irregular: true });
    expect(pressure(two)).toEqual([null, null]);
    expect(codes(two.needs)).toContain('irregular-more-readings');
    const three = average(rule, '132/84 126/80 126/80', { irregular: true });
    expect([three.systolic, three.used]).toEqual([128, [1, 2, 3]]);
    expect(codes(three.flags)).toEqual(['irregular-takes-all']);
    expect(codes(three.needs)).not.toContain('irregular-more-readings');
  });

  test('a reading may say so itself, and a place may keep to its guideline', () => {
    const readings = read('132/84 126/80 126/80').map((one, at) => ({ ...one, irregular: at === 1 }));
    expect(average('esc-2024', readings).systolic).toBe(128);
    const byRule = { ...readingsRulesOf('esc-2024'), irregularAverage: 'by-rule' as const };
    expect(averageReadings(readings, UNKNOWN, byRule)).toMatchObject({
      systolic: 126,
      used: [2, 3],
      flags: [],
    });
  });
});

describe('properties', () => {
  const readings = fc.array(
    fc.record({ systolic: fc.integer({ min: 80, max: 220 }), diastolic: fc.integer({ min: 40, max: 79 }) }),
    { minLength: 3, maxLength: 5 },
  );

  test('a value lies among the readings it was made of', () => {
    fc.assert(
      fc.property(fc.constantFrom(...AVERAGING_RULE_IDS), readings, (rule, taken) => {
        const { systolic, used } = average(rule, taken);
        const numbers = used.map((index) => taken[index - 1]?.systolic ?? Number.NaN);
        if (systolic === null) expect(used).toEqual([]);
        else {
          expect(systolic).toBeGreaterThanOrEqual(Math.min(...numbers));
          expect(systolic).toBeLessThanOrEqual(Math.max(...numbers));
        }
      }),
    );
  });

  test('a mean of all does not depend on the order', () => {
    const all = ['acc-aha-2017', 'acc-aha-2025', 'hypertension-canada', 'korea-2013', 'who-2021'] as const;
    fc.assert(
      fc.property(fc.constantFrom(...all), readings, (rule, taken) => {
        const turned = average(rule, [...taken].reverse());
        expect(turned.systolic).toBeCloseTo(average(rule, taken).systolic ?? Number.NaN, 9);
      }),
    );
  });

  test('everybody’s pressure higher by 2 is an average higher by 2', () => {
    const noLimit = AVERAGING_RULES.filter(({ oneEnough }) => oneEnough.when === 'never').map(({ id }) => id);
    fc.assert(
      fc.property(fc.constantFrom(...noLimit), readings, (rule, taken) => {
        const higher = taken.map(({ systolic, diastolic }) => ({
          systolic: systolic + 2,
          diastolic: diastolic + 2,
        }));
        const [before, after] = [average(rule, taken), average(rule, higher)];
        expect(after.used).toEqual(before.used);
        if (before.systolic !== null) expect(after.systolic).toBeCloseTo(before.systolic + 2, 9);
      }),
    );
  });
});
