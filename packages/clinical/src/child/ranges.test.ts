import { describe, expect, test } from 'vitest';
import { breaths95thCentile, fastBreathingLimit, isFastBreathing } from './breathing.js';
import { besideRange, RANGE_SETS, rateCentiles, referenceRange } from './ranges.js';

const YEAR = 12;

/** The printed ranges of a set: age from, to (not included), "low-high", "asleep low-high". */
type Printed = readonly (readonly [number, number, string, string?])[];

describe.each<[string, 'pulse' | 'breaths', 'pals-2015' | 'pals-2006' | 'apls', Printed]>([
  // Bedside handbook 1.6 (second-hand).
  [
    'PALS 2015',
    'pulse',
    'pals-2015',
    [
      [0, 1, '100-205', '90-160'],
      [1, YEAR, '100-190', '90-160'],
      [YEAR, 3 * YEAR, '98-140', '80-120'],
      [3 * YEAR, 6 * YEAR, '80-120', '65-100'],
      [6 * YEAR, 12 * YEAR, '75-118', '58-90'],
      [12 * YEAR, 16 * YEAR, '60-100', '50-90'],
    ],
  ],
  [
    'PALS 2006',
    'pulse',
    'pals-2006',
    [
      [0, 3, '85-205', '80-160'],
      [3, 2 * YEAR, '100-190', '75-160'],
      [2 * YEAR, 11 * YEAR, '60-140', '60-90'],
      [11 * YEAR, 18 * YEAR, '60-100', '50-90'],
    ],
  ],
  // Bedside handbook 1.6 (found in Fleming 2011, web appendix).
  [
    'APLS',
    'pulse',
    'apls',
    [
      [0, YEAR, '110-160'],
      [YEAR, 2 * YEAR, '100-150'],
      [2 * YEAR, 5 * YEAR, '95-140'],
      [5 * YEAR, 12 * YEAR, '80-120'],
      [12 * YEAR, 18 * YEAR, '60-100'],
    ],
  ],
  // Bedside handbook 2.4.
  [
    'PALS 2015',
    'breaths',
    'pals-2015',
    [
      [0, YEAR, '30-53'],
      [YEAR, 3 * YEAR, '22-37'],
      [3 * YEAR, 6 * YEAR, '20-28'],
      [6 * YEAR, 12 * YEAR, '18-25'],
      [12 * YEAR, 16 * YEAR, '12-20'],
    ],
  ],
  [
    'PALS 2006',
    'breaths',
    'pals-2006',
    [
      [0, YEAR, '30-60'],
      [YEAR, 4 * YEAR, '24-40'],
      [4 * YEAR, 6 * YEAR, '22-34'],
      [6 * YEAR, 13 * YEAR, '18-30'],
      [13 * YEAR, 18 * YEAR, '12-16'],
    ],
  ],
  [
    'APLS',
    'breaths',
    'apls',
    [
      [0, YEAR, '30-40'],
      [YEAR, 2 * YEAR, '25-35'],
      [2 * YEAR, 5 * YEAR, '25-30'],
      [5 * YEAR, 12 * YEAR, '20-25'],
      [12 * YEAR, 18 * YEAR, '15-20'],
    ],
  ],
])('%s, %s', (_title, of, set, printed) => {
  const awake = (months: number) => {
    const range = referenceRange(of, set, months);
    return range === null ? null : `${range.low}-${range.high}`;
  };

  const rows = printed.map(([from, under, range, asleep]) => ({ from, under, range, asleep }));

  test.each(rows)('from $from to under $under months: $range', ({ from, under, range, asleep }) => {
    expect([awake(from), awake(under - 0.1)]).toEqual([range, range]);
    const sleeping = referenceRange(of, set, from, 'asleep');
    expect(sleeping === null ? undefined : `${sleeping.low}-${sleeping.high}`).toBe(asleep);
  });

  test('there is nothing before and after, and the source is named', () => {
    expect([awake(-0.1), awake(printed.at(-1)?.[1] ?? 0)]).toEqual([null, null]);
    expect(referenceRange(of, set, 0)?.source).toMatch(/Life Support/);
  });
});

