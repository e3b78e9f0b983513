import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { roundTo } from '../contract/rounding.js';
import { bodyMassIndex } from './bodyMassIndex.js';
import { meanPressure } from './meanPressure.js';
import { paediatricShockIndex } from './paediatricShockIndex.js';
import { pulsePressure } from './pulsePressure.js';
import { ratePressureProduct } from './ratePressureProduct.js';
import type { ScoreInputs } from './scoreInputs.js';
import type { ScoreId } from './scores.js';
import { ageShockIndex, modifiedShockIndex, shockIndex } from './shockIndex.js';
import { inputsOf } from './testing.js';
import { celsiusOf, centimetresOf, fahrenheitOf, kilogramsOf, kiloPascalsOf } from './units.js';

type Scored = { readonly value: number | null; readonly band: string | null };

/** The value to so many decimals, and its band. */
function of<Result extends Scored>(
  id: ScoreId,
  score: (inputs: ScoreInputs) => Result,
  input: object,
  decimals: number,
): [number | null, string | null] {
  const { value, band } = score(inputsOf(id, input));
  return [value === null ? null : roundTo(value, decimals), band];
}

function flagged(result: { readonly flags: readonly { readonly code: string }[] }): string[] {
  return result.flags.map(({ code }) => code);
}

describe('mean pressure', () => {
  test.each([
    // Bedside handbook 8, C087 (derived, 5.3); W1, W2, W3.
    [118, 76, 90],
    [120, 80, 93],
    [142, 88, 106],
    [186, 112, 137],
    [90, 60, 70],
  ])('%d/%d: %d', (systolic, diastolic, mean) => {
    expect(of('mean-pressure', meanPressure, { systolic, diastolic }, 0)[0]).toBe(mean);
  });

  test('120/80 gives 93.33 (OpenStax, Anatomy and Physiology, worked example)', () => {
    expect(of('mean-pressure', meanPressure, { systolic: 120, diastolic: 80 }, 2)[0]).toBe(93.33);
  });

  test('by form factor and corrected for the rate, beside it', () => {
    // W13 (derived): 72 /min, 120/80: 96.7; 0.4 of 40 is 16.
    const result = meanPressure(inputsOf('mean-pressure', { systolic: 120, diastolic: 80, pulse: 72 }));
    expect(roundTo(result.rateCorrectedMmHg ?? 0, 1)).toBe(96.7);
    expect(result.formFactorMmHg).toBe(96);
    expect(meanPressure(inputsOf('mean-pressure', { systolic: 120, diastolic: 80 })).rateCorrectedMmHg).toBeNull(); // biome-ignore format: one thought
  });

  test.each([
    // Bedside handbook 5.1 (from memory): under 65 low, 70 to 105 usual. The mean of d + 3 over d is d + 1.
    [67, 64, 65, 'below-usual'],
    [66.9, 64, 64.967, 'low'],
    [72, 69, 70, 'usual'],
    [71.9, 69, 69.967, 'below-usual'],
    [107, 104, 105, 'usual'],
    [107.1, 104, 105.033, 'above-usual'],
  ])('%d/%d: %d is %s', (systolic, diastolic, mean, band) => {
    expect(of('mean-pressure', meanPressure, { systolic, diastolic }, 3)).toEqual([mean, band]);
  });

  test('a low one is told, on its own side', () => {
    expect(flagged(meanPressure(inputsOf('mean-pressure', { systolic: 66.9, diastolic: 64 })))).toEqual(['mean-pressure-low']); // biome-ignore format: one thought
    expect(flagged(meanPressure(inputsOf('mean-pressure', { systolic: 67, diastolic: 64 })))).toEqual([]);
  });

  test('lies between the two pressures, by every rule', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 150 }), fc.integer({ min: 1, max: 150 }), (diastolic, above) => {
        const systolic = diastolic + above;
        const result = meanPressure(inputsOf('mean-pressure', { systolic, diastolic, pulse: 80 }));
        for (const mean of [result.value, result.formFactorMmHg, result.rateCorrectedMmHg]) {
          expect(mean).toBeGreaterThan(diastolic);
          expect(mean).toBeLessThan(systolic);
        }
      }),
    );
  });
});

// Conventions 6: a diastolic of 0 without the muffling measures nothing; 118/0 has no mean of 39.
test('heard to zero with no muffling noted there is no mean, no pulse pressure and no modified shock index', () => {
  const toZero = { systolic: 118, diastolic: 0 };
  const none = { value: null, band: null, flags: [], why: [{ code: 'value-needs-diastolic' }] };
  expect(meanPressure(inputsOf('mean-pressure', toZero))).toMatchObject(none);
  expect(pulsePressure(inputsOf('pulse-pressure', toZero))).toMatchObject(none);
  expect(modifiedShockIndex(inputsOf('modified-shock-index', { ...toZero, pulse: 80 }))).toMatchObject(none);
  expect(meanPressure(inputsOf('mean-pressure', { systolic: 118, diastolic: 1 })).value).toBeCloseTo(40, 10);
});

