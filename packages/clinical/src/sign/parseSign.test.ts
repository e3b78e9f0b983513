import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseSign } from './parseSign.js';

function refused(input: unknown): string[] {
  const parsed = parseSign(input);
  return parsed.ok ? [] : parsed.refusals.map(({ field, code }) => `${field} ${code}`);
}

function taken(input: unknown): unknown {
  const parsed = parseSign(input);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.refusals));
  return parsed.value;
}

const ORAL = { of: 'temperature', site: 'oral' };
const AIR = { of: 'oxygen-saturation', percent: 97, onOxygen: false };
const NUMERIC = { of: 'pain', tool: 'numeric' };
const ALERT = { of: 'consciousness', level: 'alert' };
const WEIGHT = { of: 'weight', how: 'measured' };
const HEIGHT = { of: 'height', how: 'measured' };

describe('what is taken', () => {
  test('a temperature, typed or read', () => {
    expect(taken({ ...ORAL, celsius: '37.2' })).toEqual({ ...ORAL, celsius: 37.2 });
  });

  test('a saturation, with what must be kept beside it (bedside handbook 4.2, common practice)', () => {
    const oxygen = {
      of: 'oxygen-saturation',
      percent: 90,
      onOxygen: true,
      device: 'nasal cannula',
      litresPerMinute: 2,
      oxygenPercent: null,
      scale: 2,
      scalePrescriber: 'Dr Example, invented',
      probe: 'finger',
      pulsePerMinute: 88,
    };
    expect(taken(oxygen)).toEqual(oxygen);
    expect(taken(AIR)).toEqual({
      ...AIR,
      device: null,
      litresPerMinute: null,
      oxygenPercent: null,
      scale: null,
      scalePrescriber: null,
      probe: null,
      pulsePerMinute: null,
    });
  });

  test('a pain in points or, with the verbal tool, in a word', () => {
    expect(taken({ ...NUMERIC, score: 0 })).toEqual({ ...NUMERIC, score: 0, word: null, moving: null, where: null }); // biome-ignore format: one thought
    expect(taken({ of: 'pain', tool: 'verbal', word: 'mild', moving: true, where: ' left knee ' })).toEqual({
      of: 'pain',
      tool: 'verbal',
      score: null,
      word: 'mild',
      moving: true,
      where: 'left knee',
    });
  });

  test('a level, and the Glasgow parts beside it, never one made from the other', () => {
    expect(taken(ALERT)).toEqual({ ...ALERT, glasgow: null });
    expect(taken({ ...ALERT, level: 'voice', glasgow: { eyes: 3, verbal: 'NT', motor: '6' } })).toEqual({
      of: 'consciousness',
      level: 'voice',
      glasgow: { eyes: 3, verbal: 'not-testable', motor: 6 },
    });
  });

  test('a weight and a height, with how they are known', () => {
    expect(taken({ of: 'weight', kg: '70.4', how: 'stated' })).toEqual({ of: 'weight', kg: 70.4, how: 'stated' }); // biome-ignore format: one thought
    expect(taken({ ...HEIGHT, cm: 172 })).toEqual({ ...HEIGHT, cm: 172, lying: false });
  });
});

describe('each limit, at it and beyond', () => {
  test.each<[string, Record<string, unknown>, string, readonly number[], readonly number[]]>([
    // Bedside handbook 4.1 (common practice): plausible entry 25 to 45 degC.
    ['temperature', ORAL, 'celsius', [25, 45], [24.9, 45.1]],
    // A share of a hundred.
    ['saturation', AIR, 'percent', [0, 100], [-1, 100.1]],
    // docs/conventions.md section 5, the ceiling of a pulse.
    ['oximeter pulse', AIR, 'pulsePerMinute', [0, 400], [-1, 401]],
    // Bedside handbook 4.3 (from memory): 0 to 10.
    ['pain', NUMERIC, 'score', [0, 10], [-1, 11]],
    // docs/conventions.md section 7.
    ['weight', WEIGHT, 'kg', [0.2, 700], [0.19, 700.1]],
    ['height', HEIGHT, 'cm', [20, 280], [19.9, 280.1]],
  ])('%s', (_what, given, key, within, beyond) => {
    for (const value of within) expect(refused({ ...given, [key]: value })).toEqual([]);
    for (const value of beyond) expect(refused({ ...given, [key]: value })).toEqual([`/${key} out-of-range`]);
  });

  test.each([
    // Bedside handbook 4.3 (from memory): eyes 1 to 4, verbal 1 to 5, motor 1 to 6.
    ['eyes', 4],
    ['verbal', 5],
    ['motor', 6],
  ])('Glasgow %s from 1 to %d', (part, most) => {
    const scored = (value: number) => ({
      ...ALERT,
      glasgow: { eyes: 1, verbal: 1, motor: 1, [part]: value },
    });
    expect([1, most].map((value) => refused(scored(value)))).toEqual([[], []]);
    expect(refused(scored(0))).toEqual([`/glasgow/${part} out-of-range`]);
    expect(refused(scored(most + 1))).toEqual([`/glasgow/${part} out-of-range`]);
    expect(refused(scored(1.5))).toEqual([`/glasgow/${part} not-whole`]);
  });
});

