import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { EARLY_WARNING_PARTS, type EarlyWarning, earlyWarning } from './earlyWarning.js';
import { inputsOf } from './testing.js';

const WELL = {
  respirations: 16,
  oxygenSaturation: 97,
  onOxygen: false,
  systolic: 124,
  pulse: 72,
  consciousness: 'alert',
  temperature: 36.8,
  age: 50,
};

function scored(input: object): EarlyWarning {
  return earlyWarning(inputsOf('early-warning', input));
}

/** The points of one part, beside others that give none. */
function points(part: keyof EarlyWarning['parts'], input: object): number | null {
  return scored({ ...WELL, ...input }).parts[part];
}

function codes(flags: readonly { readonly code: string }[]): string[] {
  return flags.map(({ code }) => code);
}

describe('the table, at each limit and on both sides (Royal College of Physicians 2017; bedside handbook 5.2)', () => {
  test.each([
    // C026, C027 (second-hand) among them.
    ...([[0, 3], [7, 3], [8, 3], [9, 1], [11, 1], [12, 0], [20, 0], [21, 2], [24, 2], [25, 3], [60, 3]] as const), // biome-ignore format: one row of the table
  ])('respirations %d: %d', (respirations, expected) => {
    expect(points('respirations', { respirations })).toBe(expected);
  });

  test.each([
    ...([[0, 3], [91, 3], [92, 2], [93, 2], [94, 1], [95, 1], [96, 0], [100, 0]] as const), // biome-ignore format: one row of the table
  ])('saturation %d %% on scale 1, on air and on oxygen: %d', (oxygenSaturation, expected) => {
    expect(points('oxygenSaturation', { oxygenSaturation })).toBe(expected);
    expect(points('oxygenSaturation', { oxygenSaturation, onOxygen: true })).toBe(expected);
  });

  test.each([
    ...([[83, 3, 3], [84, 2, 2], [85, 2, 2], [86, 1, 1], [87, 1, 1], [88, 0, 0], [92, 0, 0], [93, 0, 1], [94, 0, 1], [95, 0, 2], [96, 0, 2], [97, 0, 3], [100, 0, 3]] as const), // biome-ignore format: one row of the table
  ])('saturation %d %% on scale 2: %d on air, %d on oxygen', (oxygenSaturation, onAir, onOxygen) => {
    expect(points('oxygenSaturation', { oxygenSaturation, scale: 2 })).toBe(onAir);
    expect(points('oxygenSaturation', { oxygenSaturation, scale: 2, onOxygen: true })).toBe(onOxygen);
  });

  test('air 0, oxygen 2', () => {
    expect([points('onOxygen', {}), points('onOxygen', { onOxygen: true })]).toEqual([0, 2]);
  });

  test.each([
    ...([[60, 3], [90, 3], [91, 2], [100, 2], [101, 1], [110, 1], [111, 0], [219, 0], [220, 3], [260, 3]] as const), // biome-ignore format: one row of the table
  ])('systolic %d: %d', (systolic, expected) => {
    expect(points('systolic', { systolic })).toBe(expected);
  });

  test.each([
    // C018 (second-hand) among them.
    ...([[0, 3], [40, 3], [41, 1], [50, 1], [51, 0], [90, 0], [91, 1], [110, 1], [111, 2], [130, 2], [131, 3]] as const), // biome-ignore format: one row of the table
  ])('pulse %d: %d', (pulse, expected) => {
    expect(points('pulse', { pulse })).toBe(expected);
  });

  test.each([
    ['alert', 0],
    ['confusion', 3],
    ['voice', 3],
    ['pain', 3],
    ['unresponsive', 3],
  ] as const)('%s: %d', (consciousness, expected) => {
    expect(points('consciousness', { consciousness })).toBe(expected);
  });

  test.each([
    ...([[34.9, 3], [35, 3], [35.1, 1], [36, 1], [36.1, 0], [38, 0], [38.1, 1], [39, 1], [39.1, 2], [42, 2]] as const), // biome-ignore format: one row of the table
    // C080 (second-hand; rounding derived): 36.04 is 36.0, 38.05 is 38.1, half up.
    ...([[36.04, 1], [36.05, 0], [38.05, 1], [38.04, 0], [35.04, 3], [35.05, 1], [39.05, 2], [39.04, 1]] as const), // biome-ignore format: one row of the table
  ])('temperature %d: %d', (temperature, expected) => {
    expect(points('temperature', { temperature })).toBe(expected);
  });

  test('a number between two rows is rounded to a whole one first, half up', () => {
    // docs/conventions.md section 7: the printed rows leave no gap between whole numbers.
    expect([8.4, 8.5].map((respirations) => points('respirations', { respirations }))).toEqual([3, 1]);
    expect([24.4, 24.5].map((respirations) => points('respirations', { respirations }))).toEqual([2, 3]);
    expect([90.4, 90.5].map((systolic) => points('systolic', { systolic }))).toEqual([3, 2]);
    expect([130.4, 130.5].map((pulse) => points('pulse', { pulse }))).toEqual([2, 3]);
    expect([91.4, 91.5].map((percent) => points('oxygenSaturation', { oxygenSaturation: percent }))).toEqual([3, 2]); // biome-ignore format: one thought
  });
});

