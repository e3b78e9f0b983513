import { describe, expect, test } from 'vitest';
import { glasgowTotal } from './glasgowTotal.js';
import { sepsisScreen } from './sepsisScreen.js';
import { inputsOf } from './testing.js';

const screened = (input: object) => sepsisScreen(inputsOf('sepsis-screen', input));
const summed = (input: object) => glasgowTotal(inputsOf('glasgow', input));
const codes = (flags: readonly { readonly code: string }[]) => flags.map(({ code }) => code);

describe('sepsis screen', () => {
  test('W8: breaths 24, systolic 98, Glasgow 15: 2, positive (bedside handbook 5.3)', () => {
    const result = screened({ respirations: 24, systolic: 98, glasgow: 15 });
    expect(result).toMatchObject({ total: 2, parts: { respirations: 1, systolic: 1, consciousness: 0 }, band: 'positive' }); // biome-ignore format: one thought
    expect([codes(result.alerts), codes(result.flags)]).toEqual([['sepsis-screen-positive'], []]);
  });

  test.each([
    // Bedside handbook 5.1 (from memory): 22 or more; 100 or less; Glasgow under 15 or not alert.
    [{ respirations: 21 }, 0],
    [{ respirations: 22 }, 1],
    [{ systolic: 100 }, 1],
    [{ systolic: 101 }, 0],
    [{ glasgow: 14 }, 1],
    [{ glasgow: 15 }, 0],
    [{ consciousness: 'confusion', glasgow: 15 }, 1],
    [{ consciousness: 'alert', glasgow: 14 }, 1], // C083: E4 V4 M6 is 14, a point
    [{ consciousness: 'alert' }, 0],
  ])('%j: %d', (input, total) => {
    const known = { respirations: 16, systolic: 120, consciousness: 'alert' };
    expect(screened({ ...known, ...input }).total).toBe(total);
  });

  test('one point is negative, and does not reassure', () => {
    const result = screened({ respirations: 22, systolic: 120, consciousness: 'alert' });
    expect(result).toMatchObject({ total: 1, band: 'negative', alerts: [] });
    expect(codes(result.flags)).toEqual(['negative-does-not-reassure']);
  });

  test('a missing part leaves no total, and two points already alert', () => {
    expect(screened({ respirations: 24, systolic: 98 })).toMatchObject({
      total: null,
      atLeast: 2,
      band: null,
      missing: ['consciousness'],
      alerts: [{ code: 'sepsis-screen-positive' }],
      why: [{ code: 'parts-missing', figures: { missing: 1, atLeast: 2 } }],
    });
    expect(screened({ systolic: 120 })).toMatchObject({ total: null, atLeast: 0, alerts: [] });
  });
});

describe('Glasgow total (bedside handbook 4.3, from memory)', () => {
  test.each([
    [{ eyes: 4, verbal: 5, motor: 6 }, 15, 'E4 V5 M6 = 15', 'mild'],
    [{ eyes: 4, verbal: 4, motor: 6 }, 14, 'E4 V4 M6 = 14', 'mild'], // C083
    [{ eyes: 4, verbal: 4, motor: 5 }, 13, 'E4 V4 M5 = 13', 'mild'],
    [{ eyes: 3, verbal: 4, motor: 5 }, 12, 'E3 V4 M5 = 12', 'moderate'],
    [{ eyes: 2, verbal: 3, motor: 4 }, 9, 'E2 V3 M4 = 9', 'moderate'],
    [{ eyes: 2, verbal: 2, motor: 4 }, 8, 'E2 V2 M4 = 8', 'severe'],
    [{ eyes: 1, verbal: 1, motor: 1 }, 3, 'E1 V1 M1 = 3', 'severe'],
  ])('%j', (input, total, text, band) => {
    const result = summed(input);
    expect(result).toMatchObject({ total, text, band, missing: [], why: [] });
    expect(codes(result.alerts)).toEqual(band === 'severe' ? ['glasgow-severe'] : []);
  });

  test('a part that cannot be tested or is missing leaves no total (C084, from memory)', () => {
    expect(summed({ eyes: 4, verbal: 'NT', motor: 6 })).toMatchObject({
      total: null,
      band: null,
      text: 'E4 VNT M6',
      missing: [],
      why: [{ code: 'glasgow-not-testable' }],
    });
    expect(summed({ eyes: 1, motor: 1 })).toMatchObject({
      total: null,
      text: 'E1 V? M1',
      missing: ['verbal'],
      alerts: [],
      why: [{ code: 'glasgow-part-missing', figures: { missing: 1 } }],
    });
  });
});