test('C019 (second-hand, 1.6): neonate awake, 100 is in the range of PALS 2015 and 206 above', () => {
  const range = referenceRange('pulse', 'pals-2015', 0.5);
  if (range === null) throw new Error('no range');
  expect([99, 100, 205, 206].map((rate) => besideRange(range, rate))).toEqual(['below', 'in', 'in', 'above']);
});

describe('centiles of Fleming 2011 (bedside handbook 1.6, from memory)', () => {
  test('say that they are from memory', () => {
    expect(referenceRange('pulse', 'fleming-2011', 30)).toMatchObject({ low: 76, high: 142, sure: 'memory' });
    expect(referenceRange('breaths', 'fleming-2011', 30)).toMatchObject({
      low: 18,
      high: 38,
      sure: 'memory',
    });
    expect(referenceRange('pulse', 'fleming-2011', 30, 'asleep')).toBeNull();
    expect(RANGE_SETS).toContain('fleming-2011');
  });

  test('agree with the anchors that were read: a median near 145 at a month, 113 at 2 years', () => {
    expect(Math.abs((rateCentiles('pulse', 1)?.p50 ?? 0) - 145)).toBeLessThanOrEqual(2);
    const around = [rateCentiles('pulse', 23.9)?.p50, rateCentiles('pulse', 24)?.p50];
    expect(around).toEqual([116, 110]);
  });

  test.each(['pulse', 'breaths'] as const)('%s: rise with the centile and fall with age', (of) => {
    let before = Array<number>(7).fill(Infinity);
    for (const months of [0, 3, 6, 9, 12, 18, 24, 36, 48, 72, 96, 144, 180]) {
      const row = rateCentiles(of, months);
      if (row === null) throw new Error(`no row at ${months}`);
      expect(row.fromMonths).toBe(months);
      const centiles = [row.p1, row.p10, row.p25, row.p50, row.p75, row.p90, row.p99];
      expect(centiles).toEqual([...centiles].sort((a, b) => a - b));
      for (const [at, rate] of centiles.entries()) expect(rate).toBeLessThanOrEqual(before[at] ?? 0);
      before = centiles;
    }
    expect(rateCentiles(of, 216)).toBeNull();
  });
});

describe('fast breathing by WHO (bedside handbook 2.4, second-hand)', () => {
  test.each([
    ['C021', 1, 60, true],
    ['C021', 1, 59, false],
    ['C022', 2, 50, true],
    ['C022', 2, 49, false],
    ['2.4', 1.9, 59, false],
    ['C023', 12, 40, true],
    ['C023', 12, 39, false],
    ['C023', 11, 40, false],
    ['2.4', 11.9, 50, true],
    ['C024', 59, 39, false],
    ['C024', 59, 40, true],
    ['2.4', 59.9, 40, true],
    ['2.4', 60, 80, null],
  ])('%s: %d months, %d a minute: %s', (_c, months, perMinute, isFast) => {
    expect(isFastBreathing(perMinute, months)).toBe(isFast);
  });

  test('the limit names its source', () => {
    expect(fastBreathingLimit(6)).toMatchObject({ limitPerMinute: 50, sure: 'second-hand' });
  });
});

describe('95th centile of Rusconi 1994 (bedside handbook 2.4, second-hand)', () => {
  test('C025: 6 months awake 56.3; 12 months awake 48.9', () => {
    expect(breaths95thCentile(6, 'awake')).toBeCloseTo(56.3, 1);
    expect(breaths95thCentile(12, 'awake')).toBeCloseTo(48.9, 1);
  });

  test('asleep is slower at every age of the formula, which ends at 36 months', () => {
    for (let months = 0; months <= 36; months++) {
      expect(breaths95thCentile(months, 'asleep')).toBeLessThan(breaths95thCentile(months, 'awake') ?? 0);
    }
    expect(breaths95thCentile(36.1, 'awake')).toBeNull();
    // 10^1.72858 by hand: 53.5.
    expect(breaths95thCentile(0, 'asleep')).toBeCloseTo(53.5, 1);
  });
});
