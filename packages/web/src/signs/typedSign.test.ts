import { SIGNS, type SignOf } from '@evenfall/clinical';
import { loadWords, USUAL_MANNER, wordsFor } from '@evenfall/words';
import { describe, expect, test } from 'vitest';
import {
  oxygenTarget,
  readTypedSign,
  TYPED_FIELDS,
  typedNumberOf,
  unkeptSigns,
  wrongByField,
} from './typedSign.js';

const { say } = wordsFor('en-GB');
const SCALE_1 = { scale: 1, prescriber: null } as const;
const typedBy = (fields: Record<string, string>) => (field: string) => fields[field] ?? '';
const read = (of: SignOf, fields: Record<string, string>, target: Parameters<typeof readTypedSign>[2] = SCALE_1) =>
  readTypedSign(of, typedBy(fields), target, say); // biome-ignore format: one thought
function wrong(of: SignOf, fields: Record<string, string>): Record<string, string[]> {
  const parsed = read(of, fields);
  const byField = parsed.ok ? {} : wrongByField(parsed.refusals);
  return Object.fromEntries(
    Object.entries(byField).map(([field, refusals]) => [field, refusals.map(({ code }) => code)]),
  );
}

// What must be stored with each sign: bedside handbook 4.1 to 4.4.
describe('what is typed becomes the sign', () => {
  test.each<[SignOf, Record<string, string>, object]>([
    ['temperature', { celsius: ' 38.0 ', site: 'tympanic' }, { celsius: 38, site: 'tympanic' }],
    [
      'pain',
      { way: 'visual-analogue', mm: '47', score: '9' },
      { tool: 'visual-analogue', score: 4.7, word: null, moving: null, where: null },
    ],
    ['pain', { score: '0' }, { tool: 'numeric', score: 0, word: null, moving: null, where: null }],
    [
      'pain',
      { way: 'verbal', word: 'none', score: '7', moving: 'resting', where: ' left knee ' },
      { tool: 'verbal', score: null, word: 'none', moving: false, where: 'left knee' },
    ],
    ['consciousness', { level: 'alert' }, { level: 'alert', glasgow: null }],
    [
      'consciousness',
      { level: 'voice', eyes: '3', verbal: 'not-testable', motor: '6' },
      { level: 'voice', glasgow: { eyes: 3, verbal: 'not-testable', motor: 6 } },
    ],
    ['weight', { kg: '71.4', how: 'stated' }, { kg: 71.4, how: 'stated' }],
    ['height', { cm: '168', how: 'measured' }, { cm: 168, how: 'measured', lying: false }],
    ['height', { cm: '68.5', how: 'measured', lying: 'yes' }, { cm: 68.5, how: 'measured', lying: true }],
  ])('%s %j', (of, fields, expected) => {
    expect(read(of, fields)).toEqual({ ok: true, value: { of, ...expected } });
  });

  test('a saturation says what is breathed; what was typed of oxygen before a change to air is not read', () => {
    const oxygen = { percent: '91', device: 'nasal cannula', litresPerMinute: '2', pulsePerMinute: '88' };
    const kept = {
      of: 'oxygen-saturation',
      percent: 91,
      probe: null,
      oxygenPercent: null,
      pulsePerMinute: 88,
    };
    expect(read('oxygen-saturation', { ...oxygen, breathes: 'oxygen' })).toEqual({
      ok: true,
      value: {
        ...kept,
        onOxygen: true,
        device: 'nasal cannula',
        litresPerMinute: 2,
        scale: 1,
        scalePrescriber: null,
      },
    });
    expect(read('oxygen-saturation', { ...oxygen, breathes: 'air' })).toMatchObject({
      value: { ...kept, onOxygen: false, device: null, litresPerMinute: null },
    });
  });

  test('scale 2 stands only where its prescriber is named; a child has no scale (under 16 years: 192 months)', () => {
    expect(oxygenTarget('Dr Example, invented', 900)).toEqual({
      scale: 2,
      prescriber: 'Dr Example, invented',
    });
    expect([null, 191, 192].map((age) => oxygenTarget(null, age).scale)).toEqual([1, null, 1]);
    const fields = { percent: '90', breathes: 'air' };
    const target = oxygenTarget('Dr Example, invented', 900);
    expect(read('oxygen-saturation', fields, target)).toMatchObject({
      value: { scale: 2, scalePrescriber: 'Dr Example, invented' },
    });
    expect(read('oxygen-saturation', fields)).toMatchObject({ value: { scale: 1, scalePrescriber: null } });
  });
});

