import { describe, expect, test } from 'vitest';
import { DEFAULT_ACT_NOW_RULES, severeLimits } from './actNowRules.js';
import type { AveragingRuleId } from './averagingRules.js';
import type { Reading } from './fullReadings.js';
import {
  furtherReading,
  type ReadingsCircumstances,
  UNKNOWN_READINGS_CIRCUMSTANCES as UNKNOWN,
} from './furtherReading.js';
import { readingsRulesOf } from './readingsRules.js';

function read(text: string): Reading[] {
  return text.split(' ').map((one) => {
    const [systolic, diastolic] = one.split('/');
    return { systolic: Number(systolic), diastolic: diastolic === 'P' ? null : Number(diastolic) };
  });
}

function further(rule: AveragingRuleId, readings: string, known: Partial<ReadingsCircumstances> = {}) {
  const found = furtherReading(read(readings), { ...UNKNOWN, ...known }, readingsRulesOf(rule));
  return { ...found, codes: found.why.map(({ code }) => code) };
}

const severe = severeLimits(DEFAULT_ACT_NOW_RULES);

describe('two that differ', () => {
  // Bedside handbook 3.10, 3.11 and 8: C055 (ESC, 14 > 10), C058 (AHA 2005: 5 is not more than 5, 6 is).
  test.each<[AveragingRuleId, string, string[]]>([
    ['esc-2024', '150/90 164/98 150/92', ['differ-over']],
    ['esc-2024', '150/90 160/92 150/92', []],
    ['esc-2024', '150/90 161/92 150/92', ['differ-over']],
    ['esc-2024', '150/90 150/100 150/90', []],
    ['esc-2024', '150/90 150/101 150/90', ['differ-over']],
    ['esc-esh-2018', '150/90 160/92 150/92', []],
    ['esc-esh-2018', '150/90 161/92 150/92', ['differ-over']],
    ['esh-2023', '150/90 159/92 150/92', []],
    ['esh-2023', '150/90 160/92 150/92', ['differ-from']],
    ['aha-2005', '134/80 129/80', []],
    ['aha-2005', '134/80 128/80', ['differ-over']],
    ['two-within-10', '150/90 140/90', []],
    ['two-within-10', '150/90 139/90', ['differ-over']],
    ['jsh-2019', '134/80 130/80', []],
    ['jsh-2019', '134/80 129/80', ['differ-from']],
    ['nice-ng136', '150/92 140/90', []],
    ['nice-ng136', '150/92 139/90', ['differ-over']],
    ['acc-aha-2017', '180/100 140/80', []],
    ['hypertension-canada', '178/100 140/80 120/70', []],
  ])('%s of %s', (rule, readings, codes) => {
    expect(further(rule, readings)).toMatchObject({ codes, isNeeded: codes.length > 0, isUnstable: false });
  });

  test('C055: fewer than the protocol’s number and too far apart are both told, with figures', () => {
    expect(further('esc-2024', '164/98 150/92').why).toEqual([
      { code: 'more-readings', figures: { readings: 2, needs: 3 } },
      { code: 'differ-over', figures: { systolicMmHg: 14, diastolicMmHg: 6, limitMmHg: 10 } },
    ]);
  });

  test('a palpated reading between two does not keep them from being compared', () => {
    expect(further('acc-aha-2017', '150/90 110/P 150/90').codes).toEqual([]);
    expect(further('aha-2005', '150/90 148/P 140/90').codes).toEqual(['differ-over']);
  });
});

describe('when to stop', () => {
  // Bedside handbook 3.11 (common practice): stop at 5 and say "not stable".
  test('four that swing ask for a fifth, five do not', () => {
    expect(further('esc-2024', '150/90 170/90 150/90 170/90')).toMatchObject({
      codes: ['differ-over'],
      isNeeded: true,
    });
    const five = further('esc-2024', '150/90 170/90 150/90 170/90 150/90');
    expect(five).toMatchObject({ isNeeded: false, isUnstable: true, earliestAtSeconds: null });
    expect(five.why).toEqual([{ code: 'not-stable', figures: { readings: 5, stopAtReadings: 5 } }]);
  });

  test('five that settled are stable', () => {
    expect(further('esc-2024', '190/110 170/100 160/94 152/90 150/90', { severe })).toMatchObject({
      isNeeded: false,
      isUnstable: false,
      why: [],
    });
  });
});

