import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { generator, independentIntervals, tapped, timesOf } from '../../fixtures/people.mjs';
import { type RepairedTaps, repairTaps, unrepairedTaps } from './repair.js';
import type { TapSource } from './taps.js';

/** A steady beat every 0.8 s, these taps (from 1) left out and these times added. */
function steady(count: number, missed: readonly number[], added: readonly number[] = []): number[] {
  const kept = Array.from({ length: count }, (_, i) => 0.8 * i).filter((_, i) => !missed.includes(i + 1));
  return [...kept, ...added].sort((a, b) => a - b);
}

function repaired(seconds: readonly number[], source: TapSource = 'key'): RepairedTaps {
  return repairTaps({ of: 'pulse', source, seconds });
}

describe('in a steady rhythm', () => {
  test.each([
    ['one missed', steady(20, [8]), [{ index: 7, what: 'missed', added: 1 }]],
    ['two missed in a row', steady(20, [8, 9]), [{ index: 7, what: 'missed', added: 2 }]],
    ['three missed in a row', steady(20, [8, 9, 10]), [{ index: 7, what: 'missed', added: 3 }]],
    ['four missed in a row are too long a gap to fill', steady(20, [8, 9, 10, 11]), []],
    ['the second tap missed', steady(20, [2]), [{ index: 1, what: 'missed', added: 1 }]],
    ['the last but one missed', steady(20, [19]), [{ index: 18, what: 'missed', added: 1 }]],
    [
      'two missed apart: indexes are as read',
      steady(20, [5, 12]),
      [
        { index: 4, what: 'missed', added: 1 },
        { index: 10, what: 'missed', added: 1 },
      ],
    ],
    ['one doubled: the second tap goes', steady(20, [], [5.7]), [{ index: 9, what: 'doubled', added: 0 }]],
    [
      'a burst of four',
      steady(20, [], [5.66, 5.72, 5.78]),
      [9, 10, 11].map((index) => ({ index, what: 'doubled', added: 0 })),
    ],
    [
      'a burst so long that it fills the places around it',
      steady(30, [], [8.06, 8.12, 8.18, 8.24, 8.3, 8.36, 8.42, 8.48]),
      [12, 13, 14, 15, 16, 17, 18, 19].map((index) => ({ index, what: 'doubled', added: 0 })),
    ],
    [
      'one doubled and one missed',
      steady(20, [12], [2.5]),
      [
        { index: 5, what: 'doubled', added: 0 },
        { index: 12, what: 'missed', added: 1 },
      ],
    ],
    ['an early beat and its pause are the person, not the tapper', steady(20, [8], [5.4]), []],
  ])('%s', (_, seconds, repairs) => {
    expect(repaired(seconds).repairs).toEqual(repairs);
    expect(unrepairedTaps({ of: 'pulse', source: 'key', seconds }).repairs).toEqual([]);
  });

  test.each([
    // docs/conventions.md section 5: within 15 % of k times the local interval; under a third of it.
    ['1.15 x 2', 1.84, 1],
    ['over 1.15 x 2', 1.8408, 0],
    ['0.85 x 2', 1.36, 1],
    ['under 0.85 x 2', 1.3592, 0],
    ['3.42 is nearer to 3 than to 4', 2.736, 2],
    ['3.44 is nearer to 4 (14 %) than to 3 (14.7 %)', 2.752, 3],
    ['1.15 x 4', 3.68, 3],
    ['over 1.15 x 4', 3.6808, 0],
  ])('an interval of %s', (_, interval, added) => {
    const seconds = Array.from({ length: 20 }, (_, i) => 0.8 * i + (i > 9 ? interval - 0.8 : 0));
    expect(repaired(seconds).repairs.map((repair) => repair.added)).toEqual(added === 0 ? [] : [added]);
  });

  test('a tap at a third of the interval stays, just under it goes', () => {
    const third = 0.8 / 3;
    expect(repaired(steady(20, [], [4 + third])).repairs).toEqual([]);
    expect(repaired(steady(20, [], [4 + third - 0.001])).repairs).toHaveLength(1);
  });

  test('planted slips are found at their place and the beats restored', () => {
    // A tapper's scatter so small that the limit of a steady rhythm is out of reach; prove/taps.mjs goes to the limit.
    const slip = fc.record({
      seed: fc.nat(),
      perMinute: fc.integer({ min: 45, max: 90 }),
      beats: fc.integer({ min: 20, max: 80 }),
      what: fc.constantFrom('missed' as const, 'doubled' as const),
      where: fc.double({ min: 0, max: 1, noNaN: true }),
    });
    fc.assert(
      fc.property(slip, ({ seed, perMinute, beats, what, where }) => {
        const chance = generator(seed);
        const intervals = independentIntervals(chance, beats - 1, 60 / perMinute, chance.uniform(0, 0.03));
        const seconds = tapped(chance, intervals, chance.uniform(0, 0.015));
        const place = 1 + Math.floor(where * (beats - 3));
        const at = seconds[place] as number;
        const slipped =
          what === 'missed'
            ? seconds.filter((_, i) => i !== place)
            : [...seconds, at + 0.12 * (60 / perMinute)].sort((a, b) => a - b);
        const { repairs, beatsToNext, seconds: kept } = repaired(slipped);
        const index = what === 'missed' ? place : place + 2;
        expect(repairs).toEqual([{ index, what, added: what === 'missed' ? 1 : 0 }]);
        expect(beatsToNext.reduce((sum, one) => sum + one, 1)).toBe(beats);
        expect(kept[0]).toBe(seconds[0]);
        expect(kept.at(-1)).toBe(seconds.at(-1));
      }),
      { numRuns: 300 },
    );
  });
});