// Bedside handbook 8, C081 and C082 (second-hand): 93 % on air by scale 1 and 2, and on oxygen by scale 2.
test('C081, C082: 93 % gives 2 or 0 on air by the scale, and 1 and 2 more on oxygen by scale 2', () => {
  const parts = (more: object) => scored({ oxygenSaturation: 93, ...more }).parts;
  expect(parts({ onOxygen: false, scale: 1 })).toMatchObject({ oxygenSaturation: 2, onOxygen: 0 });
  expect(parts({ onOxygen: false, scale: 2 })).toMatchObject({ oxygenSaturation: 0, onOxygen: 0 });
  expect(parts({ onOxygen: true, scale: 2 })).toMatchObject({ oxygenSaturation: 1, onOxygen: 2 });
});

describe('worked examples (bedside handbook 5.3, 8 C089)', () => {
  const on = { consciousness: 'alert', age: 60 };
  test.each([
    // W4
    [{ ...on, respirations: 22, oxygenSaturation: 94, onOxygen: false, systolic: 108, pulse: 112, temperature: 38.4 }, [2, 1, 0, 1, 2, 0, 1], 7, 'high'], // biome-ignore format: one example
    // W5, on scale 2 and, as it says, on scale 1
    [{ ...on, respirations: 24, oxygenSaturation: 95, onOxygen: true, scale: 2, systolic: 124, pulse: 96, temperature: 37.2 }, [2, 2, 2, 0, 1, 0, 0], 7, 'high'], // biome-ignore format: one example
    [{ ...on, respirations: 24, oxygenSaturation: 95, onOxygen: true, scale: 1, systolic: 124, pulse: 96, temperature: 37.2 }, [2, 1, 2, 0, 1, 0, 0], 6, 'medium'], // biome-ignore format: one example
    // W6
    [{ ...on, respirations: 16, oxygenSaturation: 97, onOxygen: false, systolic: 88, pulse: 88, temperature: 36.5 }, [0, 0, 0, 3, 0, 0, 0], 3, 'low-medium'], // biome-ignore format: one example
    // W7, the maximum
    [{ age: 60, respirations: 30, oxygenSaturation: 85, onOxygen: true, scale: 1, systolic: 70, pulse: 140, consciousness: 'voice', temperature: 34.5 }, [3, 3, 2, 3, 3, 3, 3], 20, 'high'], // biome-ignore format: one example
  ])('%j', (input, parts, total, band) => {
    const result = scored(input);
    expect(Object.values(result.parts)).toEqual(parts);
    expect(result).toMatchObject({ total, atLeast: total, band, missing: [], why: [] });
  });

  test('W6: one part of three is to be reviewed urgently and checked hourly', () => {
    const { alerts, response, checks } = scored({ ...WELL, systolic: 88 });
    expect(codes(alerts)).toEqual(['three-points-systolic']);
    expect(response?.code).toBe('response-ward-review');
    expect(checks).toEqual({ code: 'check-every-hours', figures: { hours: 1 } });
  });
});

describe('the bands, at each limit and on both sides (bedside handbook 5.2)', () => {
  // Parts that add up without one of three.
  const TWO = { respirations: 21 };
  const FOUR = { ...TWO, pulse: 111 };
  test.each([
    [{}, 0, 'low', 'response-routine', { code: 'check-every-hours', figures: { hours: 12 } }],
    [{ pulse: 91 }, 1, 'low', 'response-nurse-decides', { code: 'check-between-hours', figures: { fromHours: 4, toHours: 6 } }], // biome-ignore format: one row
    [FOUR, 4, 'low', 'response-nurse-decides', { code: 'check-between-hours' }],
    [{ ...FOUR, temperature: 36 }, 5, 'medium', 'response-urgent-assessment', { code: 'check-every-hours', figures: { hours: 1 } }], // biome-ignore format: one row
    [{ ...FOUR, systolic: 100 }, 6, 'medium', 'response-urgent-assessment', { code: 'check-every-hours' }],
    [{ ...FOUR, systolic: 100, temperature: 36 }, 7, 'high', 'response-emergency-team', { code: 'check-continuously' }], // biome-ignore format: one row
    // Three in one part: low-medium up to 4, then the total decides.
    [{ consciousness: 'confusion' }, 3, 'low-medium', 'response-ward-review', { code: 'check-every-hours' }],
    [{ consciousness: 'voice', pulse: 91 }, 4, 'low-medium', 'response-ward-review', {}],
    [{ consciousness: 'voice', ...TWO }, 5, 'medium', 'response-urgent-assessment', {}],
    [{ consciousness: 'voice', ...FOUR }, 7, 'high', 'response-emergency-team', {}],
  ])('%j: %d, %s', (input, total, band, response, checks) => {
    const result = scored({ ...WELL, ...input });
    expect(result).toMatchObject({ total, band, response: { code: response }, checks });
  });

  test('a sum that is medium or high alerts', () => {
    expect(codes(scored({ ...WELL, ...FOUR }).alerts)).toEqual([]);
    expect(codes(scored({ ...WELL, ...FOUR, temperature: 36 }).alerts)).toEqual(['early-warning-medium']);
    expect(codes(scored({ ...WELL, ...FOUR, systolic: 100 }).alerts)).toEqual(['early-warning-medium']);
    expect(codes(scored({ ...WELL, ...FOUR, systolic: 100, temperature: 36 }).alerts)).toEqual(['early-warning-high']); // biome-ignore format: one thought
  });
});