describe('an irregular pulse', () => {
  // Bedside handbook 8, C060: two readings, a third is needed.
  test.each([
    ['128/80 126/80', true],
    ['128/80 126/80 126/80', false],
  ])('%s: another is needed: %s', (readings, isNeeded) => {
    expect(further('nice-ng136', readings, { irregular: true }).isNeeded).toBe(isNeeded);
    expect(further('nice-ng136', readings, { irregular: null }).isNeeded).toBe(false);
  });
});

describe('too few', () => {
  // Bedside handbook 3.13: at least 3 of an irregular pulse, whatever the guideline (ACC/AHA 2, ESC 3). One reason is told.
  test.each<[AveragingRuleId, string, string[]]>([
    ['acc-aha-2025', '128/80', ['irregular-more-readings']],
    ['acc-aha-2025', '128/80 126/80', ['irregular-more-readings']],
    ['acc-aha-2025', '128/80 126/80 126/80', []],
    ['esc-2024', '128/80 126/80', ['irregular-more-readings']],
  ])('an irregular pulse is told once, with the number that counts: %s of %s', (rule, readings, codes) => {
    const found = further(rule, readings, { irregular: true });
    expect(found.codes).toEqual(codes);
    for (const { figures } of found.why) expect(figures).toMatchObject({ needs: 3 });
  });

  test('a guideline that takes more than the place wants of an irregular pulse counts', () => {
    const rules = { ...readingsRulesOf('esc-2024'), irregularReadings: 2 };
    const { why } = furtherReading(read('128/80'), { ...UNKNOWN, irregular: true }, rules);
    expect(why).toEqual([{ code: 'more-readings', figures: { readings: 1, needs: 3 } }]);
  });

  test('by no protocol is told as the general rule', () => {
    const rules = { ...readingsRulesOf('esc-2024'), isGeneral: true };
    expect(furtherReading(read('128/80'), UNKNOWN, rules).why).toEqual([
      { code: 'more-readings-general', figures: { readings: 1, needs: 3 } },
    ]);
  });
});

// Bedside handbook 3.15 (common practice): very low or unwell is repeated at once by hand, without a wait.
describe('very low or unwell', () => {
  const timed = (text: string) => read(text).map((one, at) => ({ ...one, atSeconds: 200 + at * 60 }));
  const at = (text: string) =>
    furtherReading(timed(text), { ...UNKNOWN, atOnce: true }, readingsRulesOf('nice-ng136'));

  test('is taken again now, and nothing speaks of a rest', () => {
    expect(at('84/50')).toMatchObject({ isNeeded: true, earliestAtSeconds: 200, waitSeconds: 0 });
    expect(at('84/50').why.map(({ code }) => code)).toEqual(['again-at-once']);
    expect(at('84/50 100/62').why.map(({ code }) => code)).toEqual(['again-at-once']);
    expect(at('84/50 86/52')).toMatchObject({ isNeeded: false, waitSeconds: null });
  });
});

describe('a severe reading', () => {
  // Bedside handbook 3.11 and 3.16: a severe reading is repeated; at 180 and at 120 (NICE), and on both sides.
  test.each([
    ['170/90 172/90', []],
    ['170/90 179/119', ['differ-over']],
    ['176/118 179/119', []],
    ['176/118 180/118', ['severe-again']],
    ['176/118 178/120', ['severe-again']],
    ['184/118 182/118', []],
    ['184/118 178/118', []],
  ])('%s', (readings, codes) => {
    expect(further('nice-ng136', readings, { severe }).codes).toEqual(codes);
  });
});

describe('when the next may be taken', () => {
  const rules = readingsRulesOf('acc-aha-2025');
  const at = (systolic: number, atSeconds: number | null): Reading => ({
    systolic,
    diastolic: 80,
    atSeconds,
  });

  test('a minute after the last one (bedside handbook 3.10)', () => {
    expect(furtherReading([at(150, 200)], UNKNOWN, rules).earliestAtSeconds).toBe(260);
    expect(furtherReading([at(150, 200)], UNKNOWN, rules).waitSeconds).toBe(60);
    const longer = { ...rules, gapSeconds: 90 };
    expect(furtherReading([at(150, 200)], UNKNOWN, longer).earliestAtSeconds).toBe(290);
  });

  test('is not known without a time, and not told when none is needed', () => {
    expect(furtherReading([at(150, null)], UNKNOWN, rules).earliestAtSeconds).toBeNull();
    expect(furtherReading([], UNKNOWN, rules).earliestAtSeconds).toBeNull();
    expect(furtherReading([at(150, 0), at(150, 60)], UNKNOWN, rules)).toMatchObject({
      isNeeded: false,
      earliestAtSeconds: null,
    });
  });
});
