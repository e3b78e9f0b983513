import { describe, expect, test } from 'vitest';
import { type Circumstances, UNKNOWN_CIRCUMSTANCES } from './circumstances.js';
import type { Count } from './count.js';
import { type CountResult, countResult } from './countResult.js';
import { DEFAULT_COUNT_RULES } from './rules.js';

function counted(count: Partial<Count>, circumstances: Partial<Circumstances> = {}): CountResult {
  const whole: Count = { of: 'pulse', n: 19, windowSeconds: 15, clock: 'any', first: 1, ...count };
  return countResult(whole, { ...UNKNOWN_CIRCUMSTANCES, ...circumstances }, DEFAULT_COUNT_RULES);
}

/** The flags but for those of a rate far out, which have a test of their own. */
const flagsOf = ({ flags }: CountResult) => flags.filter(({ code }) => !code.startsWith('very-'));
const codes = (result: CountResult) => flagsOf(result).map(({ code }) => code);

test.each([
  // Bedside handbook 8 (derived, 1.3 and 2.2).
  ['C001', 18, 15, 72],
  ['C002', 37, 30, 74],
  ['C003', 12, 10, 72],
  ['C020', 8, 30, 16],
])('%s: %d in %d s is %d a minute', (_id, n, windowSeconds, perMinute) => {
  expect(counted({ n, windowSeconds }).perMinute).toBe(perMinute);
});

test.each([
  // Bedside handbook 1.3 and 2.2 (derived): one miscounted beat changes the rate by 60 / T.
  [6, 10],
  [10, 6],
  [15, 4],
  [20, 3],
  [30, 2],
  [60, 1],
])('in %d s one beat is %d a minute', (windowSeconds, step) => {
  expect(counted({ n: 1, windowSeconds }).stepPerMinute).toBe(step);
});

/** The counts of a perfect counter of a regular rhythm, over many evenly spread starting moments. */
function countsFromAnyMoment(perMinute: number, windowSeconds: number, starts: number): number[] {
  const beats = (perMinute * windowSeconds) / 60;
  // Beats at p, p + 1, ... (in beats), p spread over [0, 1); those before the window's end are counted.
  return Array.from({ length: starts }, (_, i) => Math.ceil(beats - (i + 0.5) / starts));
}

test('the fencepost table: 75 a minute, 15 s', () => {
  // Bedside handbook 1.4 and 8, C004 to C006 (derived): x = 18.75.
  expect(counted({ n: Math.floor(18.75), clock: 'beat', first: 0 }).perMinute).toBe(72);
  expect(counted({ n: Math.floor(18.75) + 1, clock: 'beat', first: 1 }).perMinute).toBe(76);
  const rates = countsFromAnyMoment(75, 15, 4000).map((n) => counted({ n }).perMinute);
  expect(rates.filter((rate) => rate === 72).length / rates.length).toBeCloseTo(0.25, 3);
  expect(rates.filter((rate) => rate === 76).length / rates.length).toBeCloseTo(0.75, 3);
  const mean = rates.reduce((sum, rate) => sum + rate, 0) / rates.length;
  expect(mean).toBeCloseTo(75, 3);
  expect(Math.sqrt(rates.reduce((sum, rate) => sum + (rate - mean) ** 2, 0) / rates.length)).toBeCloseTo(
    1.732,
    3,
  );
});

test.each([
  // Bedside handbook 1.4 (derived): average error over f is +30/T for beat and 1, -60/T for any and 0.
  ['beat', 1, 15, 2],
  ['beat', 1, 30, 1],
  ['beat', 1, 60, 0.5],
  ['any', 0, 15, -4],
  ['any', 0, 60, -1],
] as const)(
  'clock %s, first %d, %d s shifts the rate by %d on average, and says so',
  (clock, first, windowSeconds, shift) => {
    const result = counted({ n: 20, windowSeconds, clock, first });
    expect(codes(result)).toEqual(['convention-shifts-rate']);
    expect(flagsOf(result)[0]?.figures.averageShiftPerMinute).toBe(shift);
    expect(result.perMinute).toBe((60 * 20) / windowSeconds);
  },
);

test('the two ways of starting that do not shift the rate out of its range are not flagged', () => {
  expect(codes(counted({ clock: 'any', first: 1 }))).toEqual([]);
  expect(codes(counted({ clock: 'beat', first: 0 }))).toEqual([]);
});

test('an irregular pulse: the range promises nothing, and the apex is to be counted', () => {
  // Bedside handbook 1.5 (from memory) and docs/conventions.md section 5.
  expect(codes(counted({}, { rhythmFelt: 'irregular', site: 'radial' }))).toEqual([
    'range-assumes-regular',
    'count-apex',
  ]);
  expect(codes(counted({}, { rhythmFelt: 'irregular', site: 'apical' }))).toEqual(['range-assumes-regular']);
  expect(codes(counted({ of: 'breaths' }, { rhythmFelt: 'irregular' }))).toEqual(['range-assumes-regular']);
});

test('nothing is rounded', () => {
  expect(counted({ n: 55, windowSeconds: 45 }).perMinute).toBeCloseTo(73.3333333333, 9);
});

describe('a rate at which one looks at the person first', () => {
  // Royal College of Physicians 2017, limits of a single sign, as in bedside handbook 5.2 and C018, C026, C027 (second-hand).
  const flagged = (of: 'pulse' | 'breaths', n: number, ageMonths: number | null = null) => {
    const count = { of, n, windowSeconds: 60, clock: 'any', first: 1 } as const;
    const { flags } = countResult(count, { ...UNKNOWN_CIRCUMSTANCES, ageMonths }, DEFAULT_COUNT_RULES);
    return flags.map(({ code }) => code).filter((code) => code.startsWith('very-'));
  };
  test.each([
    ['pulse', 40, ['very-slow']],
    ['pulse', 41, []],
    ['pulse', 130, []],
    ['pulse', 131, ['very-fast']],
    ['breaths', 8, ['very-slow']],
    ['breaths', 9, []],
    ['breaths', 24, []],
    ['breaths', 25, ['very-fast']],
    ['breaths', 2, ['very-slow']],
    ['pulse', 0, []],
  ] as const)('%s of %s in a minute: %s', (of, n, codes) => {
    expect(flagged(of, n)).toEqual(codes);
  });

  test('a place may switch them off', () => {
    const count: Count = { of: 'pulse', n: 20, windowSeconds: 60, clock: 'any', first: 1 };
    const rules = { ...DEFAULT_COUNT_RULES, lookFirstWhenFarOut: false };
    expect(countResult(count, UNKNOWN_CIRCUMSTANCES, rules).flags).toEqual([]);
  });

  test('the limits are for adults, and for an age not known; a child is not judged by them', () => {
    expect(flagged('pulse', 140, 191)).toEqual([]);
    expect(flagged('pulse', 140, 192)).toEqual(['very-fast']);
  });
});