describe('what is wrong is said at its field', () => {
  test('a sign of which nothing was typed is missing, never zero, and air is never assumed', () => {
    expect(wrong('temperature', {})).toEqual({ celsius: ['missing'], site: ['missing'] });
    expect(wrong('oxygen-saturation', {})).toEqual({ percent: ['missing'], breathes: ['missing'] });
    expect(wrong('pain', {})).toEqual({ score: ['missing'] });
    expect(wrong('pain', { way: 'verbal' })).toEqual({ word: ['missing'] });
    // Bedside handbook 4.3 (from memory): 0 to 100 mm.
    expect(wrong('pain', { way: 'visual-analogue' })).toEqual({ mm: ['missing'] });
    expect(wrong('pain', { way: 'visual-analogue', mm: '100' })).toEqual({});
    expect(wrong('pain', { way: 'visual-analogue', mm: '101' })).toEqual({ mm: ['out-of-range'] });
    expect(wrong('pain', { way: 'visual-analogue', mm: '-1' })).toEqual({ mm: ['out-of-range'] });
    expect(wrong('pain', { way: 'visual-analogue', mm: 'x' })).toEqual({ mm: ['not-a-number'] });
    expect(wrong('consciousness', {})).toEqual({ level: ['missing'] });
    expect(wrong('weight', {})).toEqual({ kg: ['missing'], how: ['missing'] });
    expect(wrong('height', { lying: 'yes' })).toEqual({ cm: ['missing'], how: ['missing'] });
  });

  // Limits: bedside handbook 4.1 (25 to 45 degC) and docs/conventions.md section 7 (the other signs).
  test.each([
    ['temperature', 'celsius', ['25', '45'], ['24.9', '45.1']],
    ['oxygen-saturation', 'percent', ['0', '100'], ['-1', '101']],
    ['weight', 'kg', ['0.2', '700'], ['0.1', '701']],
    ['height', 'cm', ['20', '280'], ['19.9', '280.1']],
  ] as const)('%s takes its limits and nothing beyond them', (of, field, taken, refused) => {
    for (const text of taken) expect(wrong(of, { [field]: text })).not.toHaveProperty(field);
    // The number with its unit: without one it may be asked which was meant.
    const unit = { celsius: ' C', percent: '', kg: ' kg', cm: ' cm' }[field];
    for (const text of refused) expect(wrong(of, { [field]: text + unit })[field]).toEqual(['out-of-range']);
  });

  test('a part of the Glasgow scale that was forgotten is said at that part', () => {
    expect(wrong('consciousness', { level: 'alert', eyes: '4' })).toEqual({
      verbal: ['missing'],
      motor: ['missing'],
    });
  });

  test('a comma is not guessed to be a point', () => {
    expect(wrong('temperature', { celsius: '37,2', site: 'oral' })).toEqual({ celsius: ['not-a-number'] });
  });
});

test('typed and not kept is known by sign; choosing how to ask is nothing typed', () => {
  for (const of of SIGNS) {
    const field = TYPED_FIELDS[of].at(-1) as string;
    expect(unkeptSigns({ [`${of}.${field}`]: 'x' })).toEqual([of]);
  }
  expect(unkeptSigns({ 'pain.way': 'verbal', 'weight.kg': ' ', 'weight.kg.unit': '[lb_av]' })).toEqual([]);
});