describe('a missing part (bedside handbook 8, C090, common practice: incomplete, no total)', () => {
  test.each(EARLY_WARNING_PARTS)('%s', (part) => {
    const { [part]: _absent, ...rest } = WELL;
    expect(scored(rest)).toMatchObject({
      total: null,
      band: null,
      response: null,
      checks: null,
      atLeast: 0,
      missing: [part],
      parts: { [part]: null },
      why: [{ code: 'parts-missing', figures: { missing: 1, atLeast: 0 } }],
    });
  });

  test('a part of three still alerts, and a sum that is high already', () => {
    const low = scored({ systolic: 84 });
    expect(low).toMatchObject({ total: null, band: null, atLeast: 3 });
    expect(codes(low.alerts)).toEqual(['three-points-systolic']);
    const { temperature: _absent, ...rest } = { ...WELL, respirations: 26, systolic: 88, pulse: 96 };
    expect(scored(rest)).toMatchObject({ total: null, band: null, atLeast: 7, missing: ['temperature'] });
    expect(codes(scored(rest).alerts)).toContain('early-warning-high');
  });

  test('on scale 2 a high saturation needs to know whether oxygen is given', () => {
    const { onOxygen: _absent, ...rest } = { ...WELL, scale: 2 };
    expect(scored({ ...rest, oxygenSaturation: 97 })).toMatchObject({ missing: ['onOxygen'], parts: { oxygenSaturation: null } }); // biome-ignore format: one thought
    expect(scored({ ...rest, oxygenSaturation: 83 }).parts.oxygenSaturation).toBe(3);
    expect(scored({ ...rest, oxygenSaturation: 92 }).parts.oxygenSaturation).toBe(0);
  });

  test('what is known is told as it is: no part lowers the sum, whatever else comes', () => {
    const part = {
      respirations: fc.integer({ min: 0, max: 60 }),
      oxygenSaturation: fc.integer({ min: 0, max: 100 }),
      onOxygen: fc.boolean(),
      systolic: fc.integer({ min: 40, max: 260 }),
      pulse: fc.integer({ min: 0, max: 220 }),
      consciousness: fc.constantFrom('alert', 'confusion', 'voice', 'pain', 'unresponsive'),
      temperature: fc.integer({ min: 300, max: 420 }).map((tenths) => tenths / 10),
      scale: fc.constantFrom(1, 2),
    };
    const whole = fc.record(part);
    const some = fc.subarray([...EARLY_WARNING_PARTS]);
    fc.assert(
      fc.property(whole, some, (input, kept) => {
        const full = scored(input);
        const { scale } = input;
        const partial = scored({ scale, ...Object.fromEntries(kept.map((key) => [key, input[key]])) });
        expect(partial.atLeast).toBeLessThanOrEqual(full.atLeast);
        expect(full.total).toBe(full.atLeast);
        expect(full.atLeast).toBeLessThanOrEqual(20);
        expect(partial.total === null).toBe(kept.length < EARLY_WARNING_PARTS.length);
        expect(partial.band === null).toBe(partial.total === null);
        for (const code of codes(partial.alerts).filter((one) => one.startsWith('three'))) {
          expect(codes(full.alerts)).toContain(code);
        }
      }),
    );
  });
});

// Bedside handbook 2.5 (gasps are treated as an arrest) and 5.2; a ward review would come too late (our decision).
test.each([
  [{ consciousness: 'unresponsive' }, ['unresponsive', 'three-points-consciousness']],
  [{ consciousness: 'pain' }, ['three-points-consciousness']],
  [{ respirations: 0 }, ['no-breath-counted', 'three-points-respirations']],
  [{ respirations: 1 }, ['three-points-respirations']],
  [{ pulse: 0 }, ['no-pulse-counted', 'three-points-pulse']],
  [{ pulse: 1 }, ['three-points-pulse']],
])('%j alone is an emergency before it is points', (more, alerts) => {
  expect(codes(scored(more).alerts)).toEqual(alerts);
});

test('an age that is not known and scale 2 are told', () => {
  const { age: _absent, ...rest } = WELL;
  expect(codes(scored(rest).flags)).toEqual(['score-age-not-known']);
  expect(codes(scored(WELL).flags)).toEqual([]);
  expect(codes(scored({ ...WELL, scale: 2 }).flags)).toEqual(['scale-two']);
});