describe('what is refused', () => {
  test.each<[unknown, string[]]>([
    [null, ['/of missing']],
    ['38', [' missing', '/of missing']],
    [{ of: 'pulse' }, ['/of unknown-id']],
    [{ of: 'temperature' }, ['/celsius missing', '/site missing']],
    [{ ...ORAL, celsius: '' }, ['/celsius missing']],
    [{ ...ORAL, celsius: '37,2' }, ['/celsius not-a-number']],
    [{ ...ORAL, celsius: 37, kg: 70 }, ['/kg unknown-field']],
    [{ ...ORAL, celsius: 37, site: 'mouth' }, ['/site unknown-id']],
    // On air or on oxygen must be said: what is not known is not air.
    [{ of: 'oxygen-saturation', percent: 97 }, ['/onOxygen missing']],
    [{ ...AIR, onOxygen: 'false' }, ['/onOxygen unknown-id']],
    [{ ...AIR, litresPerMinute: 2, device: 'mask' }, ['/device contradicts', '/litresPerMinute contradicts']],
    [{ ...AIR, scale: 3 }, ['/scale unknown-id']],
    [{ ...AIR, scale: 2 }, ['/scalePrescriber missing']],
    [{ ...AIR, scale: 2, scalePrescriber: '  ' }, ['/scalePrescriber missing']],
    [{ ...AIR, scale: 1, scalePrescriber: 'Dr Example' }, ['/scalePrescriber contradicts']],
    [{ ...AIR, onOxygen: true, oxygenPercent: 20.9 }, ['/oxygenPercent out-of-range']],
    [{ ...AIR, onOxygen: true, oxygenPercent: 21, litresPerMinute: 100 }, []],
    [{ ...AIR, onOxygen: true, litresPerMinute: 100.5 }, ['/litresPerMinute out-of-range']],
    [{ ...AIR, probe: 'nose' }, ['/probe unknown-id']],
    [{ of: 'pain', score: 3 }, ['/tool missing']],
    [{ ...NUMERIC, score: 3.5 }, ['/score not-whole']],
    [{ of: 'pain', tool: 'visual-analogue', score: 3.5 }, []],
    [{ of: 'pain', tool: 'face', score: 3 }, ['/score impossible']],
    [{ of: 'pain', tool: 'face', score: 4 }, []],
    [{ ...NUMERIC, score: 3, word: 'mild' }, ['/word contradicts']],
    [{ of: 'pain', tool: 'verbal', score: 3, word: 'mild' }, ['/score contradicts']],
    [{ of: 'pain', tool: 'verbal' }, ['/word missing']],
    [{ ...NUMERIC, score: 3, moving: 'yes', where: 3 }, ['/moving unknown-id', '/where unknown-id']],
    [{ of: 'consciousness' }, ['/level missing']],
    [{ ...ALERT, glasgow: {} }, ['/glasgow/eyes missing', '/glasgow/verbal missing', '/glasgow/motor missing']], // biome-ignore format: one thought
    [{ ...ALERT, glasgow: 15 }, ['/glasgow missing', '/glasgow/eyes missing', '/glasgow/verbal missing', '/glasgow/motor missing']], // biome-ignore format: one thought
    [{ ...WEIGHT, how: 'guessed', kg: 70 }, ['/how unknown-id']],
    [{ ...HEIGHT, cm: 170, lying: 1 }, ['/lying unknown-id']],
  ])('%j: %j', (input, expected) => {
    expect(refused(input)).toEqual(expected);
  });
});

test('what was taken is taken again, the same', () => {
  const sign = fc.oneof(
    fc.record({
      of: fc.constant('temperature'),
      celsius: fc.integer({ min: 250, max: 450 }).map((tenths) => tenths / 10),
      site: fc.constantFrom('oral', 'rectal'),
    }),
    fc.record({
      of: fc.constant('oxygen-saturation'),
      percent: fc.integer({ min: 0, max: 100 }),
      onOxygen: fc.constant(true),
      litresPerMinute: fc.option(fc.integer({ min: 0, max: 15 })),
    }),
    fc.record({
      of: fc.constant('consciousness'),
      level: fc.constantFrom('alert', 'pain'),
      glasgow: fc.option(
        fc.record({
          eyes: fc.constantFrom(1, 'not-testable'),
          verbal: fc.constant(5),
          motor: fc.constant(6),
        }),
      ),
    }),
  );
  fc.assert(
    fc.property(sign, (input) => {
      expect(taken(taken(input))).toEqual(taken(input));
    }),
  );
});
