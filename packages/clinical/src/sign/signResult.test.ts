import { describe, expect, test } from 'vitest';
import { type SignCircumstances, UNKNOWN_SIGN_CIRCUMSTANCES } from './circumstances.js';
import { parseSign } from './parseSign.js';
import { signResult } from './signResult.js';

function codes(input: object, known: Partial<SignCircumstances> = {}): string[] {
  const parsed = parseSign(input);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.refusals));
  const { flags } = signResult(parsed.value, { ...UNKNOWN_SIGN_CIRCUMSTANCES, ...known });
  return flags.map(({ code }) => code);
}

const temperature = (celsius: number, site = 'tympanic') => ({ of: 'temperature', celsius, site });
const saturation = (percent: number, more: object = {}) => ({
  of: 'oxygen-saturation',
  percent,
  onOxygen: false,
  ...more,
});
const SCALE_TWO = { scale: 2, scalePrescriber: 'Dr Example, invented' };

describe('a temperature', () => {
  test.each<[number, string[]]>([
    // Bedside handbook 4.1, thresholds (from memory); query outside 34 to 42 (common practice).
    [37, []],
    [37.9, []],
    [38, ['fever']],
    [41, ['fever']],
    [41.1, ['hyperpyrexia']],
    [42, ['hyperpyrexia']],
    [42.1, ['implausible-temperature', 'hyperpyrexia']],
    [35, []],
    [34.9, ['hypothermia-mild']],
    [34, ['hypothermia-mild']],
    [33.9, ['implausible-temperature', 'hypothermia-mild']],
    [32, ['implausible-temperature', 'hypothermia-mild']],
    [31.9, ['implausible-temperature', 'hypothermia-moderate']],
    [28, ['implausible-temperature', 'hypothermia-moderate']],
    [27.9, ['implausible-temperature', 'hypothermia-severe']],
  ])('%d: %j', (celsius, expected) => {
    expect(codes(temperature(celsius))).toEqual(expected);
  });

  test.each<[number, number, string[]]>([
    // Bedside handbook 4.1 (NICE, from memory): under 3 months from 38, 3 to 6 months from 39.
    [2, 37.9, []],
    [2, 38, ['fever-young-infant']],
    [3, 38, ['fever']],
    [3, 38.9, ['fever']],
    [3, 39, ['fever-infant']],
    [5, 39, ['fever-infant']],
    [6, 39, ['fever']],
  ])('at %d months, %d: %j', (ageMonths, celsius, expected) => {
    expect(codes(temperature(celsius), { ageMonths })).toEqual(expected);
  });

  test('by mouth too soon after a drink (bedside handbook 4.1, from memory: 15 min)', () => {
    expect(codes(temperature(37, 'oral'), { minutesSinceDrinkOrSmoke: 14 })).toEqual(['mouth-too-soon']);
    expect(codes(temperature(37, 'oral'), { minutesSinceDrinkOrSmoke: 15 })).toEqual([]);
    expect(codes(temperature(37, 'tympanic'), { minutesSinceDrinkOrSmoke: 0 })).toEqual([]);
  });
});