test('after palpation there is no mean, no pulse pressure and no modified shock index (C091, derived)', () => {
  const felt = { systolic: 84 };
  expect(meanPressure(inputsOf('mean-pressure', felt))).toMatchObject({
    value: null,
    band: null,
    formFactorMmHg: null,
    rateCorrectedMmHg: null,
    missing: ['diastolic'],
    why: [{ code: 'value-needs-diastolic' }],
  });
  expect(pulsePressure(inputsOf('pulse-pressure', felt))).toMatchObject({ value: null, why: [{ code: 'value-needs-diastolic' }] }); // biome-ignore format: one thought
  expect(modifiedShockIndex(inputsOf('modified-shock-index', { ...felt, pulse: 120 }))).toMatchObject({
    value: null,
    missing: ['diastolic'],
    why: [{ code: 'value-needs-diastolic' }],
  });
  expect(of('shock-index', shockIndex, { ...felt, pulse: 120 }, 2)).toEqual([1.43, 'high']);
});

describe('pulse pressure', () => {
  test.each([
    // C087 (derived); bands 5.1 (from memory): under a quarter of the systolic narrow, from 60 wide.
    [118, 76, 42, 'usual'],
    [120, 80, 40, 'usual'],
    [142, 88, 54, 'usual'],
    [140, 81, 59, 'usual'],
    [140, 80, 60, 'wide'],
    [100, 75, 25, 'usual'],
    [100, 75.1, 24.9, 'narrow'],
    [100, 76, 24, 'narrow'],
    [260, 198, 62, 'narrow'],
  ])('%d/%d: %d, %s', (systolic, diastolic, value, band) => {
    expect(of('pulse-pressure', pulsePressure, { systolic, diastolic }, 1)).toEqual([value, band]);
  });

  test('that is wide and narrow says both', () => {
    const result = pulsePressure(inputsOf('pulse-pressure', { systolic: 260, diastolic: 198 }));
    expect(flagged(result)).toEqual(['pulse-pressure-narrow', 'pulse-pressure-wide']);
  });
});

describe('shock indices of adults', () => {
  test('the worked example (W3, C088, derived)', () => {
    const bleeding = { pulse: 110, systolic: 90 };
    expect(of('shock-index', shockIndex, bleeding, 2)).toEqual([1.22, 'high']);
    expect(of('modified-shock-index', modifiedShockIndex, { ...bleeding, diastolic: 60 }, 2)).toEqual([1.57, 'high']); // biome-ignore format: one thought
    expect(of('age-shock-index', ageShockIndex, { ...bleeding, age: 70 }, 1)).toEqual([85.6, 'high']);
  });

  test.each([
    // Bedside handbook 5.1 (second-hand): 0.5 to 0.7 healthy, over 0.9, 1.0 or more.
    [49, 100, 'below-usual', []],
    [50, 100, 'usual', []],
    [70, 100, 'usual', []],
    [71, 100, 'above-usual', []],
    [90, 100, 'above-usual', []],
    [91, 100, 'raised', ['shock-index-raised']],
    [99, 100, 'raised', ['shock-index-raised']],
    [100, 100, 'high', ['shock-index-high']],
    [101, 100, 'high', ['shock-index-high']],
    // Ratios that no double holds exactly: 0.7 and 0.9 on their limits.
    [84, 120, 'usual', []],
    [99, 110, 'above-usual', []],
  ])('%d / %d: %s', (pulse, systolic, band, flags) => {
    const result = shockIndex(inputsOf('shock-index', { pulse, systolic, age: 17 }));
    expect([result.band, flagged(result)]).toEqual([band, flags]);
  });

  test('of a child has no adult’s word', () => {
    expect(shockIndex(inputsOf('shock-index', { pulse: 120, systolic: 100, age: 16 }))).toMatchObject({
      value: 1.2,
      band: null,
      flags: [],
      why: [{ code: 'adult-bands-only', figures: { age: 16, fromYears: 17 } }],
    });
    expect(of('age-shock-index', ageShockIndex, { pulse: 120, systolic: 100, age: 16 }, 1)).toEqual([19.2, null]); // biome-ignore format: one thought
  });

  test.each([
    // 5.1: under 0.7 (from memory) or over 1.3 (found). The mean of 120/90 is 100.
    [69, 'low', ['modified-shock-index-low']],
    [70, 'usual', []],
    [130, 'usual', []],
    [131, 'high', ['modified-shock-index-high']],
  ])('modified: %d over a mean of 100: %s', (pulse, band, flags) => {
    const result = modifiedShockIndex(
      inputsOf('modified-shock-index', { pulse, systolic: 120, diastolic: 90 }),
    );
    expect([result.band, flagged(result)]).toEqual([band, flags]);
  });

  test.each([
    // 5.1 (from memory): over 50.
    [50, 100, 100, 'usual'],
    [51, 100, 100, 'high'],
    [50, 101, 100, 'high'],
  ])('age: %d years x %d / %d: %s', (age, pulse, systolic, band) => {
    expect(ageShockIndex(inputsOf('age-shock-index', { age, pulse, systolic })).band).toBe(band);
  });

  test('what is missing is named, and nothing is guessed', () => {
    expect(shockIndex(inputsOf('shock-index', {}))).toMatchObject({ value: null, missing: ['pulse', 'systolic'] }); // biome-ignore format: one thought
    expect(ageShockIndex(inputsOf('age-shock-index', { pulse: 80, systolic: 120 }))).toMatchObject({
      value: null,
      missing: ['age'],
      why: [{ code: 'inputs-missing', figures: { missing: 1 } }],
    });
  });
});