describe('in the unit that this device’s user wants', () => {
  const american = wordsFor('en-US', {
    ...USUAL_MANNER,
    temperature: '[degF]',
    length: '[in_i]',
    mass: '[lb_av]',
  });
  const readIn = (of: SignOf, fields: Record<string, string>, { say }: typeof american) =>
    readTypedSign(of, typedBy(fields), SCALE_1, say);

  test.each<[SignOf, Record<string, string>, object]>([
    // 98.6 degF is 37 degC; 1 in is 2.54 cm, 1 lb is 0.45359237 kg, by definition (UCUM).
    ['temperature', { 'celsius.[degF]': '98.6', site: 'oral' }, { celsius: 37 }],
    ['temperature', { 'celsius.[degF]': '100.4', site: 'oral' }, { celsius: 38 }],
    ['height', { 'cm.[in_i]': '70', how: 'measured' }, { cm: 177.8 }],
    ['weight', { 'kg.[lb_av]': '154', how: 'measured' }, { kg: 69.853_224_98 }],
  ])('%s %o', (of, fields, value) => {
    expect(readIn(of, fields, american)).toMatchObject({ ok: true, value });
  });

  test('what was typed in one unit is never read in another', () => {
    const missing = { ok: false, refusals: [{ field: '/kg', code: 'missing' }] };
    expect(readIn('weight', { kg: '70', how: 'measured' }, american)).toMatchObject(missing);
    expect(readIn('weight', { 'kg.[lb_av]': '154', how: 'measured' }, wordsFor('en'))).toMatchObject(missing);
    expect(unkeptSigns({ 'weight.kg.[lb_av]': '154' })).toEqual(['weight']);
  });

  // What a clinician reads off a scale of the other kind, whatever the device's usual unit is.
  test.each<[SignOf, Record<string, string>, object, object]>([
    ['weight', { kg: '150 lb', how: 'measured' }, { kg: 68.038_855_5 }, { value: 150, unit: '[lb_av]' }],
    [
      'temperature',
      { celsius: '99.1 F', site: 'oral' },
      { celsius: 37.277_777_778 },
      { value: 99.1, unit: '[degF]' },
    ],
    ['height', { cm: '5 ft 6 in', how: 'stated' }, { cm: 167.64 }, { value: 66, unit: '[in_i]' }],
    [
      'height',
      { cm: '66', 'cm.unit': '[in_i]', how: 'stated' },
      { cm: 167.64 },
      { value: 66, unit: '[in_i]' },
    ],
    ['height', { cm: '168', how: 'stated' }, { cm: 168 }, { value: 168, unit: 'cm' }],
  ])('%s %o is understood and kept as typed', (of, fields, value, as) => {
    expect(read(of, fields)).toMatchObject({ ok: true, value });
    expect(typedNumberOf(of, typedBy(fields), say)).toEqual(as);
  });

  test('a number that cannot be in the usual unit and can in the other is asked about in words', () => {
    const said = (of: SignOf, fields: Record<string, string>, words = wordsFor('en-GB')) => {
      const parsed = readTypedSign(of, typedBy(fields), SCALE_1, words.say);
      return parsed.ok ? [] : parsed.refusals.map((one) => words.problem(one).message);
    };
    expect(said('temperature', { celsius: '99.1', site: 'oral' })).toEqual([
      '/celsius can be read in more than one way (“99.1”): give 99.1 °F if that is what was read, else from 25 to 45 °C.',
    ]);
    expect(said('temperature', { 'celsius.[degF]': '37.2', site: 'oral' }, american)).toEqual([
      '/celsius can be read in more than one way (“37.2”): give 37.2 °C if that is what was read, else from 77 to 113 °F.',
    ]);
    expect(said('temperature', { celsius: 'warm', site: 'oral' })).toEqual([
      '/celsius is not a number that can be read (“warm”): give a number with its unit, such as 37.2 °C or 99 °F.',
    ]);
    expect(said('temperature', { celsius: '101,3 F', site: 'oral' })).toEqual([
      '/celsius is not a number that can be read (“101,3 F”): give the number without a comma, a point before its decimals.',
    ]);
    expect(said('height', { cm: '5.11 ft', how: 'stated' })).toEqual([
      '/cm is not a number that can be read (“5.11 ft”): give feet and inches, such as 5 ft 11 in, since a part of a foot can be read in two ways.',
    ]);
    expect(said('weight', { kg: '10.10 st', how: 'stated' })).toEqual([
      '/kg is not a number that can be read (“10.10 st”): give stones and pounds, such as 10 st 10 lb, since a part of a stone can be read in two ways.',
    ]);
    // An example that is told would itself be taken.
    for (const [of, fields] of [
      ['temperature', { site: 'oral' }],
      ['weight', { how: 'stated' }],
      ['height', { how: 'stated' }],
    ] as const) {
      const field = { temperature: 'celsius', weight: 'kg', height: 'cm' }[of];
      const [message = ''] = said(of, { ...fields, [field]: 'x' });
      const examples = message.match(/such as (.+) or (.+)\.$/)?.slice(1) ?? [];
      expect(examples).toHaveLength(2);
      for (const example of examples) expect(said(of, { ...fields, [field]: example })).toEqual([]);
    }
  });

  test('a refusal quotes what was typed, and the limits in that unit', () => {
    const parsed = readIn('temperature', { 'celsius.[degF]': '137', site: 'oral' }, american);
    // Refused from 25 to 45 degC (bedside handbook 4.1): 77 to 113 degF.
    const figures = { minimum: 77, maximum: 113 };
    expect(parsed).toMatchObject({ ok: false, refusals: [{ field: '/celsius', got: '137', figures }] });
    expect(readIn('temperature', { 'celsius.[degF]': '113', site: 'oral' }, american).ok).toBe(true);
    expect(readIn('temperature', { 'celsius.[degF]': '77', site: 'oral' }, american).ok).toBe(true);
    expect(readIn('temperature', { 'celsius.[degF]': '113.1', site: 'oral' }, american).ok).toBe(false);
    expect(readIn('temperature', { 'celsius.[degF]': '76.9', site: 'oral' }, american).ok).toBe(false);
  });

  test('a decimal comma is read where the language writes one, and nowhere else', async () => {
    const [spain, mexico] = await Promise.all(['es-ES', 'es-MX'].map((locale) => loadWords(locale)));
    const fields = { celsius: '36,8', site: 'oral' };
    expect(readIn('temperature', fields, spain as typeof american)).toMatchObject({
      value: { celsius: 36.8 },
    });
    // Mexico writes a decimal point (Unicode CLDR).
    expect(readIn('temperature', fields, mexico as typeof american).ok).toBe(false);
    expect(readIn('temperature', fields, american).ok).toBe(false);
    expect(readIn('temperature', { celsius: '36,8,1', site: 'oral' }, spain as typeof american).ok).toBe(
      false,
    );
  });
});