describe('in a chaotic rhythm', () => {
  test('nothing is ever repaired', () => {
    const person = fc.record({
      seed: fc.nat(),
      cv: fc.double({ min: 0.2, max: 0.6, noNaN: true }),
      beats: fc.integer({ min: 15, max: 80 }),
    });
    fc.assert(
      fc.property(person, ({ seed, cv, beats }) => {
        const chance = generator(seed);
        const intervals = independentIntervals(chance, beats - 1, chance.uniform(0.45, 1.3), cv);
        const { repairs, beatsToNext } = repaired(tapped(chance, intervals, 0.02));
        expect(repairs).toEqual([]);
        expect(beatsToNext.every((one) => one === 1)).toBe(true);
      }),
      { numRuns: 300 },
    );
  });

  test('two intervals in turn look like missed taps everywhere, and are not', () => {
    // Bedside handbook 1.12, bigeminy: each long interval is twice the median of its neighbours.
    const seconds = Array.from({ length: 30 }, (_, i) => 1.5 * Math.floor(i / 2) + (i % 2) * 0.5);
    expect(repaired(seconds)).toMatchObject({ repairs: [], flags: [{ code: 'too-many-missed' }] });
  });

  test.each([
    ['every fourth beat dropped', [0.8, 0.8, 1.6]],
    ['every fifth beat dropped', [0.8, 0.8, 0.8, 1.6]],
    ['an early beat in turn, an odd number of intervals', [0.5, 1, 0.5, 1, 0.5]],
  ])('%s is the person, not the tapper', (_, cycle) => {
    const seconds = timesOf(Array.from({ length: 35 }, (_, i) => cycle[i % cycle.length] as number));
    expect(repaired(seconds)).toMatchObject({ repairs: [], flags: [{ code: 'too-many-missed' }] });
  });

  test('a few chaotic intervals that look steady by chance are not', () => {
    // Independent draws of variation 25 %, found among 2305 such series: half of them happen to lie close together.
    const intervals = [
      0.96, 0.579, 0.749, 0.974, 0.604, 0.833, 0.794, 0.794, 1.682, 0.793, 0.762, 0.785, 0.615, 0.788,
    ];
    const { repairs, flags } = repaired(timesOf(intervals));
    expect(repairs).toEqual([]);
    expect(flags.map(({ code }) => code)).toEqual(['steady-not-sure']);
    expect(flags[0]?.figures.variation).toBeGreaterThan(flags[0]?.figures.limit as number);
  });

  test('how alike intervals must be follows from how many they are', () => {
    // Lower 0.1 % points of chi square for 10 to 13 degrees of freedom; standard table, from memory.
    const points = [1.479, 1.834, 2.214, 2.617];
    const intervals = [
      0.96, 0.579, 0.749, 0.974, 0.604, 0.833, 0.794, 0.794, 1.682, 0.793, 0.762, 0.785, 0.615, 0.788,
    ];
    const figures = repaired(timesOf(intervals)).flags[0]?.figures as { limit: number; intervals: number };
    const df = figures.intervals - 1;
    expect(figures.limit).toBeCloseTo(0.2 * Math.sqrt((points[df - 10] as number) / df), 4);
  });

  test('a fast steady pulse is repaired through a tapper’s scatter, and uneven taps without a slip stand', () => {
    const chance = generator(35);
    const found = { slipped: 0, asTapped: 0 };
    for (let person = 0; person < 300; person += 1) {
      const beats = tapped(chance, independentIntervals(chance, 59, 60 / 135, 0.02), 0.03);
      const { repairs } = repaired(beats.filter((_, at) => at !== 20));
      const isFound = repairs.length === 1 && repairs[0]?.index === 20 && repairs[0].added === 1;
      if (isFound) found.slipped += 1;
      const whole = repaired(beats);
      expect(whole.repairs).toEqual([]);
      if (whole.flags.some(({ code }) => code === 'irregular-not-repaired')) found.asTapped += 1;
    }
    expect(found.slipped).toBeGreaterThan(0.95 * 300);
    expect(found.asTapped).toBeGreaterThan(0.5 * 300);
  });

  test('the flag tells the spread and its limit', () => {
    const intervals = [620, 910, 540, 780, 1020, 650, 870, 590, 960, 700, 820, 560];
    const seconds = timesOf(intervals.map((ms) => ms / 1000));
    const [flag] = repaired(seconds).flags;
    expect(flag?.code).toBe('irregular-not-repaired');
    expect(flag?.figures.limit).toBe(0.1);
    expect(flag?.figures.spread).toBeGreaterThan(0.1);
  });
});