describe('shock index of a child', () => {
  test.each([
    // W12 (derived): 7 years, 118 / 104: 1.135 > 1.0.
    [7, 118, 104, 'high'],
    // Bedside handbook 5.1 (found): 4 to 6 over 1.22; 7 to 12 over 1.0; 13 to 16 over 0.9.
    [4, 122, 100, 'usual'],
    [4, 123, 100, 'high'],
    [6, 122, 100, 'usual'],
    [6, 123, 100, 'high'],
    [7, 100, 100, 'usual'],
    [7, 101, 100, 'high'],
    [12, 100, 100, 'usual'],
    [12, 101, 100, 'high'],
    [13, 90, 100, 'usual'],
    [13, 91, 100, 'high'],
    [16, 90, 100, 'usual'],
    [16, 91, 100, 'high'],
    [3, 140, 100, null],
    [17, 140, 100, null],
  ])('%d years, %d / %d: %s', (age, pulse, systolic, band) => {
    const result = paediatricShockIndex(inputsOf('paediatric-shock-index', { age, pulse, systolic }));
    expect(result.band).toBe(band);
    expect(result.value).toBeCloseTo(pulse / systolic, 12);
    expect(result.why.map(({ code }) => code)).toEqual(band === null ? ['no-limit-for-age'] : []);
    expect(flagged(result)).toEqual(band === 'high' ? ['paediatric-shock-index-high'] : []);
  });
});

describe('rate-pressure product and body-mass index', () => {
  test.each([
    // Bedside handbook 5.1 (from memory): resting about 6000 to 12 000.
    [60, 100, 6000, 'usual'],
    [59, 100, 5900, 'below-usual'],
    [100, 120, 12_000, 'usual'],
    [101, 120, 12_120, 'above-usual'],
  ])('%d x %d: %d, %s', (pulse, systolic, value, band) => {
    expect(of('rate-pressure-product', ratePressureProduct, { pulse, systolic }, 0)).toEqual([value, band]);
  });

  test('C085 (derived): 70.0 kg, 170 cm is 24.2', () => {
    expect(of('body-mass-index', bodyMassIndex, { weightKg: 70, heightCm: 170 }, 1)).toEqual([24.2, 'usual']);
  });

  test.each([
    // Bedside handbook 4.4 (from memory); 200 cm: the index is the weight over 4, unrounded.
    [73.9, 'under'],
    [74, 'usual'],
    [99.8, 'usual'], // 24.95: shown 25.0 to a tenth, and still under 25
    [100, 'over'],
    [119.9, 'over'],
    [120, 'class-1'],
    [139.9, 'class-1'],
    [140, 'class-2'],
    [159.9, 'class-2'],
    [160, 'class-3'],
  ])('%d kg at 200 cm: %s', (weightKg, band) => {
    expect(bodyMassIndex(inputsOf('body-mass-index', { weightKg, heightCm: 200, age: 18 })).band).toBe(band);
  });

  test('a child has an index and no adult’s class', () => {
    const child = bodyMassIndex(inputsOf('body-mass-index', { weightKg: 40, heightCm: 140, age: 17 }));
    expect(child).toMatchObject({ band: null, why: [{ code: 'adult-bands-only' }] });
    expect(child.value).not.toBeNull();
    expect(bodyMassIndex(inputsOf('body-mass-index', { weightKg: 40 }))).toMatchObject({ value: null, missing: ['heightCm'] }); // biome-ignore format: one thought
  });
});

describe('units (bedside handbook 8, C078, C079, C085, C086, derived)', () => {
  test('degrees', () => {
    expect([38, 39.1].map((celsius) => roundTo(fahrenheitOf(celsius), 1))).toEqual([100.4, 102.4]);
    expect([98.6, 95].map((fahrenheit) => roundTo(celsiusOf(fahrenheit), 1))).toEqual([37, 35]);
  });

  test('kilopascals, pounds, stones, inches', () => {
    expect(roundTo(kiloPascalsOf(120), 1)).toBe(16);
    expect(roundTo(kilogramsOf(154), 1)).toBe(69.9);
    // 11 st is 154 lb: 14 lb to the stone.
    expect(kilogramsOf(0, 11)).toBe(kilogramsOf(154));
    expect(centimetresOf(1)).toBe(2.54);
  });

  test('there and back', () => {
    fc.assert(
      fc.property(fc.double({ min: 25, max: 45, noNaN: true }), (celsius) => {
        expect(celsiusOf(fahrenheitOf(celsius))).toBeCloseTo(celsius, 10);
      }),
    );
  });
});