describe('a saturation', () => {
  test.each<[number, object, string[]]>([
    // Bedside handbook 4.2: targets 94 to 98 on scale 1 (second-hand) and 88 to 92 on scale 2 (found).
    [94, { scale: 1 }, []],
    [93, { scale: 1 }, ['below-oxygen-target']],
    [99, { scale: 1 }, []], // on air nothing can be turned down
    [98, { scale: 1, onOxygen: true }, []],
    [99, { scale: 1, onOxygen: true }, ['above-oxygen-target']],
    [88, SCALE_TWO, []],
    [87, SCALE_TWO, ['below-oxygen-target']],
    [92, { ...SCALE_TWO, onOxygen: true }, []],
    [93, { ...SCALE_TWO, onOxygen: true }, ['above-oxygen-target']],
    [93, SCALE_TWO, []],
    [80, {}, []], // no scale chosen, no target
    // 4.2 (from memory): an oximeter's error is stated from 70 %.
    [70, {}, []],
    [69, {}, ['below-oximeter-range']],
  ])('%d %% %j: %j', (percent, more, expected) => {
    expect(codes(saturation(percent, more))).toEqual(expected);
  });

  test('of a child (bedside handbook 4.2, second-hand: under 92 is of concern), whatever the scale', () => {
    expect(codes(saturation(91), { ageMonths: 191 })).toEqual(['low-oxygen-child']);
    expect(codes(saturation(92, { scale: 1 }), { ageMonths: 191 })).toEqual([]);
    expect(codes(saturation(91), { ageMonths: 192 })).toEqual([]);
    expect(codes(saturation(91, { scale: 1 }), { ageMonths: 192 })).toEqual(['below-oxygen-target']);
  });

  test('whose pulse is not the felt one (bedside handbook 4.2, common practice: within 10)', () => {
    const seen = saturation(97, { pulsePerMinute: 80 });
    expect(codes(seen, { feltPulsePerMinute: 90 })).toEqual([]);
    expect(codes(seen, { feltPulsePerMinute: 70 })).toEqual([]);
    expect(codes(seen, { feltPulsePerMinute: 91 })).toEqual(['oximeter-pulse-disagrees']);
    expect(codes(seen, { feltPulsePerMinute: 69 })).toEqual(['oximeter-pulse-disagrees']);
    expect(codes(seen)).toEqual([]);
    expect(codes(saturation(97), { feltPulsePerMinute: 140 })).toEqual([]);
  });
});

describe('pain and consciousness', () => {
  test.each<[object, string[]]>([
    // Bedside handbook 4.3 (from memory): 7 to 10 is severe.
    [{ of: 'pain', tool: 'numeric', score: 6 }, []],
    [{ of: 'pain', tool: 'numeric', score: 7 }, ['pain-severe']],
    [{ of: 'pain', tool: 'visual-analogue', score: 6.9 }, []],
    [{ of: 'pain', tool: 'verbal', word: 'severe' }, ['pain-severe']],
    [{ of: 'pain', tool: 'verbal', word: 'moderate' }, []],
    [{ of: 'consciousness', level: 'alert' }, []],
    [{ of: 'consciousness', level: 'confusion' }, ['not-alert']],
    [{ of: 'consciousness', level: 'unresponsive' }, ['not-alert']],
    [{ of: 'consciousness', level: 'alert', glasgow: { eyes: 4, verbal: 5, motor: 6 } }, []],
    // Bedside handbook 8, C084 (from memory): not testable, no total.
    [
      { of: 'consciousness', level: 'voice', glasgow: { eyes: 4, verbal: 'NT', motor: 6 } },
      ['not-alert', 'glasgow-not-testable'],
    ],
  ])('%j: %j', (input, expected) => {
    expect(codes(input)).toEqual(expected);
  });
});

describe('weight and height', () => {
  const weight = (kg: number, how = 'measured') => ({ of: 'weight', kg, how });
  const height = (cm: number, more: object = {}) => ({ of: 'height', cm, how: 'measured', ...more });

  test.each<[object, number | null, string[]]>([
    // docs/conventions.md section 7 (decisions of this project).
    [weight(25), 216, []],
    [weight(24.9), 216, ['implausible-weight']],
    [weight(24.9), 215, []],
    [weight(24.9), null, []],
    [weight(300), null, []],
    [weight(300.1), null, ['implausible-weight']],
    [weight(70, 'stated'), null, ['weight-not-measured']],
    [weight(70, 'estimated'), null, ['weight-not-measured']],
    [height(100), 216, []],
    [height(99.9), 216, ['implausible-height']],
    [height(99.9), 215, []],
    [height(230), null, []],
    [height(230.1), null, ['implausible-height']],
    [height(170, { how: 'stated' }), null, ['height-not-measured']],
    // Bedside handbook 4.4 (from memory): length lying under 2 years.
    [height(80, { lying: true }), 23, []],
    [height(80), 23, ['height-standing-young']],
    [height(86), 24, []],
    [height(86, { lying: true }), 24, ['length-lying']],
    [height(86, { lying: true }), null, []],
  ])('%j at %j months: %j', (input, ageMonths, expected) => {
    expect(codes(input, { ageMonths })).toEqual(expected);
  });
});