describe('on a touch screen', () => {
  test('a tap within 150 ms of the last is a bounce, also in an irregular rhythm', () => {
    const beats = [0, 0.62, 1.53, 2.07, 2.85, 3.87, 4.52, 5.39, 5.98, 6.94];
    const seconds = [...beats, 1.6, 3.95, 3.99].sort((a, b) => a - b);
    const { repairs, flags, seconds: kept } = repaired(seconds, 'touch');
    expect(kept).toEqual(beats);
    expect(repairs.map(({ index, what }) => [index, what])).toEqual([
      [4, 'doubled'],
      [8, 'doubled'],
      [9, 'doubled'],
    ]);
    expect(flags.map(({ code }) => code)).toEqual(['touch-bounces', 'irregular-not-repaired']);
    expect(flags[0]?.figures).toEqual({ removed: 3, limitMs: 150 });
    expect(repaired(seconds, 'key').repairs).toEqual([]);
  });

  test('bounces are taken out before slips are looked for', () => {
    const seconds = steady(20, [8], [3.28, 3.36]);
    expect(repaired(seconds, 'touch').repairs).toEqual([
      { index: 6, what: 'doubled', added: 0 },
      { index: 7, what: 'doubled', added: 0 },
      { index: 9, what: 'missed', added: 1 },
    ]);
  });
});

test('every tap is kept or reported, and beats add up', () => {
  const gaps = fc.array(fc.double({ min: 0.02, max: 3, noNaN: true }), { maxLength: 60 });
  fc.assert(
    fc.property(gaps, fc.constantFrom<TapSource>('touch', 'key'), (intervals, source) => {
      const seconds = timesOf(intervals);
      const { seconds: kept, repairs, beatsToNext } = repaired(seconds, source);
      const doubled = repairs.filter(({ what }) => what === 'doubled');
      expect(kept.length + doubled.length).toBe(seconds.length);
      expect(beatsToNext).toHaveLength(kept.length - 1);
      const added = repairs.reduce((sum, repair) => sum + repair.added, 0);
      expect(beatsToNext.reduce((sum, one) => sum + one, 0)).toBe(kept.length - 1 + added);
      expect(repairs.map(({ index }) => index)).toEqual(
        repairs.map(({ index }) => index).sort((a, b) => a - b),
      );
    }),
  );
});
